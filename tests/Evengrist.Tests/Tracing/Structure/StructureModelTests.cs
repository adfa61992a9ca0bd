using CsCheck;
using Evengrist.Ledger;
using Evengrist.Tracing.Structure;

namespace Evengrist.Tests.Tracing.Structure;

/// <summary>Ways of keeping lots apart, on paper.</summary>
public sealed class StructureModelTests
{
    private static readonly StructureSpec Plain = new([.. Enumerable.Repeat(25_000.0, 400)]) { BinKilograms = 500_000, BinsPerMix = 1, LotKilograms = 100_000, Yield = 1, ThresholdShare = 0 };

    [Fact]
    public void FirstInFirstOut_OneBin_LotsHoldOnePlusQOverBTrucksAndNoMore()
    {
        // 1 + Q/B of Fragments, met by the model's own drawing: lots of 2.618… trucks, so that their beginnings lie everywhere in a truck.
        var outcome = StructureModel.Of(Plain with { LotKilograms = 25_000 * 2.6180339887 });
        Assert.Equal(Fragments.Expected(2.6180339887, 1), outcome.TrucksEachLot, 0.01);
    }

    [Fact]
    public void Lots_OfWholeTrucks_KeepARecallToOneLot()
    {
        var outcome = StructureModel.Of(Plain);
        Assert.Equal((100_000, 100_000, 400, 100), (outcome.Sizes.Worst, Math.Round(outcome.Sizes.Expected), outcome.TrucksMilled, outcome.Lots.Count));
    }

    [Fact]
    public void BinsPerMix_More_SpreadEachTruckOverMoreLots()
    {
        // Two bins: a truck of 25 t leaves its bin in drafts of 50 t a lot; eight: in drafts of 12.5 t, so over two lots at least.
        var expected = new[] { 1, 4, 8 }.Select(bins => StructureModel.Of(Plain with { BinsPerMix = bins }).Sizes.Expected).ToArray();
        Assert.Equal(100_000, expected[0], 1e-6);
        Assert.Equal(100_000, expected[1], 1e-6);
        Assert.Equal(200_000, expected[2], 1e-6);
    }

    [Fact]
    public void Stirred_Bin_PutsEveryTruckOfAFillingIntoEveryLotOfIt()
    {
        var outcome = StructureModel.Of(Plain with { Emptying = Outflow.Stirred });
        Assert.Equal(20, outcome.TrucksEachLot, 9); // 500 t of 25 t
        Assert.All(outcome.Sizes.Each, size => Assert.Equal(500_000, size, 1e-3));
    }

    [Fact]
    public void Heel_NeverCleaned_ReachesEveryLaterLotAndACleanOutCutsIt()
    {
        var heel = Plain with { HeelKilograms = 25_000 };
        var never = StructureModel.Of(heel);
        Assert.True(never.Sizes.Worst > 20 * 100_000 - 1, $"{never.Sizes.Worst}"); // 0.2^k passes below a millionth of a millionth only after 20 lots and more
        var daily = StructureModel.Of(heel with { CleanEveryLots = 5 });
        Assert.Equal(500_000 - 25_000, daily.Sizes.Worst, 1e-6);
        Assert.Equal((19, 19 * 25_000.0, 19 * 4.0), (daily.CleanOuts, daily.SetAsideKilograms, daily.Hours));
    }

    [Fact]
    public void Heel_WithAThreshold_ReachesAsManyLotsAsItsTableSays()
    {
        // h = 0.2: a whole lot's trucks hold 0.8·0.2^k of the lot k later, each of 4 a quarter: above 0.1 % (of the lot) for k ≤ 3: 0.0064/4 = 0.16 %, then 0.032 %.
        var outcome = StructureModel.Of(Plain with { HeelKilograms = 25_000, LotKilograms = 100_000, ThresholdShare = 0.001 });
        Assert.Equal(400_000, outcome.Sizes.Worst, 1e-6);
    }

    [Fact]
    public void Flush_OfOneContent_LeavesThirtySevenPerCentOfTheHeel()
    {
        // Two lots of one truck each: heel 10 t, flush 10 t; old share of the second = 10 t·e⁻¹ in (10 + 50 − 10) t.
        var spec = new StructureSpec([50_000, 50_000, 50_000]) { BinKilograms = 1, BinsPerMix = 1, LotKilograms = 50_000, Yield = 1, HeelKilograms = 10_000, FlushKilograms = 10_000 };
        var share = 10_000 * Math.Exp(-1) / 50_000;
        Assert.Equal(90_000 - 10_000, StructureModel.Of(spec with { ThresholdShare = share * 0.999 }).Sizes.Each[0] - 0, 1e-6); // its own lot of 40 t and the next of 40 t
        Assert.Equal(40_000, StructureModel.Of(spec with { ThresholdShare = share * 1.001 }).Sizes.Each[0], 1e-6);
    }

    [Fact]
    public void Order_InTurnWithOneBin_ChangesNothing() => Assert.Equal(StructureModel.Of(Plain).Sizes.Each, StructureModel.Of(Plain with { Order = BinOrder.InTurn }).Sizes.Each);

    [Fact]
    public void Any_Way_KeepsEveryKilogram() =>
        Gen.Select(Gen.Double[5_000, 40_000].Array[20, 60], Gen.Double[30_000, 300_000], Gen.Int[1, 4], Gen.Double[20_000, 60_000], Gen.Double[0, 8_000], Gen.Double[0, 5_000], Gen.Int[0, 4]).Select(Gen.Bool, Gen.Bool).Sample(c =>
        {
            var ((trucks, bin, bins, lot, heel, flush, clean), inTurn, stirred) = c;
            var spec = new StructureSpec(trucks) { BinKilograms = bin, BinsPerMix = bins, LotKilograms = lot, Yield = 0.8, HeelKilograms = heel, FlushKilograms = flush, CleanEveryLots = clean, Order = inTurn ? BinOrder.InTurn : BinOrder.OneAfterAnother, Emptying = stirred ? Outflow.Stirred : Outflow.FirstInFirstOut };
            var outcome = StructureModel.Of(spec);
            Assert.Equal(outcome.Lots.Count * lot * 0.8, outcome.FinishedKilograms + outcome.SetAsideKilograms + outcome.LeftKilograms, 1e-3);
            Assert.True(outcome.Sizes.Worst <= outcome.FinishedKilograms + 1e-6);
            Assert.Equal(outcome.Sizes.Each, StructureModel.Of(spec).Sizes.Each);
        }, iter: 60);

    [Theory]
    [InlineData("trucks")]
    [InlineData("bin")]
    [InlineData("bins")]
    [InlineData("core")]
    [InlineData("heel")]
    [InlineData("lots")]
    public void Spec_ThatCannotBe_SaysWhy(string which)
    {
        var (spec, words) = which switch
        {
            "trucks" => (new StructureSpec([25_000, 0]), "above 0 kg"),
            "bin" => (Plain with { BinKilograms = 0 }, "bin holds"),
            "bins" => (Plain with { BinsPerMix = 21 }, "1 to 20 bins"),
            "core" => (Plain with { Emptying = Outflow.CoreFirst }, "core first"),
            "heel" => (Plain with { HeelKilograms = 90_000, FlushKilograms = 10_000 }, "larger than its heel"),
            _ => (Plain with { LotKilograms = 100 }, "more than 5000 lots"),
        };
        Assert.Contains(words, Assert.Throws<ArgumentException>(() => StructureModel.Of(spec)).Message, StringComparison.Ordinal);
    }
}
