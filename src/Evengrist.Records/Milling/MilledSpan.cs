using Evengrist.Bins;
using Evengrist.Ledger;
using Evengrist.Milling.Balance;
using Evengrist.Quantities;
using Evengrist.Tempering;
using NodaTime;

namespace Evengrist.Records.Milling;

/// <summary>What the ledger moved through a section over a span, and what moistures were read of it.</summary>
/// <param name="Flows">Masses.</param>
/// <param name="Wheat">The wheat drawn, with the mean moisture of the loads it came on; null where none was drawn.</param>
/// <param name="AtFirstBreak">Mean of the moistures read in the section's temper bins; null where none was.</param>
/// <param name="OnTheRolls">Mean of the moistures read on the section's units, which are those of its flour; null where none was.</param>
/// <param name="InBins">Means of the moistures read where a product went, by place.</param>
public sealed record MilledSpan(SectionFlows Flows, TemperContent? Wheat, MoisturesRead? AtFirstBreak, MoisturesRead? OnTheRolls, IReadOnlyDictionary<PlaceId, MoisturesRead> InBins)
{
    // A stretch for which the bins are looked at once: a snapshot of a year's ledger takes its time.
    private static Duration StepOf(Duration span) => span <= Duration.FromDays(2) ? Duration.FromDays(1) : Duration.FromDays(7);

    /// <summary>Looks.</summary>
    /// <param name="view">The mill.</param>
    /// <param name="section">The section.</param>
    /// <param name="from">Beginning of the span.</param>
    /// <param name="until">Its end, left out.</param>
    public static MilledSpan Of(MillView view, MillSection section, Instant from, Instant until)
    {
        ArgumentNullException.ThrowIfNull(view);
        ArgumentNullException.ThrowIfNull(section);
        var (book, flows) = (view.Book, SectionFlows.Of(view.Book, section, from, until));
        MoisturesRead? Read(IEnumerable<PlaceId> places) => MoisturesRead.Of(places.SelectMany(book.ReadingsOn).Where(r => r.What == Property.Moisture && r.At >= from && r.At < until));
        return new MilledSpan(
            flows, Drawn(view, section, from, until), Read(section.Places.Where(p => book[p].Kind == PlaceKind.TemperBin)), Read(section.Units.Select(u => u.Id)),
            flows.Products.Select(p => (p.To.Id, Read: Read([p.To.Id]))).Where(p => p.Read is not null).ToDictionary(p => p.Id, p => p.Read!));
    }

    // What a stretch's draws would take from each bin as it lay when the stretch began; what ran in meanwhile is left out.
    private static TemperContent? Drawn(MillView view, MillSection section, Instant from, Instant until)
    {
        var (steps, step) = (new List<(Instant At, (PlaceId Bin, Mass Mass)[] Draws)>(), StepOf(until - from));
        for (var at = from; at < until; at += step)
        {
            var draws = SectionFlows.Of(view.Book, section, at, Instant.Min(at + step, until)).Wheat.Where(w => w.Bin.Kind == PlaceKind.Bin).Select(w => (w.Bin.Id, Mass.FromTonnes((decimal)w.Tonnes))).Where(w => w.Item2 > Mass.Zero).ToArray();
            if (draws.Length > 0)
            {
                steps.Add((at, draws));
            }
        }

        return steps.Count == 0 ? null : TemperContent.Over([.. Enum.GetValues<Outflow>().Select(o =>
        {
            var reckoning = view.Reckoning(o);
            Layer[] layers = [.. steps.SelectMany(s => reckoning.At(s.At) is var lying ? s.Draws.SelectMany(d => lying.NextOut(d.Bin, d.Mass)) : [])];
            return TemperContent.Of(view.Book, new MakeupModel(view.Book, reckoning.Parcels), layers, until);
        })]);
    }
}
