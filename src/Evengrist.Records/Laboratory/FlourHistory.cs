using Evengrist.Ledger;
using Evengrist.Records.Milling;
using Evengrist.Records.Mix;
using Evengrist.Records.Streams;
using Evengrist.Tracing;
using NodaTime;

namespace Evengrist.Records.Laboratory;

/// <summary>What made a flour, by the ledger: the bins its wheat was drawn from, the mix sheets that stood, the units that milled it and their streams.</summary>
/// <param name="Place">Where the flour lay.</param>
/// <param name="Tonnes">How much lay there.</param>
/// <param name="Bins">Wheat bins, the largest share first.</param>
/// <param name="Mixes">Mix sheets that stood while its wheat was mixed, by time.</param>
/// <param name="Units">Mill units that milled it.</param>
/// <param name="Through">Temper and flour bins it went through.</param>
/// <param name="Nothing">Why nothing is known, in a sentence; null where something is.</param>
public sealed record FlourHistory(
    Place? Place, double Tonnes, IReadOnlyList<DrawnBin> Bins, IReadOnlyList<KeptSheet> Mixes, IReadOnlyList<MilledOn> Units, IReadOnlyList<Passage> Through, string? Nothing)
{
    // Of three ways in which a bin may empty, the one weighed most; the trace itself shows all.
    private static readonly Belief[] First = [Belief.Usual.MaxBy(b => b.Weight)!];

    /// <summary>Follows the ledger back from a place at a moment.</summary>
    /// <param name="mill">The mill.</param>
    /// <param name="code">Code of the place: a flour bin, a pallet, a bulk load.</param>
    /// <param name="at">The moment.</param>
    public static FlourHistory Of(Mill mill, string code, Instant at)
    {
        ArgumentNullException.ThrowIfNull(mill);
        if (mill.Ask(view => view.Book.Find(code) is null ? null : view.Tracer().Roots(new TraceQuestion(code) { AsOf = at }, First)) is not { } roots)
        {
            return new(null, 0, [], [], [], [], $"There is no place “{code}”.");
        }

        var sheets = MixSheets.Newest(mill);
        var surveys = StreamSurveys.All(mill);
        return new(
            roots.Place, roots.Grams.Expected / 1e6, DrawnFrom(roots),
            [.. sheets.Where(s => s.Sheet.Stands && roots.Passages.Any(p => p.Place.Kind == PlaceKind.MixLine && p.Place.Code == s.Sheet.Line && s.Sheet.From < p.Until && p.From < s.Sheet.Until)).OrderBy(s => s.Sheet.From)],
            [.. roots.Passages.Where(p => p.Place.Kind == PlaceKind.MillUnit).Select(p => new MilledOn(p, surveys.Where(s => s.Survey.Unit == p.Place.Code && s.Survey.TakenAt <= p.Until).MaxBy(s => s.Survey.TakenAt), FlowSheets.Newest(mill, p.Place.Code) is not null))],
            [.. roots.Passages.Where(p => p.Place.Kind is PlaceKind.TemperBin or PlaceKind.FlourBin)], roots.Nothing);
    }

    // What left a wheat bin for anything but another one: a transfer is not counted twice.
    private static IReadOnlyList<DrawnBin> DrawnFrom(RootsOutcome roots)
    {
        Link[] drawn = [.. roots.Links.Where(l => l.From.Kind == PlaceKind.Bin && l.To.Kind != PlaceKind.Bin)];
        var whole = drawn.Sum(l => l.Grams);
        return [.. drawn.GroupBy(l => l.From.Id).Select(g => new DrawnBin(g.First().From, g.Sum(l => l.Grams) / whole)).Where(b => b.Share >= Least).OrderByDescending(b => b.Share)];
    }

    private const double Least = 0.001;
}

/// <summary>A wheat bin that a flour's wheat was drawn from.</summary>
/// <param name="Bin">The bin.</param>
/// <param name="Share">Of the wheat, a fraction.</param>
public sealed record DrawnBin(Place Bin, double Share);

/// <summary>A mill unit that milled a flour.</summary>
/// <param name="Passage">The unit, and when.</param>
/// <param name="Survey">The newest survey of its streams by then; null where none is kept.</param>
/// <param name="HasSheet">Whether a flow sheet of it is kept; a unit that only mixes has none.</param>
public sealed record MilledOn(Passage Passage, KeptSurvey? Survey, bool HasSheet);
