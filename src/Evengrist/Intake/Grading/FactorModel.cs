using System.Globalization;
using Evengrist.Quantities;

namespace Evengrist.Intake.Grading;

/// <summary>Records one factor and compares it with its limits.</summary>
internal static class FactorModel
{
    private const string RuleSource = "7 CFR 810.104, 2015 edition";

    public static FactorResult Of(GradeStandard standard, GradeFactor factor, SampleValues values, SumPolicy sums, bool durum)
    {
        var parts = (factor.IsSum ? factor.SumOf : [factor.What]).Select(p => (What: p, Found: values.Find(p, factor.Unit, factor.MoistureBasis, durum))).ToArray();
        var missing = parts.Where(p => p.Found.State == FoundState.Missing).Select(p => p.What).ToArray();
        if (missing.Length > 0)
        {
            return new(factor, FoundState.Missing) { Missing = missing };
        }

        var found = parts.Sum(p => p.Found.Value);
        var recorded = factor.IsSum && sums == SumPolicy.RecordedParts ? parts.Sum(p => Recorded.To(p.Found.Value, factor.Decimals)) : Recorded.To(found, factor.Decimals);
        var alone = factor.GradeOf(recorded);
        return new(factor, StateOf(factor, parts.Select(p => p.Found.State)))
        {
            Found = found, Recorded = recorded, Alone = alone,
            Better = alone is > 0 ? Towards(standard, factor, recorded, factor.Limits[alone.Value - 1].Value!.Value, 0m) : null,
            Worse = alone is { } at && at < factor.Limits.Count && factor.Limits[at].Value is { } limit ? Towards(standard, factor, recorded, limit, factor.AtLeast ? -factor.Step : factor.Step) : null,
            Because = new(Formula(factor, sums), [.. parts.Select(p => p.Found.Figure!)], $"limits: {factor.Source}; recording: {(standard.HasDesignation ? RuleSource : "by design, after " + RuleSource)}"),
        };
    }

    private static GradeStep Towards(GradeStandard standard, GradeFactor factor, decimal recorded, decimal limit, decimal beyond) =>
        new(factor.GradeOf(limit + beyond) is { } grade ? standard.GradeAt(grade) : "a grade whose limit was not read", limit, Math.Abs(recorded - limit));

    private static FoundState StateOf(GradeFactor factor, IEnumerable<FoundState> states)
    {
        var all = states.ToArray();
        return all.All(s => s == FoundState.Assumed) ? FoundState.Assumed : factor.IsSum || all.Any(s => s != FoundState.Seen) ? FoundState.Reckoned : FoundState.Seen;
    }

    private static string Formula(GradeFactor factor, SumPolicy sums)
    {
        var half = factor.Decimals == 0 ? "half up at the whole" : string.Create(CultureInfo.InvariantCulture, $"half up at {factor.Decimals} decimal{(factor.Decimals == 1 ? "" : "s")}");
        return !factor.IsSum ? $"As found, recorded {half}."
            : sums == SumPolicy.RecordedParts ? $"Sum of the parts, each recorded {half} first (usual on tickets, from memory; the text does not say)."
            : $"Sum of the parts as found, recorded {half} (chosen in the case; the text does not say).";
    }
}
