using CsCheck;
using Evengrist.Tracing.Structure;

namespace Evengrist.Tests.Tracing.Structure;

/// <summary>Recall sizes of a plan, fragments, heels. The worked plans and the formulas are derived; simulations beside them share no code with them.</summary>
public sealed class RecallSizesTests
{
    // Derived: raw A 10 t, B 8 t, C 12 t; finished F1 6 t, F2 9 t, F3 15 t. First in first out: F1 = 6 A; F2 = 4 A + 5 B; F3 = 3 B + 12 C. The other: F1 = 6 A; F2 = 8 B + 1 A; F3 = 12 C + 3 A.
    [Theory]
    [InlineData("00 01 11 12 22", new[] { 15.0, 24, 15 }, 24, 18.0, 17.4)]
    [InlineData("00 01 11 02 22", new[] { 30.0, 9, 15 }, 30, 18.0, 18.4)]
    public void Plan_Worked_HasTheSizesWrittenDown(string links, double[] each, double worst, double equal, double byMass)
    {
        var sizes = RecallSizes.Of([10, 8, 12], [6, 9, 15], links.Split(' ').Select(l => (l[0] - '0', l[1] - '0')));
        Assert.Equal(each, sizes.Each);
        Assert.Equal((worst, 5, 10), (sizes.Worst, sizes.Links, sizes.Dispersion));
        Assert.Equal(equal, sizes.Expected, 9);
        Assert.Equal(byMass, sizes.ExpectedByMass, 9);
    }

    [Fact]
    public void Plan_Any_CountsLinksFromBothSidesAlikeAndWorstIsNoLessThanTheMean() => Gen.Int[1, 6].SelectMany(n => Gen.Double[1, 50].Array[n]).Select(Gen.Double[1, 50].Array[1, 6], Gen.Int[0, 63].Array[6]).Sample(c =>
    {
        var (raw, finished, bits) = c;
        var links = (from i in Enumerable.Range(0, raw.Length) from k in Enumerable.Range(0, finished.Length) where (bits[i] >> k & 1) == 1 select (i, k)).ToArray();
        var sizes = RecallSizes.Of(raw, finished, links);
        var down = Enumerable.Range(0, raw.Length).Sum(i => links.Count(l => l.i == i));
        var up = Enumerable.Range(0, finished.Length).Sum(k => links.Count(l => l.k == k));
        Assert.Equal(sizes.Dispersion, down + up);
        Assert.True(sizes.Worst >= sizes.Expected - 1e-9 && sizes.Worst >= sizes.ExpectedByMass - 1e-9);
        Assert.True(sizes.Worst <= finished.Sum() + 1e-9);
    });

    [Theory]
    [InlineData(25_000, 10_000)]
    [InlineData(3_000, 10_000)]
    [InlineData(10_000, 27_000)]
    public void Fragments_OrderAnywhereInABatch_MeanIsOnePlusQOverB(double order, double batch)
    {
        const int offsets = 20_000;
        var mean = Enumerable.Range(0, offsets).Average(i =>
        {
            var begin = (i + 0.5) * batch / offsets;
            return Math.Floor((begin + order) / batch) + 1;
        });
        Assert.Equal(Fragments.Expected(order, batch), mean, 3);
    }

    [Theory]
    [InlineData(1, 10)]
    [InlineData(7, 10)]
    [InlineData(30, 10)]
    [InlineData(41, 12)]
    public void Fragments_OfWholeUnits_MeanOverEveryBeginningIsOnePlusQLessOneOverB(int order, int batch)
    {
        var mean = Enumerable.Range(0, batch).Average(begin => Enumerable.Range(begin, order).Select(unit => unit / batch).Distinct().Count());
        Assert.Equal(Fragments.ExpectedOfUnits(order, batch), mean, 9);
    }

    [Fact]
    public void ChanceHit_IsNearTheMeanOverSimulatedBatches()
    {
        // A simulation with a generator of its own; 1 − (1 − p)^(1 + Q/B) takes the mean number of batches for the number, so it lies a little above.
        var (p, order, batch, hits, state) = (0.02, 25.0, 10.0, 0, 12345UL);
        double Next() => ((state = unchecked(state * 6364136223846793005UL + 1442695040888963407UL)) >> 11) / (double)(1UL << 53);
        const int trials = 200_000;
        for (var i = 0; i < trials; i++)
        {
            var count = (int)Math.Floor(Next() + order / batch) + 1;
            hits += Enumerable.Range(0, count).Any(_ => Next() < p) ? 1 : 0;
        }

        Assert.Equal(Fragments.ChanceHit(p, order, batch), hits / (double)trials, 0.002);
        Assert.Equal(0, Fragments.ChanceHit(0, order, batch));
        Assert.Equal(1, Fragments.ChanceHit(1, order, batch));
        Assert.Throws<ArgumentOutOfRangeException>(() => Fragments.Expected(0, 1));
    }

    // Derived: heel of 20 %.
    [Theory]
    [InlineData(0, 0.8)]
    [InlineData(1, 0.16)]
    [InlineData(2, 0.032)]
    [InlineData(3, 0.0064)]
    [InlineData(4, 0.00128)]
    [InlineData(8, 2.05e-6)]
    [InlineData(9, 0.41e-6)]
    public void Heel_OfATwentieth_FallsFivefoldALot(int before, double share) => Assert.Equal(share, Heel.ShareOf(0.2, before), share * 0.005);

    // Standard reaction engineering [memory]: a stirred vessel keeps e^−n after n contents.
    [Theory]
    [InlineData(1, 0.368)]
    [InlineData(2, 0.135)]
    [InlineData(3, 0.0498)]
    [InlineData(4.605, 0.01)]
    [InlineData(6.908, 0.001)]
    [InlineData(13.816, 1e-6)]
    public void WashOut_OfAStirredVessel_IsExponential(double contents, double left) => Assert.Equal(left, Heel.LeftAfter(contents), left * 0.004);
}
