using Evengrist.Bins;
using Evengrist.Bins.Storage;
using Evengrist.Demo;
using Evengrist.Ledger;
using NodaTime;

namespace Evengrist.Records.Tests.Demo;

/// <summary>The wheat in store in the demonstration: what the watch reads, and which bin it points to (docs/demonstration.md).</summary>
[Collection(DemonstrationYearCollection.Name)]
public sealed class DemonstrationStoreTests(DemonstrationYear year)
{
    [Fact]
    public void Store_ReadingsOfTheYear_AreFewEnoughAndNameTheirPoints()
    {
        var read = year.Book.Readings.Where(r => r.What is Property.Temperature or Property.CarbonDioxide or Property.LiveWeevils or Property.OtherLiveInsects).ToArray();
        Assert.InRange(read.Length, 1000, 2500);
        Assert.All(read.Where(r => r.What == Property.Temperature), r => Assert.NotNull(CablePoint.Parse(r.Instrument)));
        Assert.All(year.Book.Happenings.Where(h => h.Kind == HappeningKind.Aerated), h => Assert.True(AerationRun.Of(h) is { Hours: > 0 }));
    }

    [Fact]
    public void Store_OnTheOpeningMorning_PointsToTheBinThatWarms()
    {
        var ranked = Ranked(MillCalendar.OpeningMoment);
        Assert.Equal(("B07", RiskLevel.Act, RiskKind.Heating), (ranked[0].Bin.Code, ranked[0].Level, ranked[0].Reasons[0].Kind));
        Assert.Contains("C2 at 4.0 m warms", ranked[0].Reasons[0].Words, StringComparison.Ordinal);
        Assert.Contains(ranked[0].Reasons, r => r.Kind == RiskKind.CarbonDioxide);
        Assert.Single(ranked, b => b.Reasons.Any(r => r.Kind == RiskKind.Heating));
        foreach (var bin in ranked)
        {
            Assert.Equal((double)year.Book.StockOf(bin.Bin.Id, MillCalendar.OpeningMoment).Tonnes, bin.Layers.Sum(l => l.Layer.Tonnes), 1e-3);
        }
    }

    [Fact]
    public void Store_BeforeAndAfterTheWarmSpot_HasNoHeatingInB07()
    {
        foreach (var day in new LocalDate[] { new(2025, 12, 7), new(2026, 2, 20) })
        {
            Assert.DoesNotContain(Ranked(MillCalendar.At(day, 10)).Single(b => b.Bin.Code == "B07").Reasons, r => r.Kind == RiskKind.Heating);
        }
    }

    private IReadOnlyList<BinRisk> Ranked(Instant at)
    {
        var reckoning = new Reckoning(year.Book, Outflow.FirstInFirstOut);
        reckoning.CatchUp();
        return new StorageSurvey(reckoning.At(at), new MakeupModel(year.Book, reckoning.Parcels), year.Book, EmcTable.Start).All();
    }
}
