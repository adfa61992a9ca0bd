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
        Assert.True(FeederWatch.HasFed(mill.Book, PosedMill.Hour(0), PosedMill.Hour(1)));
        Assert.False(FeederWatch.HasFed(mill.Book, PosedMill.Hour(4.5), PosedMill.Hour(6)));
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
