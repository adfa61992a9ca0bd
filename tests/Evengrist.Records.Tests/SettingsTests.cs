using Evengrist.Ledger;
using Evengrist.Records.Tests.Stores;
using NodaTime;

namespace Evengrist.Records.Tests;

public sealed class SettingsTests
{
    [Theory, OnSqlite, OnPostgres]
    public void Settings_SetTwice_LastReadsBackAfterReopening(Store store)
    {
        using var site = new TestSite(store);
        var settings = new MillSettings { Name = "Low Falls", ZoneId = "America/Chicago", DayStart = new LocalTime(5, 30), Currency = "CAD", IsDemonstration = true, OpensAt = Instant.FromUtc(2026, 1, 14, 16, 40) };
        using (var mill = site.Open())
        {
            Assert.Equal(new MillSettings(), mill.Settings);
            mill.Set(settings with { Name = "x" });
            mill.Set(settings);
        }

        using var again = site.Open();
        Assert.Equal(settings, again.Settings);
        Assert.Throws<ArgumentException>(() => again.Set(settings with { ZoneId = "Mill/Hall" }));
        Assert.Throws<ArgumentException>(() => again.Set(settings with { Currency = "dollars" }));
        Assert.Equal(settings, again.Settings);
    }

    [Theory, OnSqlite, OnPostgres]
    public void Contracts_Versions_AreKeptAndNeverChanged(Store store)
    {
        using var site = new TestSite(store);
        using var mill = site.Open();
        mill.Contracts.Keep("SPOT", 1, "{\"price\": 6.10}", "Ada");
        mill.Contracts.Keep("SPOT", 1, "{\"price\": 6.10}", "Bea");
        mill.Contracts.Keep("SPOT", 2, "{\"price\": 6.20}", "Ada");
        Assert.Equal((2, "{\"price\": 6.20}", "Ada"), mill.Contracts.Newest("SPOT") is { } c ? (c.Version, c.Json, c.By) : default);
        Assert.Equal(["SPOT 1", "SPOT 2"], mill.Contracts.All().Select(k => $"{k.Code} {k.Version}"));
        Assert.Null(mill.Contracts.Find("SPOT", 3));
        var refusal = Assert.Throws<LedgerRefusal>(() => mill.Contracts.Keep("SPOT", 1, "{\"price\": 7}", "Ada"));
        Assert.Equal(LedgerRule.KeyTaken, refusal.Rule);
        Assert.Contains("as version 2", refusal.Message, StringComparison.Ordinal);
        Assert.Throws<ArgumentException>(() => mill.Contracts.Keep("SPOT", 4, "price 6.10", "Ada"));
    }

    [Theory, OnSqlite, OnPostgres]
    public void Record_TextNoEngineCanKeep_IsRefused(Store store)
    {
        using var site = new TestSite(store);
        using var mill = site.Open();
        foreach (var text in new[] { "a\0b", "half \uD83C pair", new string('x', 10_001) })
        {
            var refusal = Assert.Throws<LedgerRefusal>(() => mill.Record([new OpenPlace("k", "A", PlaceKind.Bin), new OpenPlace("l", "B", PlaceKind.Bin, text)], "Ada", "test"));
            Assert.Equal((LedgerRule.Malformed, 1), (refusal.Rule, refusal.Index));
        }

        mill.Record([new OpenPlace("k", "A", PlaceKind.Bin, "Weizen für Brot 🌾 'x'; --")], "Ada", "test");
        Assert.Equal(1, mill.Record([new OpenPlace("k", "A", PlaceKind.Bin, "Weizen für Brot 🌾 'x'; --")], "Ada", "test").AlreadyKnown);
    }
}
