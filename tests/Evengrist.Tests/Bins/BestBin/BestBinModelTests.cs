using CsCheck;
using Evengrist.Bins;
using Evengrist.Bins.BestBin;

namespace Evengrist.Tests.Bins.BestBin;

public sealed class BestBinModelTests
{
    private static readonly BandValues Values = new("USD", new Dictionary<string, IReadOnlyList<ValuePoint>>
    {
        ["HW"] = [new(11, 212), new(12, 229), new(13, 240), new(13.5, 248), new(14, 262), new(14.5, 272)],
    });

    private static readonly TruckLoad Load = new("HW", 26, 14.0, 0.25) { FallingNumber = 420, TestWeight = 75.8 };
    private static readonly BinCandidate B02 = new("B02", "HW", 9100) { CapacityTonnes = 10_000, ProteinPercentAt12 = 12.1, FallingNumber = 382, Purity = 0.90, Band = new() { ProteinFrom = 11.9, ProteinTo = 12.3 } };
    private static readonly BinCandidate B05 = new("B05", "HW", 6900) { CapacityTonnes = 10_000, ProteinPercentAt12 = 13.9, FallingNumber = 418, Purity = 0.94, Band = new() { Name = "thin and strong", ProteinFrom = 13.6, ProteinTo = 14.6, TestWeightTo = 77.5 } };
    private static readonly BinCandidate Empty = new("B17", "HW", 0) { CapacityTonnes = 1500 };

    [Fact]
    public void Rank_WorkedCaseOfThePage_AsReckonedByHand()
    {
        // docs/model/best-bin.md [derived], by hand: Φ(2.4) − Φ(−1.6) = 0.93700; means 13.900375 and 12.105413; money −0.00 and (541.9 − 827.9)/26 = −11.00 USD/t.
        var ranked = Rank(Load, B02, Empty, B05);
        Assert.Equal(["B05", "B17", "B02"], ranked.Select(r => r.Bin));
        Assert.Equal([BandStanding.Belongs, BandStanding.NoBand, BandStanding.Stranger], ranked.Select(r => r.Standing));
        Assert.Equal(93.700, (double)ranked[0].Chance!.Value, 0.001);
        Assert.Equal(94.0, (double)ranked[0].PurityBefore!.Value, 1e-9);
        Assert.Equal(93.9989, (double)ranked[0].PurityAfter!.Value, 1e-3);
        Assert.Equal(13.900375, (double)ranked[0].ProteinAfter!.Value, 1e-6);
        Assert.Equal(3074, ranked[0].RoomLeft!.Value);
        Assert.Equal(0, (double)ranked[0].MoneyPerTonne!.Value, 1e-6);
        Assert.Equal(12.105413, (double)ranked[2].ProteinAfter!.Value, 1e-6);
        Assert.Equal(-11.00, (double)ranked[2].MoneyPerTonne!.Value, 0.005);
        Assert.Equal([541.9, -827.9], ranked[2].MoneyPerTonne!.Because!.Inputs.Select(i => Math.Round((double)i.Value, 1)));
        Assert.Contains("it would dilute it", ranked[2].Why, StringComparison.Ordinal);
        Assert.Equal("26.0 t on the bare floor", ranked[1].Layer);

        // 6000/LN + 50 with LN of 418 and 420 s weighted 6,900 : 26, by hand 418.0075 s.
        Assert.Equal(418.0075, (double)ranked[0].FallingNumberAfter!.Value, 1e-3);
    }

    [Fact]
    public void Rank_BinsThatCannotTakeIt_AreListedWithWhyNot()
    {
        var outcome = Assert.IsType<BinsRanked>(BestBinModel.Rank(Load,
        [
            B05, B02 with { Bin = "full", StockTonnes = 9990 }, B02 with { Bin = "gas", Barred = "under gas: placards up" }, B02 with { Bin = "other", Class = "SW" },
            B02 with { Bin = "far", IsReachable = false }, B02 with { Bin = "also", Class = "HS", Band = B02.Band! with { AlsoClasses = ["HW"] } },
        ], null));
        Assert.Equal(["B05", "also"], outcome.Ranked.Select(r => r.Bin));
        Assert.Equal(["far", "full", "gas", "other"], outcome.Infeasible.Select(i => i.Bin));
        Assert.Equal(["no route leads to it from the pit", "room for 10.0 t, the load is 26.0 t", "under gas: placards up", "it is for SW, the load is HW"], outcome.Infeasible.Select(i => Assert.Single(i.Reasons)));
        Assert.All(outcome.Ranked, r => Assert.Null(r.MoneyPerTonne));
    }

    [Fact]
    public void Rank_NoBinOrNoLoad_SaysSo()
    {
        var none = Assert.IsType<NoBin>(BestBinModel.Rank(Load, [B02 with { Barred = "shut: roof" }], null));
        Assert.Contains("set it aside", Assert.Single(none.Reasons), StringComparison.Ordinal);
        Assert.Equal("shut: roof", Assert.Single(Assert.Single(none.Infeasible).Reasons));
        Assert.Contains("above 0 t", Assert.Single(Assert.IsType<NoBin>(BestBinModel.Rank(Load with { Tonnes = 0 }, [B02], null)).Reasons), StringComparison.Ordinal);
    }

