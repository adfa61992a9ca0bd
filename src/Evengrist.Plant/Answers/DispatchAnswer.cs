using Evengrist.Packing.Dispatch;

namespace Evengrist.Plant.Answers;

/// <summary>A load in plain values.</summary>
/// <param name="Number">Its number.</param>
/// <param name="Day">The day, as 2026-01-14.</param>
/// <param name="Stage">How far it has come.</param>
/// <param name="Consignee">Code of the consignee's place.</param>
/// <param name="Carrier">Who hauls it.</param>
/// <param name="Trailer">The trailer or tanker.</param>
/// <param name="IsTanker">Whether it is a tanker.</param>
/// <param name="Planned">What is planned.</param>
/// <param name="Packages">What stands on it, or left with it.</param>
/// <param name="Grams">What that holds, g.</param>
/// <param name="Seals">Seals put on.</param>
/// <param name="Departed">When it left; null until it has.</param>
/// <param name="By">Who sent it off; empty until it has left.</param>
/// <param name="Orders">The orders it names, with what loads carry of each.</param>
/// <param name="Against">What stands against its leaving, or was said of the act just done.</param>
public sealed record DispatchAnswer(
    string Number, string Day, string Stage, string Consignee, string Carrier, string Trailer, bool IsTanker, IReadOnlyList<PlannedFlour> Planned, IReadOnlyList<string> Packages, long Grams, IReadOnlyList<string> Seals,
    DateTimeOffset? Departed, string By, IReadOnlyList<OrderOnLoadsAnswer> Orders, IReadOnlyList<FindingAnswer> Against)
{
    /// <summary>A load with its packages as they are known and what is said of it.</summary>
    public static DispatchAnswer Of(DispatchLoad load, IReadOnlyList<RampPackage> packages, LoadAgainstOrders filled, IReadOnlyList<LoadFinding> findings)
    {
        ArgumentNullException.ThrowIfNull(load);
        ArgumentNullException.ThrowIfNull(packages);
        ArgumentNullException.ThrowIfNull(filled);
        ArgumentNullException.ThrowIfNull(findings);
        return new(load.Number, FormattableString.Invariant($"{load.Day:R}"), load.Stage.ToString(), load.Consignee, load.Carrier, load.Trailer, load.IsTanker, load.Planned, [.. packages.Select(p => p.Code)], packages.Sum(p => p.Whole), load.Sealed?.Numbers ?? [],
            load.Departed?.At.ToDateTimeOffset(), load.Departed?.By ?? "", [.. filled.Orders.Select(OrderOnLoadsAnswer.Of)], [.. findings.Select(f => new FindingAnswer(f.Weight.ToString(), f.Words))]);
    }
}

/// <summary>An order that a load names, beside what loads carry of it; net, kg. Ordered is 0 where the order is not kept.</summary>
public sealed record OrderOnLoadsAnswer(string Number, string Product, decimal OrderedKilograms, decimal SentBeforeKilograms, decimal OnThisKilograms, decimal OnOtherOpenLoadsKilograms, decimal StillOpenKilograms, decimal OverKilograms)
{
    /// <summary>It in plain values.</summary>
    public static OrderOnLoadsAnswer Of(OrderOnLoads order)
    {
        ArgumentNullException.ThrowIfNull(order);
        return new(order.Named.Number, order.Named.Order?.Product ?? "", order.Ordered.Kilograms, order.Sent.Kilograms, order.Here.Kilograms, order.Elsewhere.Kilograms, order.StillOpen.Kilograms, order.Over.Kilograms);
    }
}

/// <summary>Something that is said of a load: a caution, a question, a stop.</summary>
/// <param name="Weight"><c>Caution</c>, <c>Ask</c> or <c>Stop</c>.</param>
/// <param name="Words">A sentence.</param>
public sealed record FindingAnswer(string Weight, string Words);
