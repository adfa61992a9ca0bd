using Evengrist.Milling.Sheet;

namespace Evengrist.Milling.Suggesting;

/// <summary>Every single move the rules allow.</summary>
internal static class MoveChoice
{
    public static IReadOnlyList<Move> Of(SuggestSpec spec)
    {
        var rules = spec.Rules;
        var free = spec.Sheet.Passages.Where(p => !rules.Leave.Contains(p.Code)).ToArray();
        return
        [
            .. free.Where(p => p.Rolls is not null).SelectMany(p => Gaps(p, rules)),
            .. rules.AirStepMetresPerSecond > 0 ? free.Where(p => p.AirMetresPerSecond is not null).SelectMany(p => Air(p, rules)) : [],
            .. free.SelectMany(p => Cloths(spec.Sheet, p, rules)),
            .. rules.FlowStepPercent > 0 ? Steps(rules.MostSteps).Select(n => new Move(MoveKind.Flow, spec.Sheet.FirstBreak, spec.Wheat.DryTonnesPerHour, spec.Wheat.DryTonnesPerHour * (1 + (n * rules.FlowStepPercent / 100)))).Where(m => m.To is > 0 and <= 1000) : [],
        ];
    }

    private static IEnumerable<Move> Gaps(Passage passage, MoveRules rules)
    {
        var gap = passage.Rolls!.GapMicrometres;
        var most = Math.Clamp((int)Math.Floor(gap * rules.MostGapPercent / 100 / rules.GapStepMicrometres), 1, rules.MostSteps);
        return Steps(most).Select(n => new Move(MoveKind.Gap, passage.Code, gap, gap + (n * rules.GapStepMicrometres))).Where(m => m.To >= rules.LeastGapMicrometres && m.To <= rules.MostGapMicrometres);
    }

    // The air of a purifier lies from 0.2 to 3 m/s, as on the flow sheet.
    private static IEnumerable<Move> Air(Passage passage, MoveRules rules)
        => Steps(Math.Min(3, rules.MostSteps)).Select(n => new Move(MoveKind.Air, passage.Code, passage.AirMetresPerSecond!.Value, passage.AirMetresPerSecond.Value + (n * rules.AirStepMetresPerSecond))).Where(m => m.To is >= 0.2 and <= 3);

    private static IEnumerable<Move> Cloths(FlowSheet sheet, Passage passage, MoveRules rules)
    {
        var lifted = passage.Lifted.Count > 0 ? 1 : 0;
        return passage.Cloths.SelectMany((c, i) => rules.ClothsOnHand.Distinct()
            .Where(on => on != c.ApertureMicrometres && Math.Abs(on - c.ApertureMicrometres) <= c.ApertureMicrometres * rules.MostClothPercent / 100)
            .Select(on => new Move(MoveKind.Cloth, passage.Code, c.ApertureMicrometres, on, i + lifted)))
            .Where(m => passage.Cloths.Count(c => c.ApertureMicrometres == m.From) == 1 && Move.Change([m]).Faults(sheet).Count == 0);
    }

    private static IEnumerable<int> Steps(int most) => Enumerable.Range(1, most).SelectMany(n => (int[])[n, -n]);
}
