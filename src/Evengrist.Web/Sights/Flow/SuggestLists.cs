using Evengrist.Milling.Suggesting;
using Evengrist.Plant.Answers;
using Evengrist.Quantities.Lists;
using Evengrist.Web.Sights.Lists;
using Evengrist.Web.Visiting;

namespace Evengrist.Web.Sights.Flow;

/// <summary>Suggested moves as lists: the moves of each set, and what becomes of each figure.</summary>
public static class SuggestLists
{
    private const string Page = "/milling/suggest";

    /// <summary>Both.</summary>
    public static IReadOnlyList<PageList> All { get; } =
    [
        PageList.Answer(Page, "suggested-moves", "Suggested moves of a mill unit, a row for each move of each set; nothing is set by it", new ListOf<(string Unit, int Set, SuggestedSet Of, RankedMove Ranked)>()
                .Text("mill unit", r => r.Unit).Whole("set, 1 is the best", r => r.Set).YesNo("all that was asked holds", r => r.Of.Holds).Text("passage", r => r.Ranked.Move.Passage).Text("what", r => Words(r.Ranked.Move.Kind)).Number("now", ListOrigin.Stated, null, r => (decimal)r.Ranked.Move.From).Reckoned("to", null, r => r.Ranked.Move.To)
                .Text("unit", r => UnitOf(r.Ranked.Move.Kind)).Text("UN/ECE code of the unit", r => ListUnit.Of(UnitOf(r.Ranked.Move.Kind)).Code),
            (visit, context) => Of(visit, context, (unit, found) => found.Sets.SelectMany((s, n) => s.Moves.Select(m => (unit, n + 1, s, m))))),
        PageList.Answer(Page, "suggested-figures", "What becomes of each figure by the suggested moves, a row for each figure of each set", new ListOf<(string Unit, int Set, SuggestedSet Of, BoundMet Bound, BoundAnswer Said)>()
                .Text("mill unit", r => r.Unit).Whole("set, 1 is the best", r => r.Set).Text("figure", r => r.Bound.Row.Figure.Words).YesNo("wished", r => r.Bound == r.Of.Wish).Reckoned("now", null, r => r.Said.Now).Reckoned("then", null, r => r.Said.Then).Reckoned("changes", null, r => r.Said.Change).Reckoned("± (k = 2) of the change", null, r => r.Said.Half)
                .Text("unit", r => r.Said.Unit).YesNo("holds in the mean", r => r.Bound.Holds).Reckoned("chance that it holds", ListUnit.Percent, r => r.Said.ChancePercent),
            (visit, context) => Of(visit, context, (unit, found) => found.Sets.SelectMany((s, n) => s.Keeps.Prepend(s.Wish).Append(s.Fullest).Select(b => (unit, n + 1, s, b, BoundAnswer.Of(b, TrialWords.Shown)))))),
    ];

    /// <summary>What a move moves, in words.</summary>
    public static string Words(MoveKind kind) => kind switch { MoveKind.Gap => "gap", MoveKind.Air => "air", MoveKind.Cloth => "cloth", _ => "flow of wheat" };

    /// <summary>The unit of a move.</summary>
    public static string UnitOf(MoveKind kind) => kind switch { MoveKind.Air => "m/s", MoveKind.Flow => "t/h of dry matter", _ => "µm" };

    private static (IEnumerable<T>? Rows, string Why) Of<T>(Visit visit, HttpContext context, Func<string, Suggested, IEnumerable<T>> rows)
    {
        var sight = SuggestSight.Begin(visit, context);
        sight.Solve(context.RequestAborted);
        return sight switch
        {
            { Kept: null } => (null, "No flow sheet to suggest on: keep a unit's flow sheet under Milling first."),
            { Tuning.IsRunning: true } => (null, StillReckoning.Words),
            { Ask.Basics.Fields.Faults: { Count: > 0 } faults } => (null, string.Join(" ", faults)),
            { Outcome: Suggested found } => (rows(sight.Kept.Unit, found), ""),
            { Outcome: SuggestRefused refused } => (null, string.Join(" ", refused.Reasons)),
            _ => (null, "Say on the page what the mill should do otherwise, and take the list out there."),
        };
    }
}
