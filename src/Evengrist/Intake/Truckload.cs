using Evengrist.Intake.Deciding;
using Evengrist.Ledger;
using Evengrist.Quantities;
using NodaTime;

namespace Evengrist.Intake;

/// <summary>What the facts of a truck say of its load.</summary>
public static class Truckload
{
    /// <summary>The newest reading of each property up to a moment, weights first.</summary>
    public static IReadOnlyList<Reading> Readings(Book book, Place truck, Instant at)
    {
        ArgumentNullException.ThrowIfNull(book);
        ArgumentNullException.ThrowIfNull(truck);
        return [.. book.ReadingsOn(truck.Id).Where(r => r.At <= at).GroupBy(r => r.What).Select(g => g.Last()).OrderBy(r => r.What)];
    }

    /// <summary>Full and empty; null where one of the two was not read, or the two cannot be.</summary>
    public static Weighing? WeighingOf(IReadOnlyList<Reading> readings)
    {
        ArgumentNullException.ThrowIfNull(readings);
        var (gross, tare) = (readings.FirstOrDefault(r => r.What == Property.GrossWeight), readings.FirstOrDefault(r => r.What == Property.TareWeight));
        return gross is null || tare is null || Weighing.Fault(Mass.FromKilograms(gross.Value), Mass.FromKilograms(tare.Value)) is not null
            ? null
            : Weighing.Of(Mass.FromKilograms(gross.Value), Mass.FromKilograms(tare.Value));
    }

    /// <summary>What was smelt or seen on the load up to a moment, each a word; a contract may charge for it.</summary>
    public static IReadOnlyList<string> Observed(Book book, Place truck, Instant at)
    {
        ArgumentNullException.ThrowIfNull(book);
        ArgumentNullException.ThrowIfNull(truck);
        return [.. book.HappeningsOn(truck.Id).Where(h => h.Kind == HappeningKind.Observed && h.At <= at).SelectMany(h => LoadSigns.In(h.Words)).Distinct()];
    }

    /// <summary>Settles the load under a contract, from its newest readings.</summary>
    /// <param name="readings">The newest reading of each property.</param>
    /// <param name="terms">The contract.</param>
    /// <param name="day">The milling day of the delivery.</param>
    /// <param name="observed">What was smelt or seen, each a word.</param>
    public static SettlementOutcome Settle(IReadOnlyList<Reading> readings, ContractTerms terms, LocalDate day, IReadOnlyList<string> observed) => WeighingOf(readings) is not { } weighing
        ? new NotSettled(["Gross and tare are not both recorded: weigh the truck full and empty."])
        : SettlementModel.Settle(new Delivery(weighing, day, [.. readings.Where(r => r.What is not (Property.GrossWeight or Property.TareWeight)).Select(Finding.Of)]) { Observed = observed }, terms);
}
