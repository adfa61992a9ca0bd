using Evengrist.Quantities;

namespace Evengrist.Intake;

/// <summary>Looks a value up in a scale: record, reject, find the step or count steps beyond the table, then cap and floor.</summary>
internal static class ScaleLookup
{
    public static ScaleAnswer Ask(ContractScale scale, decimal value)
    {
        var recorded = Recorded.To(value, scale.RecordedDecimals);
        if (scale.RejectAbove is { } most && recorded > most)
        {
            return new ScaleRejects(recorded, most);
        }

        if (scale.RejectBelow is { } least && recorded < least)
        {
            return new ScaleRejects(recorded, least);
        }

        var table = scale.Table;
        var (first, last) = (table[0], table[^1]);
        var end = scale.End ?? last.From;
        return recorded < first.From ? Past(scale, first, first.From, scale.Below, recorded)
            : recorded > end ? Past(scale, last, end, scale.Above, recorded)
            : Limited(scale, recorded, StepAt(table, scale.Rounding, recorded));
    }

    private static ScaleAnswer Past(ContractScale scale, ScaleStep step, decimal end, Beyond beyond, decimal recorded) => beyond.Rule switch
    {
        BeyondRule.Hold => Limited(scale, recorded, step),
        BeyondRule.PerStep => Limited(scale, recorded, Counted(scale, step, beyond, recorded)),
        _ => new ScaleSilent(recorded, end),
    };

    // Steps are counted with their sign: one begun below the table is −1 by the floor rule.
    private static ScaleStep Counted(ContractScale scale, ScaleStep end, Beyond beyond, decimal recorded)
    {
        var exact = (recorded - end.From) / beyond.StepSize;
        var steps = scale.Rounding switch { StepRounding.Nearest => Math.Floor(exact + 0.5m), StepRounding.Begun => Math.Ceiling(exact), _ => Math.Floor(exact) };
        return new(end.From + steps * beyond.StepSize, end.Effect + steps * beyond.PerStep);
    }

    // Between the last step and the end of the table the last step holds, however steps are rounded.
    private static ScaleStep StepAt(IReadOnlyList<ScaleStep> table, StepRounding rounding, decimal recorded)
    {
        var below = table.Last(s => s.From <= recorded);
        var above = table.FirstOrDefault(s => s.From >= recorded);
        return rounding switch
        {
            StepRounding.Begun => above ?? below,
            StepRounding.Nearest when above is not null && above.From - recorded <= recorded - below.From => above,
            _ => below,
        };
    }

    private static ScaleEffectOf Limited(ContractScale scale, decimal recorded, ScaleStep step)
    {
        var effect = scale.Cap is { } cap ? Math.Min(step.Effect, cap) : step.Effect;
        return new(recorded, step.From, scale.Floor is { } floor ? Math.Max(effect, floor) : effect);
    }
}
