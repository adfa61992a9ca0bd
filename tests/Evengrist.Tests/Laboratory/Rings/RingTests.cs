using System.Globalization;
using Evengrist.Laboratory.Rings;

namespace Evengrist.Tests.Laboratory.Rings;

/// <summary>Ring tests against NIST Dataplot's GLUCOSE set (table 1 of ASTM E 691-99, public domain) and the copper set of R package MASS; answers by R 4.2.2.</summary>
public sealed class RingTests
{
    // R package MASS, set chem: copper in wholemeal flour, micrograms per gram.
    private static readonly double[] Copper = [2.9, 3.1, 3.4, 3.4, 3.7, 3.7, 2.8, 2.5, 2.4, 2.4, 2.7, 2.2, 5.28, 3.37, 3.03, 3.03, 28.95, 3.77, 3.4, 2.2, 3.5, 3.6, 3.7, 3.7];

    [OpenDataFact]
    public void Glucose_HasThePrecisionOfTheStandard()
    {
        var found = InterlaboratoryModel.Of([.. OpenData.Csv("nist-e691-glucose.csv").Select(r => new RingResult(r["lab"], r["material"], double.Parse(r["glucose"], CultureInfo.InvariantCulture)))]);
        (double, double, double, double)[] wanted =
        [
            (41.518333, 0.6061274, 1.0632243, 1.0632243), (79.679583, 1.0027509, 1.4948537, 1.5796311), (135.14292, 2.6559448, 2.7482722, 3.4769780), (194.71708, 2.5950046, 2.6250651, 3.3657134), (294.49208, 2.6931364, 3.9349741, 4.1923340),
        ];
        foreach (var (one, (mean, means, within, across)) in found.Zip(wanted))
        {
            Assert.Equal(mean, one.Mean, 6e-6);
            Assert.Equal((means, within, across), (Math.Round(one.MeansDeviation, 7), Math.Round(one.Repeatability, 7), Math.Round(one.Reproducibility, 7)));
            Assert.Equal((2.152492, 2.060840), (Math.Round(one.MostH, 6), Math.Round(one.MostK, 6)));
            Assert.Equal((0.5156875, 0.6151665), (Math.Round(one.CochranLimits.At95, 7), Math.Round(one.CochranLimits.At99, 7)));
        }

        Assert.Equal((0.7252863, 0.6813414), (Math.Round(found[2].Cochran, 7), Math.Round(found[4].Cochran, 7)));
        var third = found[2].Cells.Single(c => c.Laboratory == "4");
        Assert.Equal((2.41, 2.14), (Math.Round(third.K, 2), Math.Round(third.H, 2)));
        Assert.Equal(2.33, found[4].Cells.Single(c => c.Laboratory == "2").K, 5e-3);
    }

    [Fact]
    public void Copper_OfWholemealFlour_IsHardlyMovedByItsWildResult()
    {
        var robust = RobustMean.AlgorithmA(Copper);
        Assert.Equal((3.2055659, 0.6741501, 0.1720129), (Math.Round(robust.Mean, 7), Math.Round(robust.Deviation, 7), Math.Round(robust.Uncertainty, 7)));
        Assert.Equal(3.2067241, RobustMean.Huber(Copper), 1e-6); // R's huber stops at a millionth of the scale.
        var (farthest, limit) = RobustMean.Grubbs(Copper);
        Assert.Equal((4.656926, 2.801551), (Math.Round(farthest, 6), Math.Round(limit, 6)));
        Assert.Equal([-1.4916, 3.0771, 38.188], new[] { 2.2, 5.28, 28.95 }.Select(x => Scores.Z(x, robust.Mean, robust.Deviation)).Select(z => z > 10 ? Math.Round(z, 3) : Math.Round(z, 4)));
    }

    // 12.35 ± 0.20 against 12.10 ± 0.12 (k = 2): 0.25/√(0.04 + 0.0144), by hand.
    [Fact]
    public void En_ByHand_Fails() => Assert.Equal(1.071866, Scores.En(12.35, 12.10, 0.20, 0.12), 5e-7);

    [Fact]
    public void Biases_OfLinkedLaboratories_AreFoundWhateverFlourTheyRead()
    {
        // Constructed: flours 11.8, 12.0, 12.3; laboratories off by 0, +0.2, −0.1; B and C share no flour, A links them.
        RingResult[] results = [new("A", "f1", 11.8), new("B", "f1", 12.0), new("A", "f2", 12.0), new("C", "f2", 11.9), new("A", "f3", 12.3), new("C", "f3", 12.2), new("D", "f9", 12.5), new("D", "f9", 12.6)];
        var against = RingModel.Biases(results, "A").ToDictionary(b => b.Laboratory);
        Assert.Equal((0, 0.2, -0.1), (against["A"].Bias!.Value, Math.Round(against["B"].Bias!.Value, 9), Math.Round(against["C"].Bias!.Value, 9)));
        Assert.Null(against["D"].Bias);
        var mean = RingModel.Biases(results, null).ToDictionary(b => b.Laboratory);
        Assert.Equal(0, mean["A"].Bias!.Value + mean["B"].Bias!.Value + mean["C"].Bias!.Value, 1e-12);
        Assert.Equal(0.3, mean["B"].Bias!.Value - mean["C"].Bias!.Value, 1e-9);
    }

