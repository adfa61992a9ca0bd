using Evengrist.Ledger;
using Evengrist.Mix;
using MathNet.Numerics.Distributions;

namespace Evengrist.Planning.Tests.Mix;

/// <summary>Mixes from books and model libraries, and their answers.</summary>
public sealed class PublishedMixTests
{
    /// <summary>Taha, Operations Research, example 2.2-2: 800 lb of maize and soybean meal, protein at least 30 %, fibre at most 5 %; cost 437.647.</summary>
    [Fact]
    public void Solve_DietOfMaizeAndSoya_IsTheTextbooks()
    {
        var solved = Mixes.Solved(new MixSpec
        {
            Bins = [Mixes.Bin("maize", 0.30, (Property.Protein, 9, 0), (Property.Ash, 2, 0)), Mixes.Bin("soya", 0.90, (Property.Protein, 60, 0), (Property.Ash, 6, 0))],
            Limits = [Mixes.Least(Property.Protein, 30), Mixes.Most(Property.Ash, 5)], // ash stands for fibre: both are shares of the solids
        });
        Assert.Equal(470.588, 800 * solved.Share("maize"), 3);
        Assert.Equal(329.412, 800 * solved.Share("soya"), 3);
        Assert.Equal(437.647, 800 * solved.Cost.Today, 3);
    }

    /// <summary>GAMS model library, BLEND: nine alloys of lead, zinc and tin to 30/30/40; b 0.6 and d 0.4 cost 4.98.</summary>
    [Fact]
    public void Solve_Alloy_IsTheModelLibrarys()
    {
        double[] lead = [10, 10, 40, 60, 30, 30, 30, 50, 20], zinc = [10, 30, 50, 30, 30, 40, 20, 40, 30], price = [4.1, 4.3, 5.8, 6.0, 7.6, 7.5, 7.3, 6.9, 7.3];
        MixLimit Just(Property what, double value) => new(what) { Least = value, Most = value };
        var solved = Mixes.Solved(new MixSpec
        {
            Bins = [.. Enumerable.Range(0, 9).Select(i => Mixes.Bin(((char)('a' + i)).ToString(), price[i], (Property.Damaged, lead[i], 0), (Property.Vitreous, zinc[i], 0), (Property.Sprouted, 100 - lead[i] - zinc[i], 0)))],
            Limits = [Just(Property.Damaged, 30), Just(Property.Vitreous, 30), Just(Property.Sprouted, 40)], // shares of the mass
        });
        Assert.Equal(0.6, solved.Share("b"), 6);
        Assert.Equal(0.4, solved.Share("d"), 6);
        Assert.Equal(4.98, solved.Cost.Today, 6);
    }

    /// <summary>The case "A Blending Problem" of the PuLP documentation; its minima and maxima for 100 g from memory. Beef 60, gel 40, cost 0.52.</summary>
    [Fact]
    public void Solve_CatFood_IsTheCaseStudys()
    {
        string[] names = ["chicken", "beef", "mutton", "rice", "wheat", "gel"];
        double[] price = [0.013, 0.008, 0.010, 0.002, 0.005, 0.001], protein = [10, 20, 15, 0, 4, 0], fat = [8, 10, 11, 1, 1, 0], fibre = [0.1, 0.5, 0.3, 10, 15, 0], salt = [0.2, 0.5, 0.7, 0.2, 0.8, 0];
        var solved = Mixes.Solved(new MixSpec
        {
            Bins = [.. names.Select((n, i) => Mixes.Bin(n, price[i], (Property.Protein, protein[i], 0), (Property.WetGluten, fat[i], 0), (Property.Damaged, fibre[i], 0), (Property.Ergot, salt[i], 0)))],
            Limits = [Mixes.Least(Property.Protein, 8), Mixes.Least(Property.WetGluten, 6), Mixes.Most(Property.Damaged, 2), Mixes.Most(Property.Ergot, 0.4)],
        });
        Assert.Equal(0.60, solved.Share("beef"), 6);
        Assert.Equal(0.40, solved.Share("gel"), 6);
        Assert.Equal(0.52, 100 * solved.Cost.Today, 6);
    }

    private static MixSpec Grist(double falling) => new()
    {
        Bins =
        [
            Mixes.Bin("A", 310, (Property.Protein, 14.8, 0), (Property.Ash, 1.55, 0), (Property.FallingNumber, 400, 0)), Mixes.Bin("B", 262, (Property.Protein, 12.4, 0), (Property.Ash, 1.50, 0), (Property.FallingNumber, 360, 0)),
            Mixes.Bin("C", 228, (Property.Protein, 10.2, 0), (Property.Ash, 1.62, 0), (Property.FallingNumber, 310, 0)) with { MostShare = 0.40 },
            Mixes.Bin("D", 240, (Property.Protein, 13.2, 0), (Property.Ash, 1.58, 0), (Property.FallingNumber, 190, 0)) with { MostShare = 0.25 },
        ],
        Limits = [Mixes.Least(Property.Protein, 12.6), Mixes.Most(Property.Ash, 1.56), Mixes.Least(Property.FallingNumber, falling)],
    };

