namespace Evengrist.Laboratory.Charts;

/// <summary>Looks for patterns on a chart. A rule fires at the last value of its pattern, and only if that value belongs to it. Model: docs/model/control-charts.md.</summary>
public static class RunRules
{
    /// <summary>The four rules that one handbook of quality control gives.</summary>
    public static IReadOnlyList<RunRule> Four { get; } = [RunRule.BeyondThree, RunRule.TwoOfThreeBeyondTwo, RunRule.FourOfFiveBeyondOne, RunRule.EightOnOneSide];

    /// <summary>The eight rules that a journal of quality technology gives.</summary>
    public static IReadOnlyList<RunRule> Eight { get; } =
        [RunRule.BeyondThree, RunRule.NineOnOneSide, RunRule.SixInOneDirection, RunRule.FourteenByTurns, RunRule.TwoOfThreeBeyondTwo, RunRule.FourOfFiveBeyondOne, RunRule.FifteenWithinOne, RunRule.EightBeyondOne];

    /// <summary>The sets a person chooses from, by name, case not mattering.</summary>
    public static IReadOnlyDictionary<string, IReadOnlyList<RunRule>> Sets { get; } = new Dictionary<string, IReadOnlyList<RunRule>>(StringComparer.OrdinalIgnoreCase) { ["Four"] = Four, ["One"] = [RunRule.BeyondThree], ["Eight"] = Eight };

    /// <summary>Places, from 0, at which a rule fires.</summary>
    /// <param name="z">Distances from the centre in standard deviations, in the order of time.</param>
    /// <param name="rule">The rule.</param>
    /// <exception cref="ArgumentOutOfRangeException">There is no such rule.</exception>
    public static IReadOnlyList<int> Fires(IReadOnlyList<double> z, RunRule rule)
    {
        ArgumentNullException.ThrowIfNull(z);
        return [.. Enumerable.Range(0, z.Count).Where(t => FiresAt(z, t, rule))];
    }

    private static bool FiresAt(IReadOnlyList<double> z, int t, RunRule rule) => rule switch
    {
        RunRule.BeyondThree => Math.Abs(z[t]) > 3,
        RunRule.TwoOfThreeBeyondTwo => SomeBeyond(z, t, 2, 3, 2),
        RunRule.FourOfFiveBeyondOne => SomeBeyond(z, t, 4, 5, 1),
        RunRule.EightOnOneSide => SomeBeyond(z, t, 8, 8, 0),
        RunRule.NineOnOneSide => SomeBeyond(z, t, 9, 9, 0),
        RunRule.SixInOneDirection => Last(z, t, 6) is { } six && (Steps(six).All(s => s > 0) || Steps(six).All(s => s < 0)),
        RunRule.FourteenByTurns => Last(z, t, 14) is { } turns && Steps(turns).Zip(Steps(turns).Skip(1), (a, b) => a * b < 0).All(b => b),
        RunRule.FifteenWithinOne => Last(z, t, 15) is { } within && within.All(v => Math.Abs(v) < 1),
        RunRule.EightBeyondOne => Last(z, t, 8) is { } beyond && beyond.All(v => Math.Abs(v) > 1) && beyond.Any(v => v > 0) && beyond.Any(v => v < 0),
        _ => throw new ArgumentOutOfRangeException(nameof(rule), rule, "There is no such rule."),
    };

    // The last value is one of them; a window at the beginning may be short as long as enough lie in it.
    private static bool SomeBeyond(IReadOnlyList<double> z, int t, int some, int of, double sigmas)
    {
        bool On(double side) => z[t] * side > sigmas && Enumerable.Range(Math.Max(0, t - of + 1), Math.Min(of, t + 1)).Count(i => z[i] * side > sigmas) >= some;
        return On(1) || On(-1);
    }

    private static double[]? Last(IReadOnlyList<double> z, int t, int count) => t + 1 >= count ? [.. Enumerable.Range(t + 1 - count, count).Select(i => z[i])] : null;

    private static IEnumerable<double> Steps(double[] values) => values.Zip(values.Skip(1), (a, b) => b - a);
}
