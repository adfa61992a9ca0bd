using Evengrist.Demo;
using Evengrist.Milling.Learning;
using Evengrist.Milling.Sheet;
using Evengrist.Quantities;
using Evengrist.Records.Milling;
using Evengrist.Records.Tests.Stores;
using NodaTime;

namespace Evengrist.Records.Tests.Milling;

/// <summary>Mill tests kept, corrected, struck and gathered for tuning.</summary>
public sealed class MillTestsTests
{
    private static readonly Instant Monday = Instant.FromUtc(2025, 9, 22, 15, 0);
    private static readonly Instant Now = Instant.FromUtc(2026, 1, 14, 16, 0);
    private static readonly PosedWheat Wheat = new(17.5, 16, 1.7, 14.4, Basis.Dry);

    private static MillTestPaper Paper(double release = 29.5, Instant? at = null, int sheet = 1) => new("UA", at ?? Monday, "Ada Miller", sheet, Wheat) { Releases = new Dictionary<string, double> { ["B1"] = release } };

    private static Mill Open(TestSite site)
    {
        var mill = site.Open();
        FlowSheets.Keep(mill, "UA", new FlowSheetPaper("first", HouseFlowSheets.Of('A')), "Ada Miller", 0);
        return mill;
    }

    [Theory, OnSqlite, OnPostgres]
    public void Keep_ACorrection_KeepsTheOlderVersion(Store store)
    {
        using var site = new TestSite(store);
        using var mill = Open(site);
        var first = MillTests.Keep(mill, Paper(), "Ada Miller", 0, Now).Kept!;
        Assert.Equal(("UA-2025-09-22T1500", 1, 1, true), (first.Code, first.Version, first.Figures, first.Stands));
        Assert.Equal(2, MillTests.Keep(mill, Paper(31), "Ben Roller", 1, Now).Kept!.Version);
        Assert.Equal([29.5, 31], MillTests.Versions(mill, first.Code).Select(v => v.Paper.Releases["B1"]));
        Assert.Equal("Ben Roller", Assert.Single(MillTests.Newest(mill)).By);

        // Twice is once; from an older version is refused.
        Assert.Equal(2, MillTests.Keep(mill, Paper(31), "Ada Miller", 0, Now).Kept!.Version);
        Assert.Equal(["UA-2025-09-22T1500 stands already in version 2, kept by Ben Roller: a test is entered once. Correct or strike that one."], MillTests.Keep(mill, Paper(32), "Ada Miller", 1, Now).Faults);
    }

    [Fact]
    public void Strike_NeedsAReason_AndCountsNoLonger()
    {
        using var site = new TestSite(Store.Sqlite);
        using var mill = Open(site);
        var code = MillTests.Keep(mill, Paper(), "Ada Miller", 0, Now).Kept!.Code;
        Assert.Contains("Say why the test is struck", Assert.Single(MillTests.Strike(mill, code, " ", "Ada Miller", 1, Now).Faults), StringComparison.Ordinal);
        Assert.Single(MillTestHistory.Of(mill, "UA", Now)!.Tests);
        Assert.Equal("the sieve was blind", MillTests.Strike(mill, code, "the sieve was blind", "Ada Miller", 1, Now).Kept!.Paper.Struck);
        Assert.Empty(MillTestHistory.Of(mill, "UA", Now)!.Tests);
        Assert.Contains("struck already, by Ada Miller: the sieve was blind", Assert.Single(MillTests.Strike(mill, code, "again", "Ada Miller", 2, Now).Faults), StringComparison.Ordinal);
        Assert.Contains("No mill test", Assert.Single(MillTests.Strike(mill, "UA-1", "x", "Ada Miller", 1, Now).Faults), StringComparison.Ordinal);
        Assert.True(MillTests.Keep(mill, Paper(), "Ada Miller", 2, Now).Kept!.Stands); // corrected, it counts again
    }

