using Evengrist.Bins;
using Evengrist.Bins.BestBin;
using Evengrist.Ledger;
using Evengrist.Quantities;
using Evengrist.Tests.Ledger;

namespace Evengrist.Tests.Bins;

public sealed class BinQualityTests
{
    private static readonly Dictionary<PlaceId, LoadQuality> Loads = new()
    {
        [new(1)] = new(13.9, 0.25, 10, 400, 76),
        [new(2)] = new(12.1, 0.25, 12, 220, 80),
        [new(3)] = new(14.2, null, null, null, null),
        [new(4)] = new(null, null, null, null, null),
    };

    [Fact]
    public void Of_HalfAndHalf_BlendsByTheRightRules()
    {
        // A published pair: 400 and 220 s, half and half, give 279 s (docs/model/quantities.md). Test weight Σm/Σ(m/w) = 2/(1/76 + 1/80) = 77.949 [derived].
        var quality = Of(new() { ProteinFrom = 13.6, ProteinTo = 14.6 }, (1, 50), (2, 50));
        Assert.Equal(279, (double)quality.FallingNumber!.Value.Seconds, 0.5);
        Assert.Equal(77.949, quality.TestWeight!.Value, 0.001);
        Assert.Equal((0.5, 11.0, 1.0), (quality.Purity, quality.MoisturePercent, quality.ShareFalling));
    }

    [Fact]
    public void Of_LoadsNotRead_DoNotCountAndTheShareSaysSo()
    {
        var quality = Of(new() { ProteinFrom = 13.6, ProteinTo = 14.6 }, (1, 30), (3, 20), (4, 50));
        Assert.Equal((1.0, 0.3, 0.3, 0.5), (quality.Purity, quality.ShareFalling, quality.ShareTestWeight, quality.ShareProtein));
        Assert.Equal(400, (double)quality.FallingNumber!.Value.Seconds, 1e-3);
        Assert.True(Of(null, (4, 50)) is { Purity: null, TestWeight: null, FallingNumber: null, MoisturePercent: null });
    }

    [Fact]
    public void Of_OtherLimitsOfTheBand_TakeALoadOutOfIt()
    {
        Assert.Equal(1, Of(new() { ProteinFrom = 8, ProteinTo = 16, TestWeightTo = 77.5 }, (1, 50)).Purity);
        Assert.Equal(0, Of(new() { ProteinFrom = 8, ProteinTo = 16, TestWeightTo = 77.5 }, (2, 50)).Purity);
        Assert.Equal(0, Of(new() { ProteinFrom = 8, ProteinTo = 16, FallingNumberFrom = 410 }, (1, 50)).Purity);
    }

    [Fact]
    public void LoadQuality_ReadingsOfALoad_NewestUpToTheMomentAt12()
    {
        var mill = new PosedMill().Open(PlaceKind.Truck, "T1");
        mill.Record(
            new Measure("p1", "T1", PosedMill.Hour(0), Property.Protein, 15.0m, "%", Basis.Dry, "NIR", "", 0.2m), new Measure("p2", "T1", PosedMill.Hour(2), Property.Protein, 12.0m, "%", Basis.At12, "NIR"),
            new Measure("t", "T1", PosedMill.Hour(0), Property.TestWeight, 60.0m, "lb/bu", default, "test weight"));
        var quality = LoadQuality.Of(mill.Book, mill.Id("T1"), PosedMill.Hour(1));
        Assert.Equal(13.2, quality.ProteinPercentAt12!.Value, 1e-9);
        Assert.Equal(0.176, quality.ProteinUncertainty!.Value, 1e-9);
        Assert.Equal(78.939, quality.TestWeight!.Value, 1e-9);
        Assert.Equal(12.0, LoadQuality.Of(mill.Book, mill.Id("T1"), PosedMill.Hour(2)).ProteinPercentAt12!.Value, 1e-9);
    }

    private static BinQuality Of(BinBand? band, params (int Load, double Tonnes)[] parts)
    {
        PlacePart[] loads = [.. parts.Select(p => new PlacePart(new(p.Load), p.Tonnes * 1e6))];
        return BinQuality.Of(new Makeup(loads, loads), id => Loads[id], band);
    }
}
