using Evengrist.Laboratory.Charts;
using Evengrist.Ledger;
using Evengrist.Records.Laboratory;
using Evengrist.Records.Tests.Stores;
using NodaTime;

namespace Evengrist.Records.Tests.Laboratory;

/// <summary>Limits frozen from the ledger's readings, by version; what was done about signals stays beside them.</summary>
public sealed class ChartBooksTests
{
    private const string Chart = "B1 Moisture oven";

    // The e-Handbook's ten values (6.3.2.2, from memory), one an hour: mean 50.81, mean range 1.8778.
    private static readonly decimal[] Handbook = [49.6m, 47.6m, 49.9m, 51.3m, 47.8m, 51.2m, 52.6m, 52.4m, 53.6m, 52.1m];

    [Theory, OnSqlite, OnPostgres]
    public void Freeze_FromAPeriod_IsAVersionOfItsOwn(Store store)
    {
        using var site = new TestSite(store);
        using (var mill = site.Open())
        {
            Fill(mill);
            Assert.Empty(Freeze(0, 10, "first").In(mill, "Ada", Hour(30)));
            Assert.Empty(Freeze(0, 10, "first").In(mill, "Ada", Hour(30))); // The newest once more is the same.
            Assert.Empty(Freeze(2, 12, "later").In(mill, "Ben", Hour(30)));
        }

        using var reopened = site.Open();
        var versions = ChartBooks.Limits(reopened)[Chart].ToArray();
        Assert.Equal([(2, "Ben", "later"), (1, "Ada", "first")], versions.Select(v => (v.Version, v.By, v.Limits.Reason)));
        Assert.Equal((50.81, 10), (Math.Round(versions[1].Limits.Centre, 6), versions[1].Limits.Count));
    }

    [Theory, OnSqlite]
    public void Freeze_OfWhatCannotBe_SaysWhatToDoAndKeepsNothing(Store store)
    {
        using var site = new TestSite(store);
        using var mill = site.Open();
        Fill(mill);
        foreach (var (freeze, by, says) in new[]
        {
            (Freeze(0, 9, "x"), "Ada", "There are 9 readings in that period: 10 or more are needed"), (Freeze(5, 2, "x"), "Ada", "begins before it ends"), (Freeze(0, 10, " "), "Ada", "Say why limits are frozen"),
            (Freeze(0, 31, "x"), "Ada", "ends in the future"), (Freeze(0, 10, "x"), " ", "Say who freezes them"), (Freeze(0, 10, "x") with { Chart = "B9 Moisture oven" }, "Ada", "Nothing can be charted as \"B9 Moisture oven\""),
            (Freeze(0, 10, "x") with { Wanted = (null, 5, 4) }, "Ada", "The lower limit lies below the upper"),
        })
        {
            Assert.Contains(freeze.In(mill, by, Hour(30)), f => f.Contains(says, StringComparison.Ordinal));
        }

        Assert.Empty(ChartBooks.Limits(mill));
    }

    [Theory, OnSqlite, OnPostgres]
    public void Actions_OnOneSignal_StandBesideEachOther(Store store)
    {
        using var site = new TestSite(store);
        using (var mill = site.Open())
        {
            Assert.Empty(ChartBooks.Act(mill, Acted("sieve looked at"), "Ben"));
            Assert.Empty(ChartBooks.Act(mill, Acted("sieve changed"), "Ada"));
            Assert.Empty(ChartBooks.Act(mill, Acted("sieve changed"), "Ada")); // Sent twice is noted once.
            Assert.Contains("Say what was found and done", Assert.Single(ChartBooks.Act(mill, Acted(" "), "Ada")), StringComparison.Ordinal);
        }

        using var reopened = site.Open();
        Assert.Equal([("sieve changed", "Ada"), ("sieve looked at", "Ben")], ChartBooks.Actions(reopened, Chart).Select(a => (a.Action.Done, a.By)));
        Assert.All(ChartBooks.Actions(reopened, Chart), a => Assert.Equal(Hour(7), a.Action.Point));
        Assert.Empty(ChartBooks.Actions(reopened, "B2 Moisture oven"));
    }

    private static void Fill(Mill mill)
    {
        mill.Record(SmallMill.Places, "Ada", "test");
        mill.Record([.. Enumerable.Range(0, 12).Select(h => new Measure($"m{h}", "B1", Hour(h), Property.Moisture, Handbook[h % 10], "%", default, "oven"))], "Ada", "test");
    }

    private static FreezeLimits Freeze(int from, int until, string reason) => new(Chart, (Hour(from), Hour(until)), (null, null, null), RunRules.Four, reason);

    private static ChartAction Acted(string done) => new(Chart, Hour(7), "beyond three standard deviations", done);

    private static Instant Hour(int hour) => Instant.FromUtc(2025, 9, 15, 11, 0) + Duration.FromHours(hour);
}
