using Evengrist.Ledger;
using Evengrist.Streams.Additions;
using Evengrist.Tests.Ledger;

namespace Evengrist.Tests.Streams.Additions;

/// <summary>What is left of lots, by hand on a ledger small enough to see through.</summary>
public sealed class AdditiveStockTests
{
    // Malt at 2 kg/h from hour 0 to 10 out of the first lot, then at 4 kg/h to hour 15 out of the second; premix never found.
    private static PosedMill Posed()
    {
        var mill = new PosedMill();
        mill.Open(PlaceKind.Opening, "O").Open(PlaceKind.MillUnit, "FM").Open(PlaceKind.FlourBin, "F1").Connect("FM", "F1");
        mill.Open(new OpenPlace(mill.Key(), "M1", PlaceKind.AdditiveLot, "", "malt")).Open(new OpenPlace(mill.Key(), "M2", PlaceKind.AdditiveLot, "", "malt")).Open(new OpenPlace(mill.Key(), "P1", PlaceKind.AdditiveLot, "", "premix"));
        mill.Move("O", "FM", 150m, 0, 15).Move("FM", "F1", 150m, 0, 15);
        return mill.Move("M1", "FM", 0.020m, 0, 10).Move("M2", "FM", 0.020m, 10, 15).Move("P1", "FM", 0.003m, 0, 15);
    }

    private static void Find(PosedMill mill, string lot, decimal kilograms, double hour, decimal? u = null) =>
        mill.Book.Append(mill.Book.ToFacts([new Measure(mill.Key(), lot, PosedMill.Hour(hour), Property.SoundedStock, kilograms / 1000, "t", default, "bags counted", "", u / 1000)], "Ada", "test", PosedMill.Hour(1000)));

    [Fact]
    public void Left_IsWhatWasFoundLessWhatRanSince_AFlowByItsTime()
    {
        var mill = Posed();
        Find(mill, "M1", 25, -1, 0.2m);
        Find(mill, "M2", 100, 5);
        Find(mill, "M1", 12, 5); // A count in the middle of the flow: 10 kg went before, 10 after.
        var malt = AdditiveStock.Of(mill.Book, PosedMill.Hour(12))[0];
        Assert.Equal(("malt", 2), (malt.Additive, malt.Lots.Count));
        Assert.Equal([(10.0, 2.0), (8.0, 92.0)], malt.Lots.Select(l => (Math.Round(l.FedSince, 9), Math.Round(l.LeftKilograms!.Value, 9))));
        Assert.Equal(94, malt.LeftKilograms!.Value, 9);
        Assert.Equal(28.0 / 14, malt.KilogramsPerDay, 9); // All of it within the last 14 days: 28 kg.
        Assert.Equal(PosedMill.Hour(12 + (47 * 24)), malt.LastsUntil!.Value);
        Assert.Equal((15.0, 0.2), (Math.Round(AdditiveStock.Of(mill.Book, PosedMill.Hour(4.999999))[0].Lots[0].LeftKilograms!.Value, 4), AdditiveStock.Of(mill.Book, PosedMill.Hour(4))[0].Lots[0].StandardUncertainty));
    }

    [Fact]
    public void Lots_UsedUpShortOrNeverFound_AreLeftOutToldAndAsked()
    {
        var mill = Posed();
        Find(mill, "M1", 20, -1);
        Find(mill, "M2", 15, 9);
        var all = AdditiveStock.Of(mill.Book, PosedMill.Hour(20));
        var second = Assert.Single(all[0].Lots); // The first is used up to the gram.
        Assert.Equal(("M2", true, -5.0), (second.Lot.Code, second.IsShort, Math.Round(second.LeftKilograms!.Value, 9)));
        Assert.Equal(0, all[0].LeftKilograms);
        Assert.Equal(PosedMill.Hour(20), all[0].LastsUntil);
        Assert.Equal(("premix", null, null), (all[1].Additive, all[1].LeftKilograms, all[1].LastsUntil));
        Assert.Equal((3.0, PosedMill.Hour(15)), (Math.Round(all[1].Lots[0].FedSince, 9), all[1].Lots[0].LastFed));
        Assert.Empty(AdditiveStock.Of(mill.Book, PosedMill.Hour(24 * 30))[1].Lots); // Not fed for long, and never found.
        Assert.Null(AdditiveStock.Of(mill.Book, PosedMill.Hour(24 * 30))[0].LastsUntil);
    }
}
