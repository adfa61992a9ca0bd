using CsCheck;
using Evengrist.Quantities;

namespace Evengrist.Tests.Quantities;

public sealed class MassTests
{
    [Fact]
    public void Split_AnyMassAndWeights_PartsSumToTheMass() =>
        Splits(1L << 52).Sample(s => s.Mass.Split(s.Weights).Aggregate(Mass.Zero, (sum, part) => sum + part) == s.Mass);

    [Fact]
    public void Split_AnyMassAndWeights_PartsAreWithinAGramOfTheirShare() =>
        Splits(1L << 40).Sample(s => s.Mass.Split(s.Weights).Zip(s.Weights, (part, weight) =>
            Math.Abs(part.Grams - (s.Mass.Grams * (weight / s.Weights.Sum()))) <= 1.001 && (weight > 0 || part == Mass.Zero)).All(held => held));

    [Fact]
    public void Split_ThreeEqualParts_FirstTakesTheGramLeftOver() =>
        Assert.Equal([334L, 333L, 333L], Grams(Mass.FromGrams(1000).Split([1, 1, 1]))); // by the definition of largest remainder

    [Fact]
    public void Split_OneBag_GivesTheRecallCase() =>
        Assert.Equal([7653L, 7347L, 10_000L], Grams(Mass.FromGrams(25_000).Split([25 * 0.6 / 49, 24 * 0.6 / 49, 0.4]))); // derived by hand: 7653.06, 7346.94, 10 000

    [Fact]
    public void Split_NothingOrBeyondWhatADoubleCounts_StillSums()
    {
        Assert.Equal([0L, 0L], Grams(Mass.Zero.Split([1, 2])));
        Assert.Equal(long.MaxValue, Mass.FromGrams(long.MaxValue).Split([1, 1, 1]).Sum(p => p.Grams));
    }

    [Theory]
    [InlineData(new[] { 1.0, -1.0 })]
    [InlineData(new[] { double.NaN })]
    [InlineData(new[] { 0.0, 0.0 })]
    [InlineData(new double[0])]
    public void Split_WeightsThatCannotBe_Refused(double[] weights) =>
        Assert.Throws<ArgumentException>(nameof(weights), () => Mass.FromGrams(10).Split(weights));

    [Fact]
    public void Split_NegativeMass_Refused() =>
        Assert.Throws<ArgumentException>(() => Mass.FromGrams(-1).Split([1]));

    [Fact]
    public void Sum_AnyOrder_IsTheSame() =>
        Gen.Long[-1L << 40, 1L << 40].Array[0, 50].Sample(grams =>
            grams.Aggregate(Mass.Zero, (sum, g) => sum + Mass.FromGrams(g)) == grams.Reverse().Aggregate(Mass.Zero, (sum, g) => Mass.FromGrams(g) + sum));

    [Fact]
    public void Sum_BeyondTheRange_Throws()
    {
        var most = Mass.FromGrams(long.MaxValue);
        Assert.Throws<OverflowException>(() => most + Mass.FromGrams(1));
        Assert.Throws<OverflowException>(() => Mass.FromTonnes(decimal.MaxValue / 1_000_000m));
    }

    [Theory]
    [InlineData("0.0004", 0)]
    [InlineData("0.0005", 1)]
    [InlineData("-0.0005", -1)]
    [InlineData("26340", 26_340_000)]
    public void FromKilograms_HalfAGram_GoesAwayFromZero(string kilograms, long grams) =>
        Assert.Equal(grams, Mass.FromKilograms(Num.Of(kilograms)).Grams);

    [Fact]
    public void Pounds_OneBushelOfWheat_IsSixty()
    {
        var bushel = Mass.FromPounds(60m); // 60 × 453.59237 g = 27 215.5422 g, by definition of the pound
        Assert.Equal(27_216, bushel.Grams);
        Num.Near(1m, bushel.WheatBushels, 0.00002m);
    }

    private static Gen<(Mass Mass, double[] Weights)> Splits(long mostGrams) =>
        Gen.Select(Gen.Long[0, mostGrams], Gen.OneOf(Gen.Const(0.0), Gen.Double[0, 1e6]).Array[1, 40])
            .Where(s => s.Item2.Sum() > 0)
            .Select((grams, weights) => (Mass.FromGrams(grams), weights));

    private static long[] Grams(Mass[] parts) => [.. parts.Select(p => p.Grams)];
}
