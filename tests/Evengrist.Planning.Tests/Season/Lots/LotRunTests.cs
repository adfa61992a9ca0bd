using Evengrist.Ledger;
using Evengrist.Planning.Season.Lots;
using Evengrist.Quantities;
using Evengrist.Season;
using Evengrist.Season.Lots;

namespace Evengrist.Planning.Tests.Season.Lots;

public sealed class LotRunTests
{
    // Ten weeks of 100 t of mix at 13 % from plenty of 12 % and of 14 % at 300 a t: half and half [derived].
    private static SeasonSpec Year() => Years.Weeks(10, 13, Years.Wheat("LOW", 2000, 12)) with
    {
        Offers = [new(Years.Wheat("STRONG", 0, 14), [new(1000, 300)], 0, 9)],
    };

    private static LotSpec Lot(double tonnes, double protein = 14, double? asked = null) => new(Years.Wheat("lot", 0, protein), tonnes, 0) { AskedPerTonne = asked };

    private static LotWorth Worth(LotSpec lot, SeasonSpec? season = null) => Assert.IsType<LotWorth>(LotRun.Reckon(lot, season ?? Year()));

    [Fact]
    public void Reckon_LotLikeAnOffer_IsWorthWhatTheOfferCosts()
    {
        var worth = Worth(Lot(80));
        Assert.Equal(300, worth.First.PerTonne, 2);
        Assert.Equal(300, worth.Verified.PerTonne, 2);
        Assert.Equal(300 * 80, worth.Curve[^1].Worth, 1);
        Assert.Equal(300, worth.MostPerTonne, 2);
        Assert.Equal(80, worth.Uses.Sum(u => u.Tonnes), 3);
        var instead = Assert.Single(worth.Replaced, r => r.Wheat == "STRONG");
        Assert.Equal((-80, -80), (Math.Round(instead.DrawnTonnes, 3), Math.Round(instead.BoughtTonnes, 3)));
    }

    [Fact]
    public void Reckon_StrongerLot_StretchesFurtherByArithmetic()
    {
        // One t at 15 % lets 2 t of 12 % in where one at 14 % lets in 1: a t of it does the work of 1.5 t at 14 % and half a t of base; base left over is worth nothing here [derived].
        Assert.Equal(450, Worth(Lot(10, 15)).First.PerTonne, 1);
        Assert.Equal(450, Worth(Lot(10, 15)).MostPerTonne, 1);
    }

    [Fact]
    public void Reckon_MoreThanTheYearCanUse_IsWorthLessAndLess()
    {
        // 500 t of 14 % are wanted: of 800 t 300 are left over and worth nothing.
        var worth = Worth(Lot(800));
        Assert.Equal(9, worth.Curve.Count);
        Assert.All(worth.Curve.Zip(worth.Curve.Skip(1)), p => Assert.True(p.Second.Worth >= p.First.Worth - 1e-6 && p.Second.PerTonne <= p.First.PerTonne + 1e-6));
        Assert.Equal(500 * 300, worth.Curve[^1].Worth, 0);
        Assert.Equal(300.0 * 500 / 800, worth.MostPerTonne, 2);
        Assert.Equal(0, worth.Curve[^1].NextPerTonne, 4);
    }

    [Theory]
    [InlineData(280, 500, 500 * 20, (500 * 300) - (800 * 280))]
    [InlineData(310, 0, 0, (500 * 300) - (800 * 310))]
    public void Reckon_AskedPrice_SaysHowMuchPays(double asked, double tonnes, double saves, double wholeSaves)
    {
        var at = Worth(Lot(800, asked: asked)).AtPrice!;
        Assert.Equal((tonnes, saves), (Math.Round(at.Tonnes, 3), Math.Round(at.Saves, 1)));
        Assert.Equal(wholeSaves, at.WholeSaves, 0);
    }

    [Fact]
    public void Reckon_ProteinWithASpread_SaysWhatItsWorthHangsOn()
    {
        var lot = Lot(10) with { Wheat = Years.Wheat("lot", 0, 14) with { Quality = new(new Dictionary<Property, SeasonValue> { [Property.Protein] = new(14, 0.5, Basis.At12) }) } };
        var (lower, higher) = Worth(lot).Spread!.Value;
        Assert.Equal((225, 375), (Math.Round(lower, 2), Math.Round(higher, 2))); // 300·(protein − 12)/2 above a base that is free [derived]
        Assert.Null(Worth(Lot(10)).Spread);
    }

    [Fact]
    public void Reckon_CarryOutThatBinds_CountsWhatALotLeftAtTheEndSetsFree()
    {
        // 100 t of a class that no flour takes have to be left and only an offer at 300 brings them: a lot of it is worth 300 a t, left over [derived].
        var season = Years.Weeks(4, 12, Years.Wheat("LOW", 2000, 12)) with { Offers = [new(Years.Wheat("HARD", 0, 14, "HS"), [new(1000, 300)], 0, 3)], CarryOut = [new("HS", 100)] };
        season = season with { Flours = [season.Flours[0] with { Classes = ["HW"] }] };
        var worth = Worth(new LotSpec(Years.Wheat("lot", 0, 13, "HS"), 60, 0), season);
        Assert.Equal((300, 300, 60), (Math.Round(worth.First.PerTonne, 4), Math.Round(worth.MostPerTonne, 4), Math.Round(worth.LeftTonnes, 4)));
    }

    [Fact]
    public void Reckon_SameQuestionTwice_GivesTheSameAnswer() => Assert.Equal(Worth(Lot(800)).Curve, Worth(Lot(800)).Curve);

    [Fact]
    public void Reckon_WhatCannotBe_IsNamed()
    {
        string Why(LotSpec lot) => string.Join(" ", Assert.IsType<SeasonBadInput>(Assert.IsType<LotNotWorthed>(LotRun.Reckon(lot, Year())).Why).Faults);
        Assert.Contains("tonnes: it is -5", Why(Lot(-5)), StringComparison.Ordinal);
        Assert.Contains("knows no wheat of class ZZ; it knows HW", Why(Lot(5) with { Wheat = Years.Wheat("lot", 0, 14, "ZZ") }), StringComparison.Ordinal);
        Assert.Contains("period 10 is not among", Why(Lot(5) with { Period = 10 }), StringComparison.Ordinal);
        Assert.Contains("asked price: it is -1", Why(Lot(5, asked: -1)), StringComparison.Ordinal);
        Assert.Contains("is not known of the lot", Why(Lot(5) with { Wheat = Years.Wheat("lot", 0, 14) with { Quality = SeasonQuality.Unknown } }), StringComparison.Ordinal);
    }

    [Fact]
    public void Reckon_Stopped_IsAFailureAndSaysSo()
    {
        using var stop = new CancellationTokenSource();
        stop.Cancel();
        var outcome = Assert.IsType<LotNotWorthed>(LotRun.Reckon(Lot(10), Year(), stop: stop.Token));
        Assert.Equal(SeasonExit.Cancelled, Assert.IsType<SeasonFailed>(outcome.Why).Exit);
    }
}
