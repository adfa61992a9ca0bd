using CsCheck;
using Evengrist.Ledger;
using Evengrist.Mix;
using Evengrist.Planning.Mix;
using Evengrist.Planning.Solving;
using Evengrist.Quantities;

namespace Evengrist.Planning.Tests.Mix;

/// <summary>What has to hold for any mix.</summary>
public sealed class MixLawTests
{
    private const double Cent = 1e-5;

    private static readonly Gen<MixBin> OneBin =
        from protein in Gen.Double[9.5, 16]
        from falling in Gen.Double[150, 450]
        from weight in Gen.Double[74, 82]
        from don in Gen.Double[0, 1.5]
        from cost in Gen.Double[190, 300]
        from own in Gen.Double[0, 0.4]
        from moisture in Gen.Double[9, 15]
        select new MixBin("", "HW", cost)
        {
            MoisturePercent = moisture,
            Values = new Dictionary<Property, MixValue>
            {
                [Property.Protein] = new(protein, Basis.At12, own) { Instrument = "NIR", InstrumentUncertainty = 0.1 }, [Property.FallingNumber] = new(falling, default, 40 * own),
                [Property.TestWeight] = new(weight, default, own), [Property.Don] = new(don, Basis.Dry, own * 0.3),
            },
        };

    private static Gen<MixSpec> Any(int least, int most, double? step = null) =>
        from bins in OneBin.Array[least, most]
        from protein in Gen.Double[10, 14.5]
        from falling in Gen.Double[200, 340]
        from weight in Gen.Double[75, 79]
        from don in Gen.Double[0.3, 1.2]
        from sure in Gen.Double[0.5, 0.99]
        select new MixSpec
        {
            Bins = [.. bins.Select((b, i) => b with { Code = $"B{i + 1:00}" })],
            Limits =
            [
                new(Property.Protein) { Least = protein, Basis = Basis.At12, Confidence = sure }, new(Property.FallingNumber) { Least = falling, Confidence = sure },
                new(Property.TestWeight) { Least = weight }, new(Property.Don) { Most = don, Basis = Basis.Dry, Confidence = sure },
            ],
            Gates = new GateRules { StepPercent = step },
        };

    private static double Cost(MixSpec spec) => MixSolver.Solve(spec, new MixSearchOptions { RelativeGap = 1e-9 }) switch { MixSolved solved => solved.Cost.Today, MixClash => double.PositiveInfinity, var other => throw new InvalidOperationException(other.ToString()) };

    [Fact]
    public void Solve_BinsInAnotherOrder_CostsTheSame() => Any(2, 6).Sample(spec =>
    {
        var (one, other) = (Cost(spec), Cost(spec with { Bins = [.. spec.Bins.Reverse()] }));
        Assert.True(double.IsInfinity(one) ? double.IsInfinity(other) : Math.Abs(one - other) < Cent, $"{one} {other}");
    }, iter: 60);

    [Fact]
    public void Solve_OneMoreBin_NeverCostsMore() => Any(2, 6).Sample(spec =>
        Assert.True(Cost(spec) <= Cost(spec with { Bins = [.. spec.Bins.Take(spec.Bins.Count - 1)] }) + Cent), iter: 60);

    [Fact]
    public void Solve_TighterLimit_NeverCostsLess() => Gen.Select(Any(2, 6), Gen.Double[0, 0.5]).Sample((spec, by) =>
        Assert.True(Cost(spec with { Limits = [spec.Limits[0] with { Least = spec.Limits[0].Least + by }, .. spec.Limits.Skip(1)] }) >= Cost(spec) - Cent), iter: 60);

    [Fact]
    public void Solve_MoreConfidence_NeverCostsLess() => Any(2, 6).Sample(spec =>
        Assert.True(Cost(spec with { Limits = [.. spec.Limits.Select(l => l with { Confidence = null })] }) <= Cost(spec) + Cent), iter: 60);

