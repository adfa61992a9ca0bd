using Evengrist.Ledger;
using Evengrist.Mix.Relations;
using Evengrist.Season.Terms;
using NodaTime;

namespace Evengrist.Records.Mix;

/// <summary>What is known of one flour and property: the relation kept and the newest fit.</summary>
/// <param name="Flour">The flour.</param>
/// <param name="What">The property.</param>
/// <param name="Versions">All versions kept, the first first; empty where none is.</param>
/// <param name="Fit">The newest fit; null where the property is not fitted.</param>
/// <param name="Silent">Sheets of the flour that tell nothing, with why.</param>
public sealed record RelationRecords(FlourTerms Flour, Property What, IReadOnlyList<KeptRelation> Versions, RelationFit? Fit, IReadOnlyList<SilentSheet> Silent)
{
    /// <summary>The version that holds; null where none is kept.</summary>
    public KeptRelation? Kept => Versions.Count > 0 ? Versions[^1] : null;

    /// <summary>Reads them for every flour of the terms: protein and ash always, other properties where there is something to show.</summary>
    /// <param name="mill">The mill.</param>
    /// <param name="terms">The terms of the crop year.</param>
    /// <param name="at">The moment up to which runs count.</param>
    public static IReadOnlyList<RelationRecords> Of(Mill mill, SeasonTerms terms, Instant at)
    {
        ArgumentNullException.ThrowIfNull(mill);
        ArgumentNullException.ThrowIfNull(terms);
        var told = RelationRuns.Of(mill, at);
        var runs = told.Points.ToLookup(p => (p.Flour.ToUpperInvariant(), p.What));
        var silent = told.Silent.ToLookup(s => s.Flour, StringComparer.OrdinalIgnoreCase);
        var kept = MillRelations.All(mill).ToLookup(k => (k.Relation.Flour.ToUpperInvariant(), k.Relation.Relation.What));
        return
        [
            .. terms.Flours.SelectMany(f => MillRelation.Properties.Select(p => (Flour: f, What: p, Key: (f.Code.ToUpperInvariant(), p))))
                .Where(r => r.What is Property.Protein or Property.Ash || runs.Contains(r.Key) || kept.Contains(r.Key))
                .Select(r => new RelationRecords(r.Flour, r.What, [.. kept[r.Key]], MillRelation.CanBeFitted(r.What) ? RelationFitting.Of(r.Flour.Code, r.What, [.. runs[r.Key].OrderBy(p => p.At)]) : null, [.. silent[r.Flour.Code]])),
        ];
    }
}