    [Fact]
    public void Keep_WhatCannotBe_SaysEveryReasonAndKeepsNothing()
    {
        using var site = new TestSite(Store.Sqlite);
        using var mill = Open(site);
        (MillTestPaper Paper, string Says)[] cases =
        [
            (Paper() with { Unit = "UQ" }, "No flow sheet of a unit UQ is kept: there are UA."), (Paper(sheet: 3), "UA has no flow sheet of version 3"), (Paper(at: Now + Duration.FromHours(1)), "in the future"),
            (Paper() with { TakenBy = " " }, "Say who took the test"), (Paper(140), "B1 tests 140 %: a release"), (Paper() with { Releases = new Dictionary<string, double> { ["Q9"] = 30 } }, "Q9 is no passage with rolls"),
            (Paper() with { Releases = new Dictionary<string, double>() }, "nothing was measured"), (Paper() with { Streams = [new PosedStream("1M", 80), new PosedStream("2M", 60)] }, "add up to 140 %"),
            (Paper() with { Streams = [new PosedStream("1M", 10) { AshPercent = -0.4 }] }, "ash lies above 0"), (Paper() with { Wheat = Wheat with { MoisturePercent = 60 } }, "moisture at first break lies from 10 to 20 %"),
            (Paper() with { Sieves = [new SieveReading("B1", 1000, 50), new SieveReading("B1", 1000, 52)] }, "stands there 2 times"), (Paper() with { Struck = "x" }, ""),
        ];
        foreach (var (paper, says) in cases[..^1])
        {
            Assert.Contains(MillTests.Keep(mill, paper, "Ada Miller", 0, Now).Faults, f => f.Contains(says, StringComparison.Ordinal));
        }

        Assert.Contains(MillTests.Keep(mill, Paper(), " ", 0, Now).Faults, f => f.Contains("Say who you are", StringComparison.Ordinal));
        Assert.Contains(MillTests.Keep(mill, Paper(), "Ada Miller", 4, Now).Faults, f => f.Contains("to be corrected", StringComparison.Ordinal));
        Assert.Equal(2, MillTests.KeepAll(mill, [("line 2: ", Paper()), ("line 5: ", Paper(-3, Monday + Duration.FromDays(7))), ("line 9: ", Paper(130, Monday + Duration.FromDays(8)))], "Ada Miller", Now).Faults.Count(f => f.StartsWith("line", StringComparison.Ordinal)));
        Assert.Empty(MillTests.Newest(mill));
    }

    [Fact]
    public void History_OfTheUnit_IsInOrderWithSettingsOfThenAndLeavesOutAnotherMill()
    {
        using var site = new TestSite(Store.Sqlite);
        using var mill = Open(site);
        Assert.Null(MillTestHistory.Of(mill, "UB", Now));
        MillTests.KeepAll(mill, [("", Paper(31, Monday + Duration.FromDays(7)) with { Set = new() { GapMicrometres = new Dictionary<string, double> { ["B1"] = 480 } } }), ("", Paper())], "Ada Miller", Now);
        var history = MillTestHistory.Of(mill, "UA", Now)!;
        Assert.Equal([("UA-2025-09-22T1500", 500.0), ("UA-2025-09-29T1500", 480)], history.Tests.Select(t => (t.Test.Name, t.Test.Sheet.Passages[0].Rolls!.GapMicrometres)));
        Assert.Single(MillTestHistory.Of(mill, "UA", Monday)!.Tests);

        var sheet = HouseFlowSheets.Of('A');
        FlowSheets.Keep(mill, "UA", new FlowSheetPaper("a coarser cloth less", sheet with { Passages = [sheet.Passages[0] with { Cloths = [.. sheet.Passages[0].Cloths.Take(1), .. sheet.Passages[0].Cloths.Skip(2)] }, .. sheet.Passages.Skip(1)] }), "Ada Miller", 1);
        history = MillTestHistory.Of(mill, "UA", Now)!;
        Assert.Empty(history.Tests);
        Assert.Contains("flow sheet version 1 had other passages, cloths or first break than version 2", history.LeftOut[0], StringComparison.Ordinal);
    }
}