    [Fact]
    public void Solve_CostsTimesAFactor_CostsThatFactor() => Gen.Select(Any(2, 5), Gen.Double[0.1, 10]).Sample((spec, factor) =>
    {
        var (one, other) = (Cost(spec), Cost(spec with { Bins = [.. spec.Bins.Select(b => b with { CostPerTonne = factor * b.CostPerTonne })] }));
        Assert.True(double.IsInfinity(one) ? double.IsInfinity(other) : Math.Abs((factor * one) - other) < factor * Cent + Cent);
    }, iter: 60);

    [Fact]
    public void Solve_InSteps_KeepsAllLimitsAndCostsAtLeastAsMuch() => Any(2, 7, step: 1).Sample(spec =>
    {
        if (MixSolver.Solve(spec) is MixSolved solved)
        {
            double[] shares = [.. spec.Bins.Select(b => solved.Share(b.Code))];
            Assert.Empty(MixCheck.Broken(spec, shares));
            Assert.All(solved.Limits, l => Assert.True(l.IsKept, $"{l.Limit.End.Words}: {l.Spare}"));
            Assert.All(solved.Limits.Where(l => l.Limit.End.Limit.Confidence is not null), l => Assert.True(l.Chance >= l.Limit.End.Limit.Confidence - 1e-6));
            Assert.True(Cost(spec with { Gates = new GateRules() }) <= solved.Cost.Today + Cent);
        }
    }, iter: 60);

    [Fact]
    public void Solve_InSteps_IsTheBestOfAllThereAre() => Any(3, 4, step: 5).Sample(spec =>
    {
        var best = double.PositiveInfinity;
        foreach (var shares in All(spec.Bins.Count, 20))
        {
            if (MixCheck.Broken(spec, shares).Count == 0)
            {
                best = Math.Min(best, spec.Bins.Zip(shares, (b, s) => b.CostPerTonne * s).Sum());
            }
        }

        var found = Cost(spec);
        Assert.True(double.IsInfinity(best) ? double.IsInfinity(found) : Math.Abs(found - best) < 1e-4, $"found {found}, best of all {best}");
    }, iter: 40);

    [Fact]
    public void Solve_Free_IsNoWorseThanAnyOfAFineGrid() => Any(3, 3).Sample(spec =>
    {
        var found = Cost(spec);
        foreach (var shares in All(3, 100).Where(s => MixCheck.Broken(spec, s).Count == 0))
        {
            Assert.True(found <= spec.Bins.Zip(shares, (b, s) => b.CostPerTonne * s).Sum() + 1e-3); // the check lets a millionth pass
        }
    }, iter: 30);

    /// <summary>The search of this room beside branch and bound of a large engine (SCIP), on the same question.</summary>
    [Fact]
    public void Solve_InStepsWithFewGates_CostsWhatALargeEngineFinds() => Gen.Select(Any(5, 9, step: 2), Gen.Int[2, 5], Gen.Double[0, 0.15]).Sample((any, most, least) =>
    {
        var spec = any with { Gates = any.Gates with { MostGates = most, LeastOpenShare = least } };
        var here = new MixSearch(spec, new MixSearchOptions { RelativeGap = 1e-9 }).Best(gates: true);
        var there = new MixSearch(spec, new MixSearchOptions { RelativeGap = 1e-9, Engine = LinearEngine.Scip }).Best(gates: true);
        Assert.Equal(there.IsThere, here.IsThere);
        Assert.True(!here.IsThere || Math.Abs(here.Cost - there.Cost) < 1e-4, $"here {here.Cost}, there {there.Cost}");
    }, iter: 15);

    private static IEnumerable<double[]> All(int bins, int steps) => Parts(bins, steps).Select(p => p.Select(n => (double)n / steps).ToArray());

    private static IEnumerable<int[]> Parts(int bins, int steps) => bins == 1 ? [[steps]]
        : Enumerable.Range(0, steps + 1).SelectMany(n => Parts(bins - 1, steps - n).Select(rest => (int[])[n, .. rest]));
}
