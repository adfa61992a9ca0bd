using Evengrist.Quantities;
using Evengrist.Records.Streams;
using Evengrist.Records.Tests.Mix;
using Evengrist.Records.Tests.Stores;
using Evengrist.Streams;
using Evengrist.Streams.Dividing;
using Evengrist.Streams.Surveys;

namespace Evengrist.Records.Tests.Streams;

/// <summary>Stream surveys and the flours of a unit, kept by version.</summary>
public sealed class StreamSurveysTests
{
    private static StreamSurvey Survey(double ash = 0.4, string unit = "U") => new(unit, MilledRuns.Hour(1), "Ada Miller", 5, new StreamTable([new MillStream("1M", 40, ash), new MillStream("2M", 30, 0.6)], Basis.At14));

    private static WantedFlours Flours(decimal price = 400m, string unit = "U") => new(unit, [new FlourWish("WB", price)], new FlourWish("feed", 200m));

    [Theory, OnSqlite, OnPostgres]
    public void Keep_Again_IsANextVersionAndTheOldOneStays(Store store)
    {
        using var site = new TestSite(store);
        using var mill = site.Open();
        MilledRuns.LayDown(mill);
        Assert.Null(StreamSurveys.Newest(mill, "U"));
        Assert.Null(StreamSurveys.FloursOf(mill, "U"));
        Assert.Equal(1, StreamSurveys.Keep(mill, Survey(), "Ada Miller").Kept!.Version);
        Assert.Equal(1, StreamSurveys.Keep(mill, Survey(), "Osric Venn").Kept!.Version); // the same once more changes nothing
        Assert.Equal(2, StreamSurveys.Keep(mill, Survey(0.41), "Osric Venn").Kept!.Version);
        Assert.Equal([("Ada Miller", 0.40), ("Osric Venn", 0.41)], StreamSurveys.All(mill).Select(k => (k.By, k.Survey.Table.Streams[0].AshPercent)));
        Assert.Equal(0.41, StreamSurveys.Newest(mill, "U")!.Survey.Table.Streams[0].AshPercent);
        Assert.Equal(1, StreamSurveys.Keep(mill, Flours(), "Ada Miller").Version);
        Assert.Equal(2, StreamSurveys.Keep(mill, Flours(410m), "Ada Miller").Version);
        Assert.Equal(410m, StreamSurveys.FloursOf(mill, "U")!.Value.Flours.Flours[0].PricePerTonne);
    }

    [Theory, OnSqlite, OnPostgres]
    public void Keep_WhatCannotBe_IsRefusedAndNothingKept(Store store)
    {
        using var site = new TestSite(store);
        using var mill = site.Open();
        Assert.Contains("The mill has no unit yet", string.Join(" ", StreamSurveys.Keep(mill, Survey(), "x").Faults), StringComparison.Ordinal);
        MilledRuns.LayDown(mill);
        foreach (var (survey, by, says) in new[] { (Survey(-1), "x", "ash lies above 0"), (Survey(unit: "UQ"), "x", "There is no unit UQ: there are U."), (Survey(), " ", "Say who you are") })
        {
            Assert.Contains(says, string.Join(" ", StreamSurveys.Keep(mill, survey, by).Faults), StringComparison.Ordinal);
        }

        Assert.Contains("There is no unit UQ", string.Join(" ", StreamSurveys.Keep(mill, Flours(unit: "UQ"), "x").Faults), StringComparison.Ordinal);
        Assert.Contains("a price lies", string.Join(" ", StreamSurveys.Keep(mill, Flours(1_000_000m), "x").Faults), StringComparison.Ordinal);
        Assert.Empty(StreamSurveys.All(mill));
    }
}
