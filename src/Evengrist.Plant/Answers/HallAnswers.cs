using Evengrist.Packing.Lines;
using Evengrist.Packing.Orders;

namespace Evengrist.Plant.Answers;

/// <summary>An order with what the ledger has for it; masses net, kg. Not planned: still to be packed, and the plan in force has no run for it.</summary>
public sealed record OrderAnswer(
    string Number, string Customer, string Product, decimal Quantity, string Unit, DateTimeOffset Due, int Priority, string State, decimal WantedKilograms, decimal ShippedKilograms, decimal StandingKilograms, decimal RemainingKilograms, decimal NotPlannedKilograms)
{
    /// <summary>It in plain values.</summary>
    public static OrderAnswer Of(OrderStanding standing)
    {
        ArgumentNullException.ThrowIfNull(standing);
        var (o, s) = (standing.Order, standing);
        return new(o.Number, o.Customer, o.Product, o.Quantity, o.Unit.ToString(), o.Due.ToDateTimeOffset(), o.Priority, s.State.ToString(), s.Wanted.Kilograms, s.Shipped.Kilograms, s.Standing.Kilograms, s.Remaining.Kilograms, s.NotPlanned.Kilograms);
    }
}

/// <summary>A lot of packaging on a line.</summary>
public sealed record PackagingUseAnswer(string Kind, string Lot, string Supplier, string Line, DateTimeOffset From, DateTimeOffset? Until, string LabelVersion)
{
    /// <summary>It in plain values.</summary>
    public static PackagingUseAnswer Of(PackagingUse use)
    {
        ArgumentNullException.ThrowIfNull(use);
        return new(use.Kind.ToString(), use.Lot, use.Supplier, use.Line, use.From.ToDateTimeOffset(), use.Until?.ToDateTimeOffset(), use.LabelVersion);
    }
}
