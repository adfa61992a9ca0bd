using Evengrist.Ledger;

namespace Evengrist.Tests.Laboratory.Lots;

public sealed class LotReadingsTests
{
    [Fact]
    public void Readings_OfTheUnit_SpeakForWhatWasPackedALagLater()
    {
        // The second shift is packed from hour 8 to 16, and so milled from hour 6 to 14.
        var mill = LotMill.Open().Read("U", 5.9, 11.1m).Read("U", 6, 11.2m).Read("U", 13.9, 11.3m).Read("U", 14, 11.4m);
        Assert.Equal([11.2m, 11.3m], mill.Readings("WB-250915-2").Select(r => r.Value));
        Assert.Equal([11.4m], mill.Readings("WB-250915-3").Select(r => r.Value));
    }

    [Fact]
    public void Readings_OnPackagesAndBin_SpeakForTheLot()
    {
        var mill = LotMill.Open().Read("P3", 30, 11.8m, "combustion", "N-1", 0.05m).Read("FW", 10, 11.9m).Read("P4", 30, 12.5m).Read("FC", 10, 13.5m);
        Assert.Equal([11.9m, 11.8m], mill.Readings("WB-250915-2").Select(r => r.Value));
    }

    [Fact]
    public void Readings_OfTheUnit_AreNotOfTheFlourItMakesLeastOf()
    {
        var mill = LotMill.Open().Read("U", 19, 11.9m).Read("FC", 19.5, 13.6m);
        Assert.Equal([13.6m], mill.Readings("C1-250915-3").Select(r => r.Value));
    }

    [Fact] // By hand: of 12 t/h from 0 to 4 and 8 t set down at hour 5, the hours 3 to 6 hold 12 and 8.
    public void MostGoesTo_CountsAFlowByItsPartAndALoadAtOnceWhole()
    {
        var mill = new Evengrist.Tests.Ledger.PosedMill().Open(PlaceKind.Gain, "GAIN").Open(PlaceKind.TemperBin, "T").Open(PlaceKind.FlourBin, "A").Open(PlaceKind.FlourBin, "B").Connect("T", "A").Connect("T", "B");
        mill.Move("GAIN", "T", 100, -8).Move("T", "A", 48, 0, 4).Move("T", "B", 8, 5);
        var (flows, from) = (new Evengrist.Laboratory.PlaceFlows(mill.Book), mill.Book.Named("T").Id);
        PlaceId? Most(double first, double last) => flows.MostGoesTo(from, Evengrist.Tests.Ledger.PosedMill.Hour(first), Evengrist.Tests.Ledger.PosedMill.Hour(last));
        Assert.Equal([mill.Book.Named("A").Id, mill.Book.Named("B").Id, null], new[] { Most(3, 6), Most(3.5, 6), Most(6, 9) });
    }

    [Fact]
    public void Readings_OfASingleStream_AreLeftOutByTheRules()
    {
        var mill = LotMill.Open().Read("U", 7, 15.8m, "combustion, stream BRD").Read("U", 7, 11.9m);
        Assert.Equal(2, mill.Readings("WB-250915-2").Count);
        Assert.Equal(11.9m, Assert.Single(mill.Readings("WB-250915-2", LotMill.ThreeShifts with { UnitMethods = ["NIR"] })).Value);
    }
}
