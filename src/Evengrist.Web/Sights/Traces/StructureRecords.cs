using Evengrist.Ledger;
using Evengrist.Tracing.Structure;
using NodaTime;

namespace Evengrist.Web.Sights.Traces;

/// <summary>What the records say of how lots are kept apart today, as far as they say it.</summary>
/// <param name="Spec">The way, to be changed on paper.</param>
/// <param name="Assumed">What the records do not say and is assumed, each a sentence.</param>
public sealed record StructureRecords(StructureSpec Spec, IReadOnlyList<string> Assumed)
{
    private const int MostTrucks = 2000;

    /// <summary>Looks at a span; null where no truck came in it or nothing was milled.</summary>
    public static StructureRecords? Of(Book book, Instant from, Instant until)
    {
        ArgumentNullException.ThrowIfNull(book);
        double[] trucks = [.. book.OfKind(PlaceKind.Truck).SelectMany(t => book.MovementsOf(t.Id).Select(i => book.Movements[i]).Where(m => m.To == t.Id && m.At >= from && m.At < until && m.Mass.Grams > 0)).OrderBy(m => m.At).Select(m => m.Mass.Grams / 1000.0).Take(MostTrucks)];
        var draws = book.OfKind(PlaceKind.MixLine).SelectMany(l => book.MovementsOf(l.Id).Select(i => book.Movements[i]).Where(m => m.To == l.Id && m.IsFlow && m.At >= from && m.Until <= until && book[m.From].Kind == PlaceKind.Bin)).ToArray();
        if (trucks.Length == 0 || draws.Length == 0)
        {
            return null;
        }

        var bins = Math.Clamp((int)Math.Round(draws.GroupBy(m => m.To).Sum(g => g.Sum(m => (m.Until - m.At).TotalHours)) / draws.GroupBy(m => m.To).Sum(g => Covered(g))), 1, 20);
        var days = Math.Max(1, draws.Select(m => m.At).Max().Minus(draws.Select(m => m.At).Min()).TotalDays);
        var lines = draws.Select(m => m.To).Distinct().Count();
        var lot = Math.Max(draws.Sum(m => m.Mass.Grams) / 1000.0 / days / lines, 1000);
        var stores = book.OfKind(PlaceKind.Bin).Select(b => (b.Capacity?.Grams ?? 0) / 1000.0).Where(c => c > 0).DefaultIfEmpty(500_000).Average();
        var bin = Math.Min(stores, Math.Max(trucks.Sum() / bins / 4, trucks.Max()));
        List<string> assumed = ["a tenth of a lot stays in the flour bin as its heel", "75 % of the wheat becomes flour", "no flush, no clean-out", "one wheat, one flour"];
        if (bin < stores)
        {
            assumed.Add(FormattableString.Invariant($"a bin is filled with {bin / 1000:0} t, not with the {stores / 1000:0} t it may hold, so that the trucks of the span fill several"));
        }

        if (trucks.Length == MostTrucks)
        {
            assumed.Add($"the first {MostTrucks} trucks of the span stand for all");
        }

        return new(new StructureSpec(trucks) { BinKilograms = bin, BinsPerMix = bins, LotKilograms = lot, Yield = 0.75, HeelKilograms = lot * 0.075, ThresholdShare = 1e-6 }, assumed);
    }

    /// <summary>The ways beside it: each changes one thing.</summary>
    public static IReadOnlyList<(string Name, StructureSpec Spec)> Ways(StructureSpec today)
    {
        ArgumentNullException.ThrowIfNull(today);
        const int Week = 7;
        List<(string, StructureSpec)> ways = [("as typed", today)];
        void Try(string name, StructureSpec spec)
        {
            if (spec.Faults().Count == 0 && spec != today)
            {
                ways.Add((name, spec));
            }
        }

        Try("one bin at a time", today with { BinsPerMix = 1 });
        Try($"{2 * today.BinsPerMix} bins in the mix", today with { BinsPerMix = 2 * today.BinsPerMix });
        Try(today.Order == BinOrder.InTurn ? "one bin filled after another" : "trucks into the bins in turn", today with { Order = today.Order == BinOrder.InTurn ? BinOrder.OneAfterAnother : BinOrder.InTurn });
        Try("lots half as large", today with { LotKilograms = today.LotKilograms / 2 });
        Try("lots twice as large", today with { LotKilograms = today.LotKilograms * 2 });
        Try("no heel: the flour bin runs empty between lots", today with { HeelKilograms = 0 });
        Try("a flush of three heels between lots", today with { FlushKilograms = 3 * today.HeelKilograms });
        Try($"proven empty every {Week} lots", today with { CleanEveryLots = Week });
        Try("proven empty after every lot", today with { CleanEveryLots = 1 });
        return ways;
    }

    // Hours in which anything ran.
    private static double Covered(IEnumerable<Movement> flows)
    {
        var (hours, end) = (0.0, Instant.MinValue);
        foreach (var flow in flows.OrderBy(m => m.At))
        {
            hours += flow.Until <= end ? 0 : (flow.Until - Instant.Max(flow.At, end)).TotalHours;
            end = Instant.Max(end, flow.Until);
        }

        return Math.Max(hours, 1e-9);
    }
}
