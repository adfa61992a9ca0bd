using Evengrist.Ledger;
using Evengrist.Mix;
using Evengrist.Mix.Relations;
using Evengrist.Mix.Sheets;
using NodaTime;

namespace Evengrist.Records.Mix;

/// <summary>Runs of a mill: what the wheat of each sheet was, as drawn, beside what the flour on the rolls was read as.</summary>
/// <param name="Points">The runs, a point for each property.</param>
/// <param name="Silent">Sheets that tell nothing, with why.</param>
public sealed record RelationRuns(IReadOnlyList<RelationPoint> Points, IReadOnlyList<SilentSheet> Silent)
{
    /// <summary>The runs of the sheets that were over at a moment.</summary>
    /// <param name="mill">The mill.</param>
    /// <param name="at">The moment looked at.</param>
    public static RelationRuns Of(Mill mill, Instant at)
    {
        ArgumentNullException.ThrowIfNull(mill);
        KeptSheet[] sheets = [.. MixSheets.Newest(mill).Where(k => k.Sheet.Stands && k.Sheet.Until <= at)];
        return mill.Ask(view => Of(view.Book, SheetDraws.Of(view, sheets, at), at));
    }

    private static RelationRuns Of(Book book, IReadOnlyList<SheetDraws> draws, Instant at)
    {
        var paths = draws.Select(d => d.Kept.Sheet.Line).Distinct(StringComparer.OrdinalIgnoreCase)
            .ToDictionary(l => l, l => book.Find(l) is { } line ? WheatPath.Of(book, line.Id) : null, StringComparer.OrdinalIgnoreCase);
        var (points, silent) = (new List<RelationPoint>(), new List<SilentSheet>());
        foreach (var drawn in draws)
        {
            var (told, why) = Of(book, drawn, paths[drawn.Kept.Sheet.Line], at);
            points.AddRange(told);
            if (told.Count == 0)
            {
                silent.Add(new SilentSheet(drawn.Kept.Sheet.Flour, drawn.Kept.Code, why));
            }
        }

        return new RelationRuns(points, silent);
    }

    private static (IReadOnlyList<RelationPoint> Told, string Why) Of(Book book, SheetDraws drawn, WheatPath? path, Instant at)
    {
        var sheet = drawn.Kept.Sheet;
        if (drawn.Against is not { } against)
        {
            return ([], "no wheat was drawn in its time by the ledger");
        }

        DrawnQuality[] qualities = [.. against.Qualities.Where(q => MillRelation.Properties.Contains(q.What) && MillRelation.CanBeFitted(q.What))];
        if (qualities.Length == 0)
        {
            return ([], against.Remarks.Count > 0 ? "a bin that is not on it gave wheat" : "it says nothing of its wheat's protein or ash");
        }

        if (path is null)
        {
            return ([], $"the way from {sheet.Line} parts, or comes to no mill unit");
        }

        if (path.OnTheRolls(sheet.From, sheet.Until) is not { } rolls || rolls.Until > at)
        {
            return ([], "its wheat is not through the rolls yet, or was at no time alone on them");
        }

        Reading[] readings = [.. book.ReadingsOn(path.Unit.Id).Where(r => r.At >= rolls.From && r.At < rolls.Until)];
        return ([.. qualities.SelectMany(q => Point(drawn.Kept, q, rolls.From, FlourRead.Of([.. readings.Where(r => r.What == q.What)], RelationPoint.FlourBasis)))],
            $"its flour was not read on {path.Unit.Code} while its wheat alone was on the rolls (once with its ±, or three times without)");
    }

    private static IEnumerable<RelationPoint> Point(KeptSheet kept, DrawnQuality wheat, Instant at, FlourRead? read)
    {
        if (read is null)
        {
            return [];
        }

        var factor = MixBlend.Factor(wheat.Basis) / MixBlend.Factor(RelationPoint.WheatBasis);
        return [new RelationPoint(kept.Sheet.Flour, wheat.What, kept.Code, at, wheat.Drawn * factor, wheat.DrawnUncertainty * factor, read.Value, read.StandardUncertainty, read.Count)];
    }
}
