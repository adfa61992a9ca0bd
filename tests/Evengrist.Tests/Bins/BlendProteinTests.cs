using CsCheck;
using Evengrist.Bins;
using Evengrist.Ledger;

namespace Evengrist.Tests.Bins;

public sealed class BlendProteinTests
{
    private static readonly PlaceId Field = new(1);

    [Fact]
    public void Of_TwoLoadsOfUnlikeMoisture_WeighsByDryMatter()
    {
        // Worked case of docs/model/bin-protein.md, by the protein balance: 30 t at 10 % moisture, 14 % dry, and 20 t at 16 %, 11 % dry:
        // (27.0·14 + 16.8·11)/43.8 = 562.8/43.8 = 12.8493 % dry. By mass as it lies it would be 12.8: the difference is the moisture.
        var blend = Blend((30e6, new LoadTest(14, 0.90, 0.2)), (20e6, new LoadTest(11, 0.84, 0.3)));
        Assert.Equal(12.8493, blend.PercentDry, 4);

        // u² = (27.0/43.8 · 0.2)² + (16.8/43.8 · 0.3)² = 0.015200 + 0.013241, u = 0.16864.
        Assert.Equal(0.16864, blend.StandardUncertaintyPercentDry!.Value, 5);
        Assert.Equal((11, 14, 2, 1.0), (blend.LeastPercentDry, blend.MostPercentDry, blend.LoadsRead, blend.ShareRead));
    }

    [Fact]
    public void Of_LoadsNotRead_CountInTheShareOnly()
    {
        var makeup = new Makeup([new PlacePart(Field, 40)], [new PlacePart(new(2), 10), new PlacePart(new(3), 20)]);
        var blend = BlendProtein.Of(makeup, load => load == new PlaceId(2) ? new LoadTest(13, 0.88, null) : null);
        Assert.Equal((13.0, 0.25, 1), (blend!.PercentDry, blend.ShareRead, blend.LoadsRead));
        Assert.Null(blend.StandardUncertaintyPercentDry);
    }

    [Fact]
    public void Of_NothingRead_IsNothing() => Assert.Null(BlendProtein.Of(new Makeup([new PlacePart(Field, 5)], [new PlacePart(new(2), 5)]), _ => null));

    [Fact]
    public void Of_Any_LiesBetweenLeastAndMostAndDoesNotDependOnOrder() =>
        Gen.Select(Gen.Double[1, 1e8], Gen.Double[8, 18], Gen.Double[0.8, 0.95], (grams, protein, dry) => (grams, new LoadTest(protein, dry, 0.2))).Array[1, 12].Sample(loads =>
        {
            var blend = Blend(loads);
            var turned = Blend([.. loads.Reverse()]);
            Assert.InRange(blend.PercentDry, blend.LeastPercentDry - 1e-9, blend.MostPercentDry + 1e-9);
            Assert.InRange(blend.StandardUncertaintyPercentDry!.Value, 0.2 / Math.Sqrt(loads.Length) - 1e-9, 0.2 + 1e-9);
            Assert.Equal(blend.PercentDry, turned.PercentDry, 9);
        });

    private static BlendProtein Blend(params (double Grams, LoadTest Test)[] loads) =>
        BlendProtein.Of(
            new Makeup([new PlacePart(Field, loads.Sum(l => l.Grams))], [.. loads.Select((l, i) => new PlacePart(new(i + 2), l.Grams))]),
            load => loads[load.Value - 2].Test)!;
}
