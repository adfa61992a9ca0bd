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

    [Fact]
    public void Readings_OfASingleStream_AreLeftOutByTheRules()
    {
        var mill = LotMill.Open().Read("U", 7, 15.8m, "combustion, stream BRD").Read("U", 7, 11.9m);
        Assert.Equal(2, mill.Readings("WB-250915-2").Count);
        Assert.Equal(11.9m, Assert.Single(mill.Readings("WB-250915-2", LotMill.ThreeShifts with { UnitMethods = ["NIR"] })).Value);
    }
}
