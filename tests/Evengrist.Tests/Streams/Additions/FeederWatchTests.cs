using Evengrist.Ledger;
using Evengrist.Streams.Additions;
using Evengrist.Tests.Ledger;

namespace Evengrist.Tests.Streams.Additions;

/// <summary>Feeders that stood while flour ran, found in ledgers small enough to see through.</summary>
public sealed class FeederWatchTests
{
    // Flour at 12 t/h into F1 for four hours; malt for all of it but hour 1.5 to 2; into F2 for two hours more, never malted.
    private static PosedMill Posed()
    {
        var mill = new PosedMill();
        mill.Open(PlaceKind.Opening, "O").Open(PlaceKind.MillUnit, "FM").Open(PlaceKind.FlourBin, "F1", "F2").Connect("FM", "F1").Connect("FM", "F2");
        mill.Open(new OpenPlace(mill.Key(), "MALT-1", PlaceKind.AdditiveLot, "", "malt")).Open(new OpenPlace(mill.Key(), "MALT-2", PlaceKind.AdditiveLot, "", "malt"));
        mill.Move("O", "FM", 72m, 0, 6);
        mill.Move("FM", "F1", 24m, 0, 2).Move("FM", "F1", 24m, 2, 4).Move("FM", "F2", 24m, 4, 6);
        mill.Move("MALT-1", "FM", 0.0015m, 0, 1.5).Move("MALT-2", "FM", 0.002m, 2, 4);
        return mill;
    }

    [Fact]
    public void Stops_OfTheSmallLedger_IsTheHalfHour()
    {
        var mill = Posed();
        var stop = Assert.Single(FeederWatch.Stops(mill.Book, PosedMill.Hour(-1), PosedMill.Hour(10)));
        Assert.Equal(("FM", "F1", "malt", PosedMill.Hour(1.5), PosedMill.Hour(2)), (stop.Mixer.Code, stop.To.Code, stop.Additive, stop.From, stop.Until));
        Assert.Equal(6m, stop.Flour.Tonnes); // half an hour at 12 t/h
        Assert.Equal(12, stop.TonnesPerHour, 9);
    }

    [Fact]
    public void Doses_OfTheSmallLedger_AreKilogramsOverTonnes()
    {
        var mill = Posed();
        var dose = Assert.Single(FeederWatch.Doses(mill.Book, PosedMill.Hour(-1), PosedMill.Hour(10)));
        Assert.Equal(("FM", "F1", "malt", 48.0, 3.5), (dose.Mixer.Code, dose.To.Code, dose.Additive, dose.FlourTonnes, dose.Kilograms));
        Assert.Equal(3500.0 / 48, dose.GramsPerTonne, 9);
        Assert.Equal(["MALT-1", "MALT-2"], dose.Lots);
        var hour = Assert.Single(FeederWatch.Doses(mill.Book, PosedMill.Hour(3), PosedMill.Hour(5))); // one of the two hours of MALT-2
        Assert.Equal((12.0, 1.0), (Math.Round(hour.FlourTonnes, 9), Math.Round(hour.Kilograms, 9)));
        Assert.Empty(FeederWatch.Doses(mill.Book, PosedMill.Hour(4.5), PosedMill.Hour(6)));
        mill.Move("O", "FM", 20m, 7, 8).Move("FM", "F1", 5m, 7, 8).Move("FM", "F2", 15m, 7, 8).Move("MALT-2", "FM", 0.004m, 7, 8);
        Assert.Equal([1.0, 3.0], FeederWatch.Doses(mill.Book, PosedMill.Hour(7), PosedMill.Hour(8)).Select(d => Math.Round(d.Kilograms, 9))); // to both at once: by the grams of each
    }

    [Fact]
    public void Stops_AcrossTwoRuns_AreOneAndCutAtTheSpan()
    {
        var mill = Posed();
        mill.Move("O", "FM", 24m, 7, 9).Move("FM", "F1", 12m, 7, 8).Move("FM", "F1", 12m, 8, 9);
        var stops = FeederWatch.Stops(mill.Book, PosedMill.Hour(1.75), PosedMill.Hour(8.5));
        Assert.Equal([(PosedMill.Hour(7), PosedMill.Hour(8.5), 18m), (PosedMill.Hour(1.75), PosedMill.Hour(2), 3m)], stops.Select(s => (s.From, s.Until, s.Flour.Tonnes)));
        Assert.Empty(FeederWatch.Stops(mill.Book, PosedMill.Hour(4), PosedMill.Hour(6))); // nothing was fed then: another recipe, not a stop
    }
}
