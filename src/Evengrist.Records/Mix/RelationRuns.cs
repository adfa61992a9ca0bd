using Evengrist.Ledger;
using Evengrist.Mix;
using Evengrist.Mix.Relations;
using NodaTime;

namespace Evengrist.Records.Mix;

/// <summary>Runs of a mill: what the wheat of each sheet was, as drawn, beside what the flour on the rolls was read as.</summary>
public static class RelationRuns
{
    /// <summary>The runs that were over at a moment.</summary>
    /// <param name="mill">The mill.</param>
    /// <param name="at">The moment looked at.</param>
    public static IReadOnlyList<RelationPoint> Of(Mill mill, Instant at)
    {
        ArgumentNullException.ThrowIfNull(mill);
        KeptSheet[] sheets = [.. MixSheets.Newest(mill).Where(k => k.Sheet.Stands && k.Sheet.Until <= at)];
        return mill.Ask(view => Of(view.Book, SheetDraws.Of(view, sheets, at), at));
    }

    private static IReadOnlyList<RelationPoint> Of(Book book, IReadOnlyList<SheetDraws> draws, Instant at)
    {
        var paths = draws.Select(d => d.Kept.Sheet.Line).Distinct(StringComparer.OrdinalIgnoreCase)
            .ToDictionary(l => l, l => book.Find(l) is { } line ? WheatPath.Of(book, line.Id) : null, StringComparer.OrdinalIgnoreCase);
        return [.. draws.SelectMany(d => paths[d.Kept.Sheet.Line] is { } path ? Of(book, d, path, at) : [])];
    }

    private static IEnumerable<RelationPoint> Of(Book book, SheetDraws drawn, WheatPath path, Instant at)
    {
        var sheet = drawn.Kept.Sheet;
        if (drawn.Against is not { Qualities.Count: > 0 } against || path.OnTheRolls(sheet.From, sheet.Until) is not { } rolls || rolls.Until > at)
        {
            yield break;
        }

        Reading[] readings = [.. book.ReadingsOn(path.Unit.Id).Where(r => r.At >= rolls.From && r.At < rolls.Until)];
        foreach (var quality in against.Qualities.Where(q => MillRelation.Properties.Contains(q.What) && MillRelation.CanBeFitted(q.What)))
        {
            if (FlourRead.Of([.. readings.Where(r => r.What == quality.What)], RelationPoint.FlourBasis) is { } read)
            {
                var factor = MixBlend.Factor(quality.Basis) / MixBlend.Factor(RelationPoint.WheatBasis);
                yield return new RelationPoint(sheet.Flour, quality.What, drawn.Kept.Code, rolls.From, quality.Drawn * factor, quality.DrawnUncertainty * factor, read.Value, read.StandardUncertainty, read.Count);
            }
        }
    }
}
