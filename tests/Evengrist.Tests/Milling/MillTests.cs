using CsCheck;
using Evengrist.Milling.Sheet;
using Evengrist.Milling.Solving;
using Evengrist.Milling.Stock;

namespace Evengrist.Tests.Milling;

/// <summary>A whole mill solved: conservation, monotony, reversal, order, and each way solving can end.</summary>
public sealed class MillTests
{
    [Fact]
    public void Solve_ASmallMill_ClosesEveryPart()
    {
        var solved = new MillRun(MillModel.Of(SmallMill.Sheet, SmallMill.Wheat)).Read();
        Assert.Equal(MillExit.Converged, solved.Report.Exit);
        Assert.InRange(solved.Report.Closure, 0, 1e-9);
        Assert.All(Enumerable.Range(0, MillWheat.PartCount), part => Assert.Equal(8 * SmallMill.Wheat.Parts[part].Share, solved.Products.Sum(p => p.Flow.Parts[part]), 8));
        Assert.All(solved.Passages, p => Assert.Equal(p.In.DryTonnesPerHour, p.Outlets.Sum(o => o.DryTonnesPerHour), 8));
        Assert.All(solved.Products, p => Assert.True(p.Flow.Parts.All(x => x >= 0) && p.Flow.DamagedTonnesPerHour >= 0));
        Assert.Equal(8 * 1.7, solved.Products.Sum(p => p.Flow.DryTonnesPerHour * p.Flow.AshPercentDry), 7);
        Assert.Equal(8 * 14.2, solved.Products.Sum(p => p.Flow.DryTonnesPerHour * p.Flow.ProteinPercentDry), 7);
        Assert.InRange(solved.Products.Sum(p => p.Flow.WaterTonnesPerHour), 0.85 * 8 * 16 / 84, 8 * 16 / 84.0);
    }

    // An invented network of fixed shares with three loops; loads derived by solving its six equations beside the code.
    [Fact]
    public void Solve_ANetworkOfFixedShares_GivesTheWorkedLoads()
    {
        static Passage P(string code, params (string To, double Share)[] spouts) => new(code, PassageKind.Break, [], [.. spouts.Select(s => new Spout(s.To, s.Share))])
        {
            Rolls = new RollPair(300, 9000) { FlutesPerCentimetre = 5, Disposition = Disposition.DullToDull },
        };
        var sheet = new FlowSheet("fixed shares", "B1",
        [
            P("B1", ("B2", 0.70), ("SIZ", 0.20), ("1M", 0.07), ("flour", 0.03)), P("B2", ("bran", 0.22), ("SIZ", 0.38), ("1M", 0.30), ("flour", 0.10)),
            P("SIZ", ("1M", 0.62), ("TAIL", 0.18), ("flour", 0.20)), P("1M", ("2M", 0.38), ("TAIL", 0.07), ("flour", 0.55)),
            P("2M", ("1M", 0.10), ("TAIL", 0.30), ("flour", 0.60)), P("TAIL", ("SIZ", 0.08), ("2M", 0.22), ("flour", 0.35), ("shorts", 0.35)),
        ], [new MillProduct("flour", ProductKind.Flour), new MillProduct("bran", ProductKind.Bran), new MillProduct("shorts", ProductKind.Wheatfeed)]);
        var solved = new MillRun(MillModel.Of(sheet, SmallMill.Wheat with { DryTonnesPerHour = 100 })).Read();
        Assert.Equal(MillExit.Converged, solved.Report.Exit);
        (string Code, double Load)[] loads = [("B1", 100), ("B2", 70), ("SIZ", 48.30169), ("1M", 60.72247), ("2M", 27.75419), ("TAIL", 21.27113)];
        Assert.All(loads, l => Assert.Equal(l.Load, solved.Passage(l.Code).In.DryTonnesPerHour, 5));
        (string Code, double Load)[] products = [("flour", 77.15510), ("bran", 15.4), ("shorts", 7.44490)];
        Assert.All(products, l => Assert.Equal(l.Load, solved.Product(l.Code).Flow.DryTonnesPerHour, 5));
    }

    [Fact]
    public void Solve_PassagesListedInAnyOrder_IsTheSameMill()
    {
        var there = new MillRun(MillModel.Of(SmallMill.Sheet, SmallMill.Wheat)).Read();
        var back = new MillRun(MillModel.Of(SmallMill.Sheet with { Passages = [.. SmallMill.Sheet.Passages.Reverse()] }, SmallMill.Wheat)).Read();
        Assert.All(there.Products, p => Assert.InRange(back.Product(p.Product.Code).Flow.DryTonnesPerHour - p.Flow.DryTonnesPerHour, -1e-8, 1e-8));
    }

    [Fact]
    public void Solve_TheSameMillTwice_IsTheSameToTheLastDigit()
    {
        var model = MillModel.Of(SmallMill.Sheet, SmallMill.Wheat);
        Assert.Equal(new MillRun(model).Read().Products.Select(p => p.YieldPercent), new MillRun(model).Read().Products.Select(p => p.YieldPercent));
    }

    // Third break opened by 0.05 mm, as a head miller would try it; directions are common practice.
    [Fact]
    public void ThirdBreak_OpenedByFiveHundredths_ReleasesLess_AndBranCarriesMore()
    {
        var (now, wider) = (new MillRun(MillModel.Of(SmallMill.Sheet, SmallMill.Wheat)).Read(), new MillRun(MillModel.Of(SmallMill.WithGap("3B", 190), SmallMill.Wheat)).Read());
        Assert.True(wider.Passage("3B").ReleasePercent < now.Passage("3B").ReleasePercent);
        Assert.True(wider.Product("3B-flour").YieldPercent < now.Product("3B-flour").YieldPercent);
        Assert.True(wider.Passage("BF").In.DryTonnesPerHour > now.Passage("BF").In.DryTonnesPerHour);
        Assert.True(wider.TonnesPerHour(ProductKind.Bran) > now.TonnesPerHour(ProductKind.Bran));
        Assert.True(wider.TonnesPerHour(ProductKind.Flour) < now.TonnesPerHour(ProductKind.Flour));
        Assert.Equal(now.Products.Select(p => p.YieldPercent), new MillRun(MillModel.Of(SmallMill.WithGap("3B", 140), SmallMill.Wheat)).Read().Products.Select(p => p.YieldPercent));
    }

