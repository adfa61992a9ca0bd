using Evengrist.Intake.Trade;
using Evengrist.Ledger;
using Evengrist.Quantities;
using NodaTime;

namespace Evengrist.Intake.Paying;

/// <summary>Reads truckloads out of the ledger, with what the papers say of them.</summary>
/// <param name="book">The ledger.</param>
/// <param name="at">The moment looked at: what happened later does not count.</param>
/// <param name="papers">Parties, fields, vehicles, certificates.</param>
/// <param name="terms">Terms by the title that a ticket names.</param>
/// <param name="zone">The site's zone.</param>
/// <param name="dayBegins">When its milling day begins.</param>
public sealed class LoadReader(Book book, Instant at, TradePapers papers, Func<string, ContractTerms?> terms, DateTimeZone zone, LocalTime dayBegins)
{
    private readonly Dictionary<string, ContractTerms?> known = new(StringComparer.Ordinal);

    /// <summary>Every load that was delivered by then, oldest first; a truck that was not weighed empty yet, or turned away full, has delivered nothing.</summary>
    public IEnumerable<LoadFacts> All() => book.OfKind(PlaceKind.Truck).Select(Look).OfType<LoadFacts>().Where(l => l.Net > Mass.Zero).OrderBy(l => l.At).ThenBy(l => l.Truck.Code, StringComparer.Ordinal);

    /// <summary>One load; null where it had not come by then.</summary>
    public LoadFacts? Look(Place truck)
    {
        ArgumentNullException.ThrowIfNull(truck);
        var loaded = book.MovementsOf(truck.Id).Select(i => book.Movements[i]).Where(m => m.To == truck.Id).ToArray();
        if ((book.HappeningsOn(truck.Id).FirstOrDefault(h => h.Kind == HappeningKind.Arrived)?.At ?? book.ReadingsOn(truck.Id).FirstOrDefault(r => r.What == Property.GrossWeight)?.At
            ?? (loaded.Length > 0 ? loaded[0].At : null)) is not { } came || came > at)
        {
            return null;
        }

        var newest = Truckload.Readings(book, truck, at);
        var happened = book.HappeningsOn(truck.Id).Where(h => h.At <= at).ToArray();
        var source = loaded.Length > 0 ? book[loaded[0].From] : null;
        var (day, date) = (MillingDay.Of(came, zone, dayBegins), came.InZone(zone).Date);
        var field = source is null ? null : papers.FieldOn(source.Code, day);
        var weighing = Truckload.WeighingOf(newest);
        var contract = Array.FindLast(happened, h => h.Kind == HappeningKind.Contract)?.Words ?? "";
        var load = new LoadFacts(truck, came)
        {
            Day = day,
            Date = date,
            Source = source,
            Field = field,
            Grower = papers.Party(field?.Grower) ?? (source is null ? null : papers.Party(source.Code)),
            Carrier = papers.CarrierOf(truck.Name) ?? (truck.Of.Length > 0 ? papers.PartyNamed(truck.Of) ?? papers.Party(truck.Of.Split(' ')[0]) : null),
            Readings = newest,
            Observed = Truckload.Observed(book, truck, at),
            Weighing = weighing,
            Net = weighing?.Net ?? Mass.FromGrams(loaded.Sum(m => m.Mass.Grams)),
            Contract = contract,
            Terms = contract.Length > 0 ? TermsOf(contract) : null,
            Payments = [.. happened.Select(h => (h, Payment.TryRead(h, out var paid) ? paid : null)).Where(p => p.Item2 is not null).Select(p => (p.h, p.Item2!))],
            Voided = Array.FindLast(happened, h => h.Kind == HappeningKind.Voided),
        };
        return load with
        {
            Uncertified = [.. load.PaidBy().Select(r => new UncertifiedUse(InstrumentOf(r), r.At.InZone(zone).Date)).Distinct().Where(u => papers.InForce(u.Instrument, u.On) is null)],
        };
    }

    /// <summary>The scale or instrument of a reading; its method where it names none.</summary>
    public static string InstrumentOf(Reading reading)
    {
        ArgumentNullException.ThrowIfNull(reading);
        return reading.Instrument.Length > 0 ? reading.Instrument : reading.Method;
    }

    private ContractTerms? TermsOf(string contract)
    {
        if (!known.TryGetValue(contract, out var named))
        {
            known.Add(contract, named = terms(contract));
        }

        return named;
    }
}
