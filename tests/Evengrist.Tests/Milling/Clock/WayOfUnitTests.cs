using Evengrist.Ledger;
using Evengrist.Milling.Balance;
using Evengrist.Milling.Clock;
using Evengrist.Quantities;
using Evengrist.Tests.Ledger;

namespace Evengrist.Tests.Milling.Clock;

/// <summary>A unit posed by hand: 40 t in its temper bin, 10 t of it stirred, 5 t/h through it for 10 h, a stop of 10 h, and 5 t/h again.</summary>
public sealed class WayOfUnitTests
{
    private static readonly WayTimes Times = new() { GateMinutes = 0, RollsMinutes = 0, RollsStirredMinutes = 0 };

    [Fact]
    public void Of_AChange_HasTheHoursOfWhatLayBefore()
    {
        var (way, _) = Way(0, 9);
        Assert.Equal((40.0, 6.0, 2.0), (way!.TemperTonnes, way.Stages[1].DelayHours, way.Stages[1].StirredHours));
    }

    /// <summary>Six hours of running are six hours on the wall clock as long as the mill runs; those after the tenth begin when it runs again.</summary>
    [Fact]
    public void When_OverAStop_WaitsForTheMill()
    {
        var running = Way(0, 25).Way!.Running;
        Assert.Equal(PosedMill.Hour(6), running.When(6));
        Assert.Equal(PosedMill.Hour(22), running.When(12));
        Assert.Equal((6.0, 10.0, 10.0, 12.0), (running.At(PosedMill.Hour(6)), running.At(PosedMill.Hour(10)), running.At(PosedMill.Hour(19)), running.At(PosedMill.Hour(22))));
        Assert.Equal(PosedMill.Hour(30), running.When(20)); // Five hours after the moment looked at, at its flow.
        Assert.Equal(20, running.At(PosedMill.Hour(30)), 1e-9);
    }

    [Fact]
    public void Of_AMillThatStandsForADay_SaysWhy()
    {
        var (way, why) = Way(0, 60);
        Assert.Null(way);
        Assert.StartsWith("Nothing left T in the day before this moment", why, StringComparison.Ordinal);
    }

    [Fact]
    public void Changes_OfTheMix_AreListedWithWhatIsOther()
    {
        var (mill, section) = Mill();
        var change = Assert.Single(MixChange.Of(mill.Book, section, PosedMill.Hour(-1), PosedMill.Hour(40), 3));
        Assert.Equal((PosedMill.Hour(4), 40.0), (change.At, Math.Round(change.Points, 9)));
        Assert.Equal([("B1", 60.0), ("B2", 40.0)], change.After.Select(s => (s.Bin, Math.Round(s.Percent, 9))));
    }

    [Fact]
    public void Packer_OfAFlourBin_IsItsStockOverWhatRunsIn()
    {
        var (mill, _) = Mill();
        var flour = mill.Book.Named("F");
        var turn = WayOfUnit.Packer(mill.Book, flour, PosedMill.Hour(10), false, Times)!;
        Assert.Equal((10.0, 0.0), (turn.DelayHours, turn.StirredHours)); // 40 t made in 10 h lie there.
        Assert.Equal((0.0, 10.0), (WayOfUnit.Packer(mill.Book, flour, PosedMill.Hour(10), true, Times) is { } s ? (s.DelayHours, s.StirredHours) : default));
        Assert.Null(WayOfUnit.Packer(mill.Book, flour, PosedMill.Hour(-1), false, Times));
    }

    [Fact]
    public void Readings_WithoutUncertainty_TakeWhatOneDiffersFromTheNextBy()
    {
        var (mill, _) = Mill();
        mill.Record([.. Enumerable.Range(0, 4).Select(i => (Draft)new Measure(mill.Key(), "U", PosedMill.Hour(1 + i), Property.Protein, i % 2 == 0 ? 12m : 13m, "%", Basis.At14, "NIR"))]);
        var points = StepReadings.Of(mill.Book, mill.Id("U"), Property.Protein, Way(0, 9).Way!.Running, PosedMill.Hour(0), PosedMill.Hour(9));
        Assert.Equal([1, 2, 3, 4], points.Select(p => Math.Round(p.Hours, 9)));
        Assert.All(points, p => Assert.Equal(Math.Sqrt(0.5), p.StandardUncertainty, 1e-9));
    }

    private static (WayOfUnit? Way, string Why) Way(double changed, double now)
    {
        var (mill, section) = Mill();
        return WayOfUnit.Of(mill.Book, section, PosedMill.Hour(changed), PosedMill.Hour(now), Times);
    }

    private static (PosedMill Mill, MillSection Section) Mill()
    {
        var mill = new PosedMill().Open(PlaceKind.Opening, "OPEN").Open(PlaceKind.Bin, "B1", "B2").Open(PlaceKind.MixLine, "MX").Open(PlaceKind.MillUnit, "U").Open(PlaceKind.FlourBin, "F", "Y")
            .Open(new OpenPlace("t", "T", PlaceKind.TemperBin) { Stirred = Mass.FromTonnes(10m) })
            .Connect("B1", "MX").Connect("B2", "MX").Connect("MX", "T").Connect("T", "U").Connect("U", "F").Connect("U", "Y")
            .Move("OPEN", "B1", 500m, -2).Move("OPEN", "B2", 500m, -2).Move("OPEN", "T", 40m, -2);
        void Run(double from, double until, decimal one, decimal two)
        {
            mill.Move("B1", "MX", one, from, until);
            if (two > 0)
            {
                mill.Move("B2", "MX", two, from, until);
            }

            var all = one + two;
            mill.Move("MX", "T", all, from, until).Move("T", "U", all, from, until).Move("U", "F", 0.8m * all, from, until).Move("U", "Y", 0.2m * all, from, until);
        }

        Run(0, 4, 20m, 0m);
        Run(4, 10, 18m, 12m);
        Run(20, 30, 30m, 20m);
        return (mill, MillSection.Of(mill.Book)[0]);
    }
}
