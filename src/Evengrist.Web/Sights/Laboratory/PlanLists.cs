using Evengrist.Laboratory.Sampling;
using Evengrist.Ledger;
using Evengrist.Quantities.Lists;
using Evengrist.Records.Laboratory;
using Evengrist.Web.Sights.Lists;
using Evengrist.Web.Visiting;

namespace Evengrist.Web.Sights.Laboratory;

/// <summary>Plans of acceptance sampling and of toxins, and lots judged again, as lists.</summary>
public static class PlanLists
{
    private sealed record Plan(string Way, string Looking, int? Size, double? Accept, double? Reject, double? Factor, double? Chance, string Known);

    /// <summary>All three.</summary>
    public static IReadOnlyList<PageList> All { get; } =
    [
        PageList.Answer("/laboratory/plans", "acceptance-plans", "Plans of acceptance sampling for what is asked; they release nothing", new ListOf<Plan>()
                .Text("way", p => p.Way).Text("looking", p => p.Looking).Whole("looked at, or the fewest", p => p.Size, ListUnit.Piece, ListOrigin.Reckoned).Reckoned("accepted with up to, bad ones", null, p => p.Accept).Reckoned("rejected from, bad ones", null, p => p.Reject).Reckoned("passes where the limit lies so many standard deviations from the mean", null, p => p.Factor)
                .Reckoned("passes at the quality limit", ListUnit.Percent, p => p.Chance).Text("known", p => p.Known),
            (_, context) => new AcceptanceAsk(context.Request.Query.Typed) is var ask && ask.Faults.Count == 0 ? (Plans(ask), "") : (null, string.Join(" ", ask.Faults))),
        PageList.Answer("/laboratory/plans/toxins", "toxin-plan", "How often a lot of a true content is accepted by a result; it releases nothing", new ListOf<(ToxinAsk Ask, double Content, double Relative, double Accepted)>()
                .Text("toxin", r => r.Ask.Toxin.Words).Number("limit", ListOrigin.Stated, ListUnit.MicrogramsPerKilogram, r => (decimal)r.Ask.Limit).Number("accepted up to", ListOrigin.Stated, ListUnit.MicrogramsPerKilogram, r => (decimal?)r.Ask.AcceptAt).Reckoned("true content", ListUnit.MicrogramsPerKilogram, r => r.Content).Reckoned("relative standard deviation", ListUnit.Percent, r => 100 * r.Relative)
                .Reckoned("accepted", ListUnit.Percent, r => 100 * r.Accepted).Text("whose risk", r => r.Content > r.Ask.Limit ? "the buyer's: accepted" : "the seller's: rejected"),
            (_, context) => new ToxinAsk(context.Request.Query.Typed) is var ask && ask.Rows.Count > 0 ? (ask.Rows.Select(r => (ask, r.Content, r.Relative, r.Accepted)), "")
                : (null, ask.Fields.Faults.Count > 0 ? string.Join(" ", ask.Fields.Faults) : $"No published variance of {ask.Toxin.Words} in wheat flour is held here: give relative standard deviations of your own.")),
        PageList.Answer("/laboratory/rejudge", "rejudged-lots", "Lots whose readings came from an instrument that read wrong: as judged, and put right", new ListOf<RejudgedLot>()
                .Text("lot", l => l.Again.Lot.Code).Text("flour", l => l.Again.Lot.Flour).Text("state", l => l.Seen.State.ToString()).Text("property", l => l.Again.Before.Item.What.Words()).Text("unit", l => l.Again.Before.Item.Unit).Text("UN/ECE code of the unit", l => ListUnit.Of(l.Again.Before.Item.Unit).Code).Text("basis", l => l.Again.Before.Item.Basis.IsStated ? l.Again.Before.Item.Basis.ToString() : "")
                .Whole("wrong readings", l => l.Again.Wrong, null, ListOrigin.Reckoned).Whole("readings", l => l.Again.Before.Readings.Count, null, ListOrigin.Seen).Number("result as judged", ListOrigin.Reckoned, null, l => l.Again.Before.Reported).Reckoned("chance inside as judged", ListUnit.Percent, l => 100 * l.Again.Before.Outcome?.Chance)
                .Number("result put right", ListOrigin.Reckoned, null, l => l.Again.After.Reported).Reckoned("chance inside put right", ListUnit.Percent, l => 100 * l.Again.After.Outcome?.Chance).Text("would advise", l => l.Again.After.Advice?.Words).Mass("gone", ListOrigin.Reckoned, l => l.Seen.GoneMass).Text("to", l => string.Join(", ", l.Seen.Gone.Select(g => g.GoneTo!.Code).Distinct())),
            (visit, context) => RejudgeAsk.Of(visit.Mill, context.Request.Query.Typed, visit.Read, visit.AsOf) switch
            {
                { Faults: { Count: > 0 } faults } => (null, string.Join(" ", faults)),
                { Wrong: not null } asked => (asked.Lots, ""),
                _ => (null, "Say which instrument read what wrong, from when until when, and by how much."),
            }),
    ];

    private static IEnumerable<Plan> Plans(AcceptanceAsk ask)
    {
        var limit = ask.Table[0].LimitPercent;
        return
        [
            .. ask.Smallest is { } s ? [new Plan("for both risks, by attributes", "", s.Size, s.Accept, s.Accept + 1, null, 100 * s.Chance(limit / 100), "reckoned")] : Array.Empty<Plan>(),
            .. ask.Measured.Select(v => new Plan("for both risks, measured", $"standard deviation {(v.IsSigmaKnown ? "known" : "of the sample")}", v.Size, null, null, v.Factor, 100 * v.Chance(limit / 100), "reckoned")),
            .. ask.OneByOne is { } one ? [new Plan("for both risks, one by one", FormattableString.Invariant($"n looked at: accepted at up to {one.Slope:0.####} n − {one.AcceptOffset:0.##} bad, rejected from {one.Slope:0.####} n + {one.RejectOffset:0.##}"), one.FewestToAccept, null, null, null, null, "reckoned")] : Array.Empty<Plan>(),
            .. ask.Table.Select(t => new Plan($"of the table by attributes, letter {ask.Letter}", t.Severity.ToString(), t.Plan.Size, t.Plan.Accept, t.Reject, null, 100 * t.Plan.Chance(t.LimitPercent / 100), TablePlans.IsRead(t.Severity, t.Letter, t.LimitPercent) ? "read" : "from memory")),
            .. ask.ByVariables.Where(v => v.Plan is not null).Select(v => new Plan($"of the table by variables, letter {ask.VariablesLetter}", v.Tightened ? "Tightened" : "Normal", v.Plan!.Size, null, null, v.Plan.Factor, 100 * v.Plan.Chance(limit / 100), VariablesTable.IsRead(ask.VariablesLetter!.Value, limit) ? "read" : "from memory")),
        ];
    }
}