    [Fact]
    public void Release_OfAnyBreak_FallsAsItsGapOpens() => Gen.Select(Gen.OneOf(Gen.Const("1B"), Gen.Const("2B"), Gen.Const("3B")), Gen.Double[100, 600], Gen.Double[5, 200]).Sample((code, gap, more) =>
    {
        var (narrow, wide) = (Release(code, gap), Release(code, gap + more));
        Assert.True(narrow > wide, $"{code} {gap} {more}: {narrow} {wide}");
    }, iter: 60);

    [Fact]
    public void Wheat_Softer_GivesMoreBreakFlour() =>
        Assert.True(BreakFlour(SmallMill.Of(25)) > BreakFlour(SmallMill.Of(65)));

    [Fact]
    public void Wheat_Drier_PowdersMoreBranIntoFlour() =>
        Assert.True(FlourAsh(SmallMill.Of(65, 14.5)) > FlourAsh(SmallMill.Of(65, 16.5)));

    [Fact]
    public void Solve_TwiceTheMillAtTwiceTheFeed_IsTwiceTheFlow()
    {
        var twice = SmallMill.Sheet with
        {
            Passages = [.. SmallMill.Sheet.Passages.Select(p => p with { ClothSquareMetres = 2 * p.ClothSquareMetres, Rolls = p.Rolls is { } r ? r with { LengthMillimetres = 2 * r.LengthMillimetres } : null })],
        };
        var (one, two) = (new MillRun(MillModel.Of(SmallMill.Sheet, SmallMill.Wheat)).Read(), new MillRun(MillModel.Of(twice, SmallMill.Wheat with { DryTonnesPerHour = 16 })).Read());
        Assert.All(one.Products, p => Assert.InRange(two.Product(p.Product.Code).Flow.DryTonnesPerHour - (2 * p.Flow.DryTonnesPerHour), -1e-7, 1e-7));
    }

    [Fact]
    public void Solve_FinerClasses_ChangesLittle()
    {
        var (coarse, fine) = (new MillRun(MillModel.Of(SmallMill.Sheet, SmallMill.Wheat)).Read(), new MillRun(MillModel.Of(SmallMill.Sheet, SmallMill.Wheat, classes: SizeClasses.Of(40))).Read());
        Assert.InRange(fine.TonnesPerHour(ProductKind.Flour) / coarse.TonnesPerHour(ProductKind.Flour), 0.93, 1.07);
    }

    [Fact]
    public void Solve_ALoopThatHardlyLeaks_StillConverges_AndOneThatDoesNot_SaysWhere()
    {
        static FlowSheet Loop(double leak) => new("loop", "A",
        [
            new Passage("A", PassageKind.Break, [], [new Spout("B")]) { Rolls = new RollPair(300, 9000) { FlutesPerCentimetre = 5, Disposition = Disposition.DullToDull } },
            new Passage("B", PassageKind.Break, [], [new Spout("A", 1 - leak), new Spout("out", leak)]) { Rolls = new RollPair(300, 9000) { FlutesPerCentimetre = 5, Disposition = Disposition.DullToDull } },
        ], [new MillProduct("out", ProductKind.Wheatfeed)]);
        var slow = new MillRun(MillModel.Of(Loop(0.01), SmallMill.Wheat)).Read().Report;
        Assert.Equal(MillExit.Converged, slow.Exit);
        Assert.InRange(slow.Sweeps, 1, 2500);
        var stuck = new MillRun(MillModel.Of(Loop(1e-8), SmallMill.Wheat)).Read().Report;
        Assert.NotEqual(MillExit.Converged, stuck.Exit);
        Assert.NotNull(stuck.Where);
    }

    [Fact]
    public void Model_OfAFaultySheetOrWheat_IsRefused()
    {
        Assert.Throws<ArgumentException>(() => MillModel.Of(SmallMill.Sheet with { FirstBreak = "9B" }, SmallMill.Wheat));
        Assert.Throws<ArgumentException>(() => MillModel.Of(SmallMill.Sheet, SmallMill.Wheat with { DryTonnesPerHour = 0 }));
        Assert.Throws<ArgumentOutOfRangeException>(() => KernelMake.Of(0, 14, 300));
        Assert.Throws<ArgumentOutOfRangeException>(() => KernelMake.Of(1.7, 14, 50));
    }

    private static double Release(string code, double gap) => new MillRun(MillModel.Of(SmallMill.WithGap(code, gap), SmallMill.Wheat)).Read().Passage(code).ReleasePercent!.Value;

    private static double BreakFlour(MillWheat wheat)
    {
        var solved = new MillRun(MillModel.Of(SmallMill.Sheet, wheat)).Read();
        return solved.Product("1B-flour").YieldPercent;
    }

    private static double FlourAsh(MillWheat wheat)
    {
        var flour = new MillRun(MillModel.Of(SmallMill.Sheet, wheat)).Read().Products.Where(p => p.Product.Kind is ProductKind.Flour).ToArray();
        return flour.Sum(p => p.Flow.DryTonnesPerHour * p.Flow.AshPercentDry) / flour.Sum(p => p.Flow.DryTonnesPerHour);
    }
}
