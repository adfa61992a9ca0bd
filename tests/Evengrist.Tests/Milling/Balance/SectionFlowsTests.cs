using CsCheck;
using Evengrist.Ledger;
using Evengrist.Milling.Balance;
using Evengrist.Quantities;
using Evengrist.Tests.Ledger;
using NodaTime;

namespace Evengrist.Tests.Milling.Balance;

/// <summary>Two units with a mixer behind one of them, posed by hand: who belongs together, and what crosses the edge in a span.</summary>
public sealed class SectionFlowsTests
{
    [Fact]
    public void Of_TwoUnits_ArePartedAndAMixerBelongsToItsUnit()
    {
        var sections = MillSection.Of(Mill().Book);
        Assert.Equal(["UA", "UB"], sections.Select(s => s.Name));
        Assert.Equal([5, 2], sections.Select(s => s.Places.Count));
        Assert.Equal("UA + UB", MillSection.Together(sections).Name);
        Assert.Empty(MillSection.Of(new Book()));
    }

    [Fact]
    public void Of_ADay_AddsUpEveryKind()
    {
        var mill = Mill();
        var flows = Flows(mill, 0, 24);
        Assert.Equal([("B2", 60.0), ("B1", 40.0)], flows.Wheat.Select(w => (w.Bin.Code, w.Tonnes)));
        Assert.Equal((1.0, 5.0, 0.5), (flows.Screenings, flows.Water, flows.FedIn));
        Assert.Equal([("F1", 76.0), ("Y", 25.0)], flows.Products.Select(p => (p.To.Code, Math.Round(p.Tonnes, 9))));
        Assert.Equal((1.5, 2.0), (flows.BookedLoss, Math.Round(flows.Rise, 9)));
        Assert.Equal([WeighedKind.Flour, WeighedKind.ByProduct], flows.Products.Select(p => WeighedKinds.Of(p.To)));
    }

    /// <summary>In = out + rise in any span, and two spans one after another add up to the whole.</summary>
    [Fact]
    public void Of_AnySpan_Closes() => Gen.Select(Gen.Double[0, 12], Gen.Double[12, 30]).Sample((middle, end) =>
    {
        var mill = Mill();
        double[] Sums(SectionFlows f) => [f.Wheat.Sum(w => w.Tonnes), f.Water, f.FedIn, f.Screenings, f.Products.Sum(p => p.Tonnes), f.BookedLoss, f.Rise];
        var (one, two, all) = (Sums(Flows(mill, 0, middle)), Sums(Flows(mill, middle, end)), Sums(Flows(mill, 0, end)));
        Assert.All(new[] { one, two, all }, s => Assert.Equal(s[0] + s[1] + s[2], s[3] + s[4] + s[5] + s[6], 1e-9));
        Assert.All(Enumerable.Range(0, 7), i => Assert.Equal(all[i], one[i] + two[i], 1e-9));
    });

    /// <summary>What a count finds in a temper bin is not wheat to the mill, and its rise is none.</summary>
    [Fact]
    public void Of_StockFound_CountsAsNothing()
    {
        var mill = Mill().Open(PlaceKind.Gain, "GAIN").Move("GAIN", "TA", 3m, 5);
        Assert.Equal((100.0, 2.0), (Flows(mill, 0, 24).Wheat.Sum(w => w.Tonnes), Math.Round(Flows(mill, 0, 24).Rise, 9)));
    }

    [Fact]
    public void Begin_OfAMillingDay_IsTheMomentItsDayIsCountedFrom()
    {
        var (zone, begins) = (DateTimeZoneProviders.Tzdb["America/Chicago"], new LocalTime(6, 0));
        var day = new LocalDate(2025, 3, 9); // The clock goes forward at 02:00 that day.
        Assert.Equal(day, MillingDay.Of(MillingDay.Begin(day, zone, begins), zone, begins));
        Assert.Equal(day.PlusDays(-1), MillingDay.Of(MillingDay.Begin(day, zone, begins) - Duration.FromSeconds(1), zone, begins));
    }

    private static SectionFlows Flows(PosedMill mill, double from, double until) => SectionFlows.Of(mill.Book, MillSection.Of(mill.Book)[0], PosedMill.Hour(from), PosedMill.Hour(until));

    private static PosedMill Mill() => new PosedMill()
        .Open(PlaceKind.Opening, "OPEN").Open(PlaceKind.Bin, "B1", "B2").Open(PlaceKind.MixLine, "MXA").Open(PlaceKind.Cleaner, "CLA").Open(PlaceKind.TemperBin, "TA", "TB").Open(PlaceKind.MillUnit, "UA", "FMA", "UB")
        .Open(PlaceKind.Water, "WATER").Open(PlaceKind.AdditiveLot, "MALT").Open(PlaceKind.Loss, "LOSS").Open(PlaceKind.FlourBin, "F1", "SC").Open(new OpenPlace("y", "Y", PlaceKind.FlourBin, "feed bin", "wheatfeed"))
        .Connect("B1", "MXA").Connect("B2", "MXA").Connect("MXA", "CLA").Connect("CLA", "TA").Connect("TA", "UA").Connect("UA", "FMA").Connect("FMA", "F1").Connect("UA", "Y").Connect("CLA", "SC").Connect("TB", "UB")
        .Move("OPEN", "B1", 500m, -2).Move("OPEN", "B2", 500m, -2).Move("OPEN", "TA", 50m, -1)
        .Move("B1", "MXA", 40m, 0, 10).Move("B2", "MXA", 60m, 0, 10).Move("MXA", "CLA", 100m, 0, 10).Move("WATER", "CLA", 5m, 0, 10).Move("CLA", "SC", 1m, 0, 10).Move("CLA", "TA", 104m, 0, 10)
        .Move("TA", "UA", 102m, 2, 12).Move("UA", "FMA", 75.5m, 2, 12).Move("MALT", "FMA", 0.5m, 2, 12).Move("FMA", "F1", 76m, 2, 12).Move("UA", "Y", 25m, 2, 12).Move("UA", "LOSS", 1.5m, 2, 12);
}
