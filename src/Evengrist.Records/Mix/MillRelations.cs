using Evengrist.Ledger;
using Evengrist.Mix.Relations;
using Evengrist.Records.Season;
using NodaTime;

namespace Evengrist.Records.Mix;

/// <summary>The relations of flour to wheat a mill keeps: papers by version, one for each flour and property.</summary>
public static class MillRelations
{
    /// <summary>Keeps a relation as the next version; every fault where it cannot be, and then nothing is kept.</summary>
    /// <param name="mill">The mill.</param>
    /// <param name="relation">The relation; its flour is one of the terms of the crop year.</param>
    /// <param name="by">Who keeps it.</param>
    public static (KeptRelation? Kept, IReadOnlyList<string> Faults) Keep(Mill mill, MillRelation relation, string by)
    {
        ArgumentNullException.ThrowIfNull(mill);
        ArgumentNullException.ThrowIfNull(relation);
        string[] flours = [.. SeasonShelf.TermsOf(mill)?.Terms.Flours.Select(f => f.Code) ?? []];
        var known = flours.FirstOrDefault(f => f.Equals(relation.Flour?.Trim(), StringComparison.OrdinalIgnoreCase));
        string[] faults =
        [
            .. string.IsNullOrWhiteSpace(by) ? ["Say who you are first: every record carries a name."] : Array.Empty<string>(), .. relation.Faults(),
            .. known is null ? [flours.Length == 0 ? "No terms of a crop year are kept, so that no flour is known: keep them first." : $"There is no flour {relation.Flour} in the terms: there is {string.Join(", ", flours)}."] : Array.Empty<string>(),
        ];
        if (faults.Length > 0)
        {
            return (null, faults);
        }

        var whole = relation with { Flour = known! };
        var shelf = mill.Papers(MillRelation.Kind);
        return (Read(shelf.Find(whole.Code, shelf.KeepNext(whole.Code, whole.ToJson(), by))!), []);
    }

    /// <summary>All versions of all relations, by flour and property, the first version first.</summary>
    public static IReadOnlyList<KeptRelation> All(Mill mill)
    {
        ArgumentNullException.ThrowIfNull(mill);
        return [.. mill.Papers(MillRelation.Kind).All().Select(Read).OfType<KeptRelation>()];
    }

    /// <summary>The newest version of every relation of a flour, by property.</summary>
    public static IReadOnlyList<KeptRelation> Of(Mill mill, string flour) =>
        [.. All(mill).Where(k => k.Relation.Flour.Equals(flour, StringComparison.OrdinalIgnoreCase)).GroupBy(k => k.Relation.Relation.What).OrderBy(g => g.Key).Select(g => g.Last())];

    /// <summary>The newest fit of a flour and property as a relation to keep; why there is none otherwise.</summary>
    /// <param name="records">What is known of all of them.</param>
    /// <param name="flour">Code of the flour.</param>
    /// <param name="what">The property.</param>
    /// <param name="zone">The mill's time zone.</param>
    public static (MillRelation? Relation, IReadOnlyList<string> Faults) Fitted(IReadOnlyList<RelationRecords> records, string? flour, Property what, DateTimeZone zone)
    {
        ArgumentNullException.ThrowIfNull(records);
        var row = records.FirstOrDefault(r => r.Flour.Code.Equals(flour?.Trim(), StringComparison.OrdinalIgnoreCase) && r.What == what);
        return row switch
        {
            { Fit: RelationFitted fit } => (new MillRelation(row.Flour.Code, fit.Relation(zone)), []),
            { Fit: RelationNotFitted none } => (null, [none.Reason]),
            null when what == Property.None => (null, ["Say of which property the fit is to be kept."]),
            null when records.Any(r => r.Flour.Code.Equals(flour?.Trim(), StringComparison.OrdinalIgnoreCase)) => (null, [$"No run tells anything of {what.Words()} of {flour}: type the relation with its source."]),
            null => (null, [$"There is no flour {flour} in the terms."]),
            _ => (null, [$"{what.Words()} is not fitted: a run's readings of it do not average. Type the relation with its source."]),
        };
    }

    private static KeptRelation? Read(Paper paper) => MillRelation.TryRead(paper.Json, out var relation, out _) ? new KeptRelation(paper.Version, paper.By, paper.Recorded, relation) : null;
}
