using Evengrist.Quantities;
using Evengrist.Quantities.Lists;
using Evengrist.Records.Tracing;
using Evengrist.Tracing.Drill;

namespace Evengrist.Records.Lists;

/// <summary>Recall drills with their clocks and scores.</summary>
internal static class DrillLists
{
    public static IReadOnlyList<MillList> All { get; } =
    [
        MillList.Of("recall-drills", "Recall drills, newest first", new ListOf<KeptDrill>()
                .Text("drill", d => d.Number).Text("about", d => d.Subject).Whole("seed it was picked by", d => d.Seed).Mass("threshold", ListOrigin.Stated, d => Mass.FromGrams(d.ThresholdGrams)).Text("net", d => d.Net.ToString()).Moment("ledger as of", d => d.AsOf).Moment("started", d => d.StartedAt).Text("started by", d => d.StartedBy)
                .Moment("ended", d => d.EndedAt).Text("ended by", d => d.EndedBy).Number("from question to list", ListOrigin.Seen, ListUnit.Second, d => d.Clock is { } took ? Math.Round((decimal)took.TotalSeconds, 3) : null).YesNo($"within {DrillScore.CertificationHours} h", d => d.Clock is { } took ? DrillScore.Within(took, DrillScore.CertificationHours) : null)
                .YesNo($"within {DrillScore.LegalHours} h", d => d.Clock is { } took ? DrillScore.Within(took, DrillScore.LegalHours) : null).Number("trace back took", ListOrigin.Seen, ListUnit.Second, d => (decimal?)d.Score?.SecondsBack).Number("trace forward took", ListOrigin.Seen, ListUnit.Second, d => (decimal?)d.Score?.SecondsForward)
                .Whole("packages on the list", d => d.Score?.Listed, ListUnit.Piece, ListOrigin.Reckoned).Number("mass on the list", ListOrigin.Reckoned, ListUnit.Kilogram, d => d.Score?.ListedKilograms).Whole("packages by the recount", d => d.Score?.Recounted, ListUnit.Piece, ListOrigin.Reckoned)
                .Reckoned("complete", ListUnit.Percent, d => 100 * d.Score?.Completeness, "of packages").Reckoned("precise", ListUnit.Percent, d => 100 * d.Score?.Precision, "of mass").Reckoned("greatest difference of a package", ListUnit.Gram, d => d.Score?.GreatestDifferenceGrams).Whole("customers to tell", d => d.Score?.Consignees, null, ListOrigin.Reckoned)
                .Number("accounted for", ListOrigin.Reckoned, ListUnit.Percent, d => d.Score?.AccountedForPercent, "of mass on the list").Text("first of those missed", d => string.Join(", ", d.Score?.Missed ?? [])).Text("said of it", d => d.Note).Text("why aborted", d => d.Aborted),
            (mill, ask) => Drills.All(mill).Where(d => ask.Spans(d.StartedAt) && (ask.Names(d.Number) || ask.Names(d.Subject)))),
    ];
}