    [Fact]
    public void Rank_LoadOutsideTheOtherLimitsOfTheBand_IsAStranger()
    {
        Assert.Equal(0, BestBinModel.ChanceOf(Load with { TestWeight = 79.5 }, B05.Band!));
        Assert.Equal(0, BestBinModel.ChanceOf(Load with { TestWeight = null }, B05.Band!));
        Assert.True(BestBinModel.ChanceOf(Load with { TestWeight = null }, B05.Band! with { TestWeightFrom = 70, TestWeightTo = null }) > 0.9);
        Assert.Equal(1, BestBinModel.ChanceOf(Load with { ProteinUncertainty = 0 }, B05.Band!));
        Assert.Equal(0, BestBinModel.ChanceOf(Load with { ProteinUncertainty = 0, ProteinPercentAt12 = 14.6 }, B05.Band!));
    }

    [Fact]
    public void ChanceOf_ReadingBesideAnEdge_AsTheAcceptedScenario()
    {
        // practice A6 [calc]: reads 13.15 or 13.05 against an edge of 13.0 with u 0.25: 72.6 and 57.9 %.
        var band = new BinBand { ProteinFrom = 13.0, ProteinTo = 30 };
        Assert.Equal(0.726, BestBinModel.ChanceOf(Load with { ProteinPercentAt12 = 13.15 }, band), 5e-4);
        Assert.Equal(0.579, BestBinModel.ChanceOf(Load with { ProteinPercentAt12 = 13.05 }, band), 5e-4);
    }

    [Fact]
    public void Rank_UnreadContent_ShowsNoMeanAndNoMoney()
    {
        var ranked = Assert.Single(Rank(Load, B02 with { ProteinPercentAt12 = null, Purity = null }));
        Assert.True(ranked is { ProteinBefore: null, ProteinAfter: null, MoneyPerTonne: null, PurityBefore: null, PurityAfter: null });
    }

    [Fact]
    public void Rank_ProteinOfBinAndLoad_IsConserved() => Gen.Select(Gen.Double[1, 9000], Gen.Double[8, 17], Gen.Double[8, 17], Gen.Double[0.84, 0.92]).Sample((stock, lies, comes, dry) =>
    {
        var after = (double)Rank(Load with { ProteinPercentAt12 = comes, DryShare = 0.9 }, B02 with { StockTonnes = stock, ProteinPercentAt12 = lies, DryShare = dry })[0].ProteinAfter!.Value;
        Assert.Equal((stock * dry * lies) + (26 * 0.9 * comes), after * ((stock * dry) + (26 * 0.9)), 1e-6 * stock * lies);
        Assert.InRange(after, Math.Min(lies, comes) - 1e-9, Math.Max(lies, comes) + 1e-9);
    });

    [Fact]
    public void Rank_StraightValues_BlendingNeitherGainsNorLoses() => Gen.Select(Gen.Double[11.1, 11.9], Gen.Double[11.1, 11.9], Gen.Double[1, 9000]).Sample((lies, comes, stock) =>
        Assert.Equal(0, (double)Rank(Load with { ProteinPercentAt12 = comes }, B02 with { ProteinPercentAt12 = lies, StockTonnes = stock })[0].MoneyPerTonne!.Value, 1e-6));

    [Fact]
    public void Rank_OrderOfTheBins_DoesNotMatter() => Gen.Shuffle(new[] { B02, B05, Empty, B02 with { Bin = "B01" }, B05 with { Bin = "B06", Purity = 0.5 }, Empty with { Bin = "B18" } }).Sample(bins =>
        Assert.Equal(["B05", "B06", "B17", "B18", "B01", "B02"], Rank(Load, bins).Select(r => r.Bin)));

    [Fact]
    public void PerTonne_Table_IsStraightBetweenPointsAndHeldAtTheEnds()
    {
        Assert.Equal([212, 212, 220.5, 259.2, 272, 272], new[] { 5, 11, 11.5, 13.9, 14.5, 20 }.Select(p => Math.Round(Values.PerTonne("HW", p)!.Value, 9)));
        Assert.Null(Values.PerTonne("SW", 10));
        Assert.Contains("rising", Assert.Single((Values with { Classes = new Dictionary<string, IReadOnlyList<ValuePoint>> { ["HW"] = [new(12, 1), new(12, 2)] } }).Faults()), StringComparison.Ordinal);
    }

    [Fact]
    public void Papers_BandAndValues_ReadBackAndFaultsAreSaid()
    {
        Assert.True(BinPapers.TryReadBand(BinPapers.Write(B05.Band!), out var band, out _));
        Assert.Equal(B05.Band!.Words, band.Words);
        Assert.True(BinPapers.TryReadValues(BinPapers.Write(Values), out var values, out _));
        Assert.Equal(259.2, values.PerTonne("HW", 13.9)!.Value, 1e-9);
        Assert.False(BinPapers.TryReadBand("""{"proteinFrom":13,"proteinTo":12}""", out _, out var faults));
        Assert.Contains("lower to a higher", faults[0], StringComparison.Ordinal);
        Assert.False(BinPapers.TryReadValues("""{"currency":"usd","classes":{}}""", out _, out faults));
        Assert.Contains("capital letters", faults[0], StringComparison.Ordinal);
    }

    private static IReadOnlyList<RankedBin> Rank(TruckLoad load, params BinCandidate[] bins) =>
        Assert.IsType<BinsRanked>(BestBinModel.Rank(load, bins, (_, protein) => Values.PerTonne("HW", protein), "USD")).Ranked;
}