    /// <summary>A constructed grist, solved apart from this program: falling number through the liquefaction number.</summary>
    [Fact]
    public void Solve_Grist_FallingNumberThroughItsLiquefactionNumber()
    {
        var solved = Mixes.Solved(Grist(300));
        Assert.Equal([0.01692, 0.78384, 0, 0.19924], new[] { "A", "B", "C", "D" }.Select(b => Math.Round(solved.Share(b), 5)));
        Assert.Equal(258.4289, solved.Cost.Today, 4);
        Assert.Equal(300.0, solved.Of(Property.FallingNumber).Value, 6);
        Assert.Equal(1.51679, solved.Of(Property.Ash).Value, 5);
        Assert.Equal(12.600, solved.Of(Property.Protein).Value, 6);
        var harder = Mixes.Solved(Grist(320));
        Assert.Equal([0.041367, 0.832735, 0, 0.125898], new[] { "A", "B", "C", "D" }.Select(b => Math.Round(harder.Share(b), 6)));
        Assert.Equal(261.2159, harder.Cost.Today, 4);
    }

    /// <summary>The plain average would have taken 75 % B and 25 % D at 256.50, which gives 287.8 s: the check refuses it.</summary>
    [Fact]
    public void Check_GristOfThePlainAverage_IsRefused()
    {
        var spec = Grist(300);
        Assert.Contains("falling number", Assert.Single(MixCheck.Broken(spec, [0, 0.75, 0, 0.25])), StringComparison.Ordinal);
        var wrong = MixBlend.WheatOf([(spec.Bins[1], 0.75), (spec.Bins[3], 0.25)], Property.FallingNumber, default);
        Assert.Equal(287.8, wrong!.Value, 1);
    }

    private static MixSpec Feed(double? confidence) => new()
    {
        Bins =
        [
            Mixes.Bin("barley", 24.55, (Property.Protein, 12.0, Math.Sqrt(0.28)), (Property.WetGluten, 2.3, 0)), Mixes.Bin("oats", 26.75, (Property.Protein, 11.9, Math.Sqrt(0.19)), (Property.WetGluten, 5.6, 0)),
            Mixes.Bin("sesame", 39.00, (Property.Protein, 41.8, Math.Sqrt(20.5)), (Property.WetGluten, 11.1, 0)), Mixes.Bin("groundnut", 40.50, (Property.Protein, 52.1, Math.Sqrt(0.62)), (Property.WetGluten, 1.3, 0)),
        ],
        Limits = [Mixes.Least(Property.Protein, 21, confidence), Mixes.Least(Property.WetGluten, 5)], // wet gluten stands for fat
    };

    /// <summary>GAMS model library, CHANCE (after a text on nonlinear programming of 1968): 28.9426 by the means, 29.894378 with mean − 1.645 √(Σσ²x²) ≥ 21.</summary>
    [Fact]
    public void Solve_ChanceConstrainedFeed_IsTheModelLibrarys()
    {
        var means = Mixes.Solved(Feed(null));
        Assert.Equal([0.685245, 0.012699, 0.302056], new[] { "barley", "oats", "sesame" }.Select(b => Math.Round(means.Share(b), 6)));
        Assert.Equal(28.9426, means.Cost.Today, 4);
        var sure = Mixes.Solved(Feed(Normal.CDF(0, 1, 1.645)));
        Assert.Equal(29.894378, sure.Cost.Today, 6);
        Assert.Equal([0.635522, 0.312702, 0.051777], new[] { "barley", "sesame", "groundnut" }.Select(b => Math.Round(sure.Share(b), 6)));
        Assert.Equal(sure.Cost.Today - means.Cost.Today, sure.PriceOfConfidence!.Value, 6);
    }

    /// <summary>Two wheats by hand: 13.8 ± 0.25 and 11.4 ± 0.35 (one standard deviation), at least 12.2 with 95 %: 48.248 % of the first, mean 12.558; a third by the means.</summary>
    [Fact]
    public void Solve_TwoWheatsWithConfidence_IsTheRootByHand()
    {
        MixSpec Two(double? confidence) => new()
        {
            Bins = [Mixes.Bin("A", 300, (Property.Protein, 13.8, 0.25)), Mixes.Bin("B", 200, (Property.Protein, 11.4, 0.35))], Limits = [Mixes.Least(Property.Protein, 12.2, confidence)],
        };
        var sure = Mixes.Solved(Two(0.95));
        Assert.Equal(0.48248, sure.Share("A"), 5);
        Assert.Equal(12.558, sure.Of(Property.Protein).Value, 3);
        Assert.Equal(0.95, Assert.Single(sure.Limits).Chance, 6);
        Assert.Equal(1 / 3.0, Mixes.Solved(Two(null)).Share("A"), 6);
    }
}