    // Two laboratories, three flours read once by each: the difference of two means, by the paired t of any textbook.
    [Fact]
    public void Bias_OfTwo_IsThePairedDifference()
    {
        double[] d = [0.21, 0.15, 0.24];
        RingResult[] results = [.. d.SelectMany((x, i) => new[] { new RingResult("A", $"f{i}", 12 + i), new RingResult("B", $"f{i}", 12 + i + x) })];
        var b = RingModel.Biases(results, "A").Single(x => x.Laboratory == "B");
        Assert.Equal((0.2, true), (Math.Round(b.Bias!.Value, 9), b.IsBeyondChance!.Value));
        Assert.Equal(0.0458258 / Math.Sqrt(3), b.Deviation!.Value, 1e-6); // s of d: √(0.0042/2).
    }

    [Fact]
    public void Mills_SortTheWorstFirst_WithTheLaboratoryNamed()
    {
        // Target 11.7 to 12.1: M03 11.95/0.09, M07 11.78/0.07, by the normal distribution.
        MillFigures[] mills = [new("M01", "L1", 11.9, 0.06, 60), new("M03", "L3", 11.95, 0.09, 60), new("M07", "L7", 11.78, 0.07, 60)];
        RingResult[] ring = [.. new[] { 11.8, 11.9, 12.0, 12.1 }.SelectMany((f, i) => new[] { new RingResult("brand", $"f{i}", f), new RingResult("L7", $"f{i}", f - 0.12 + (0.01 * (i % 2))), new RingResult("L3", $"f{i}", f + (0.01 * (1 - (i % 2)))) })];
        var found = MillsModel.Of(mills, ring, 11.7, 12.1, "brand");
        Assert.Equal(["M07", "M03", "M01"], found.Select(m => m.Figures.Mill));
        Assert.Equal((0.38, 12.7), (Math.Round(found[0].Reported.Cpk, 2), Math.Round(100 * found[0].ShareOut, 1)));
        Assert.Equal((0.56, 5.1), (Math.Round(found[1].Reported.Cpk, 2), Math.Round(100 * found[1].ShareOut, 1)), (a, b) => Math.Abs(a.Item1 - b.Item1) < 0.011 && Math.Abs(a.Item2 - b.Item2) < 0.11);
        Assert.Contains("its laboratory reads 0.1", found[0].Remark, StringComparison.Ordinal);
        Assert.True(found[0].Flour!.Cpk > found[0].Reported.Cpk);
        Assert.Empty(found[1].Remark);
        Assert.Contains("cannot be told apart", found[2].Remark, StringComparison.Ordinal);
    }

    [Fact]
    public void FlourBounds_HoldTheBiasOfTheLaboratoryToo()
    {
        // By hand: bias −0.2 ± 0.0264575 (the paired differences 0.21, 0.15, 0.24; s/√3); mean put right 12.0 of limits 11.7 and 12.3, s 0.1: Cpk 1. Half width of 50 values 1.959964·√(1/450 + 1/98) = 0.218484
        // [the e-Handbook's formula, from memory]; of the bias 1.959964·0.0264575/0.3 = 0.172852; together 0.278591.
        double[] d = [0.21, 0.15, 0.24];
        RingResult[] ring = [.. d.SelectMany((x, i) => new[] { new RingResult("brand", $"f{i}", 12 + i), new RingResult("L", $"f{i}", 12 + i - x) })];
        var mill = Assert.Single(MillsModel.Of([new("M", "L", 11.8, 0.1, 50)], ring, 11.7, 12.3, "brand"));
        Assert.Equal(1, mill.Flour!.Cpk, 1e-9);
        Assert.Equal((1 - 0.278591, 1 + 0.278591), (mill.FlourBounds!.Value.Lower, mill.FlourBounds.Value.Upper), (a, b) => Math.Abs(a.Item1 - b.Item1) < 2e-6 && Math.Abs(a.Item2 - b.Item2) < 2e-6);
        Assert.Null(Assert.Single(MillsModel.Of([new("M", "L", 11.8, 0.1, 50)], ring[..2], 11.7, 12.3, "brand")).FlourBounds); // One flour read once: a bias without its ±.
    }

    [Fact]
    public void Faults_OfWhatCannotBe_NameEach()
    {
        Assert.Contains("3 or more", InterlaboratoryModel.Fault([new("A", "f", 1), new("B", "f", 1)]), StringComparison.Ordinal);
        Assert.Contains("two or more", InterlaboratoryModel.Fault([new("A", "f", 1), new("B", "f", 1), new("C", "f", 1)]), StringComparison.Ordinal);
        Assert.Contains("two results or more", Assert.Single(MillsModel.Faults([new("M", "L", 1, 0, 9)], [], 1, 2, null)), StringComparison.Ordinal);
        Assert.Contains("has no ring result", Assert.Single(MillsModel.Faults([new("M", "L", 1, 1, 9)], [], 1, 2, "X")), StringComparison.Ordinal);
        Assert.Contains("stands there 2 times", Assert.Single(MillsModel.Faults([new("M", "L", 1, 1, 9), new("M", "L", 1, 1, 9)], [], 1, 2, null)), StringComparison.Ordinal);
    }
}
