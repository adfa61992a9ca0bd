using Evengrist.Milling.Learning;
using Evengrist.Milling.OnPaper;
using MathNet.Numerics.LinearAlgebra;

namespace Evengrist.Milling.Drift;

/// <summary>Looks through the tests of a mill for what drifted: wear, rolls moved, torn cloths, chokes, wet feed. Page: docs/model/mill-drift.md.</summary>
public static class MillDrift
{
    /// <summary>Fewest tests: fewer are no history.</summary>
    public const int FewestTests = 4;

    private const int MostFound = 6;

    /// <summary>Looks for drift.</summary>
    /// <param name="tests">The tests; the passages and products of all their flow sheets are the same, their settings may differ.</param>
    /// <param name="fit">The mill tuned to those tests.</param>
    /// <param name="prices">What flour and feed bring; null for no money.</param>
    /// <param name="goOn">Told how far it is; false where it is to stop.</param>
    public static DriftOutcome Of(IReadOnlyList<DatedTest> tests, MillFitOutcome fit, DriftPrices? prices = null, Func<string, bool>? goOn = null)
    {
        ArgumentNullException.ThrowIfNull(tests);
        if (tests.Select(t => t.At).Distinct().Count() < FewestTests)
        {
            return new DriftNotLooked([$"There are tests of {tests.Select(t => t.At).Distinct().Count()} times: {FewestTests} or more are needed to tell drift from scatter. Take release tests of the breaks week by week."]);
        }

        if (fit is not MillTuned tuned)
        {
            return new DriftNotLooked([.. (fit as MillNotTuned)?.Reasons ?? []]);
        }

        DatedTest[] inOrder = [.. tests.OrderBy(t => t.At)];
        TuneKey[] keys = [.. tuned.Tuning.Keys, .. DriftCandidate.Tears(tuned.Tuning.Keys)];
        var rows = DriftRow.Of(inOrder, tuned.Tuning, keys);
        var equations = new DriftEquations(rows, tuned.Tuning);
        var all = DriftCandidate.All(inOrder[^1].Test.Sheet, keys, rows, inOrder);
        List<Stage> stages = [];
        bool GoOn() => goOn?.Invoke($"Looking for what drifted: {stages.Count} found") ?? true;
        while (stages.Count < MostFound && GoOn() && Look(equations, all, inOrder, keys, tuned.Tuning) is { } stage)
        {
            stages.Add(stage);
            equations.Take(stage.Best.Column, stage.Best.Spread);
        }

        if (!GoOn())
        {
            return new DriftNotLooked(["Looking for drift was stopped."]);
        }

        var reckoning = new DriftReckoning(inOrder[^1], keys, Sound(equations, keys, tuned.Tuning));
        var taken = equations.Found.Count - stages.Count;
        DriftFound[] found = [.. stages.Select((stage, i) =>
        {
            var unit = Vector<double>.Build.Dense(equations.Found.Count, k => k == taken + i ? 1 : 0);
            var amount = new Estimate(equations.Found[taken + i], Math.Sqrt(equations.Variance(unit)));
            return new DriftFound(stage.Best.Cause, inOrder[stage.Best.Start].At, amount, stage.Probability, stage.Rivals, Evidence(rows, equations, stage.Best, amount.Value), stage.Next, reckoning.Cost(stage.Best, amount, prices));
        })];
        return new DriftLooked(
            [.. found.OrderByDescending(f => f.Cost.MoneyPerDay?.Value ?? -f.Cost.FlourPoints.Value)],
            [.. rows.Select((r, i) => (r, i)).GroupBy(x => x.r.What, StringComparer.Ordinal).Where(g => g.Count() > 1).Select(g => new DriftSeries(g.Key, equations.Spread[g.Key], [.. g.Select(x => Point(x.r, x.i))]))]);

        DriftPoint Point(DriftRow row, int at)
        {
            var own = equations.Without(at, stages.Count);
            return new DriftPoint(inOrder[row.Test].At, row.Measured, own, Math.Abs(row.Measured - own) > 3 * equations.Spread[row.What]);
        }
    }

    // One more drift, where one is likelier than none.
    private static Stage? Look(DriftEquations equations, IReadOnlyList<DriftCandidate> all, DatedTest[] tests, IReadOnlyList<TuneKey> keys, MillTuning tuning)
    {
        var tried = all.Select(c => (Of: c, Tried: equations.Try(c.Column, c.Spread, c.Sign))).Select(x => (x.Of, x.Tried.Amount, Log: Math.Log(x.Of.Odds) + x.Tried.LogOdds)).ToArray();
        var most = Math.Max(0, tried.Max(t => t.Log));
        var sum = Math.Exp(-most) + tried.Sum(t => Math.Exp(t.Log - most));
        var causes = tried.GroupBy(t => t.Of.Cause)
            .Select(g => (g.MaxBy(t => t.Log).Of, g.MaxBy(t => t.Log).Amount, Probability: g.Sum(t => Math.Exp(t.Log - most)) / sum)).OrderByDescending(c => c.Probability).ToArray();
        if (Math.Exp(-most) / sum > 0.5)
        {
            return null;
        }

        var reckoning = causes[0].Probability > 0.97 ? null : new DriftReckoning(tests[^1], keys, Sound(equations, keys, tuning));
        return new Stage(causes[0].Of, causes[0].Probability, [.. causes.Skip(1).Take(3).Where(c => c.Probability > 0.01).Select(c => (c.Of.Cause, c.Probability))], reckoning?.Next(equations, [.. causes.Take(4)]));
    }

    private static Vector<double> Sound(DriftEquations equations, IReadOnlyList<TuneKey> keys, MillTuning tuning)
        => Vector<double>.Build.Dense(keys.Count, k => k < tuning.Values.Count ? tuning.Values[k] + equations.Found[k] : 0);

    private static IReadOnlyList<DriftEvidence> Evidence(IReadOnlyList<DriftRow> rows, DriftEquations equations, DriftCandidate of, double amount)
        => [.. rows.Select((r, i) => (r, i)).GroupBy(x => x.r.What, StringComparer.Ordinal)
            .Select(g => (g.Last().r, g.Last().i, Told: g.Sum(x => Math.Pow(of.Column[x.i] * amount / equations.Spread[x.r.What], 2))))
            .OrderByDescending(x => x.Told).Take(3).Where((x, i) => i == 0 || x.Told > 1) // less than one own spread in all tests together tells nothing
            .Select(x => new DriftEvidence(x.r.What, x.r.Measured, equations.Without(x.i, 0) - (of.Column[x.i] * amount), equations.Without(x.i, 0), equations.Spread[x.r.What]))];

    private sealed record Stage(DriftCandidate Best, double Probability, IReadOnlyList<(DriftCause, double)> Rivals, DriftTell? Next);
}
