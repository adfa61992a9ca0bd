using Evengrist.Demo;
using Evengrist.Milling.Sheet;
using Evengrist.Records.Milling;
using Evengrist.Records.Tests.Stores;

namespace Evengrist.Records.Tests.Milling;

public sealed class FlowSheetsTests
{
    private static FlowSheetPaper Paper(string reason = "first", double gap = 500)
    {
        var sheet = HouseFlowSheets.Of('A');
        var first = sheet.Passages[0];
        return new FlowSheetPaper(reason, sheet with { Passages = [first with { Rolls = first.Rolls! with { GapMicrometres = gap } }, .. sheet.Passages.Skip(1)] });
    }

    [Theory, OnSqlite, OnPostgres]
    public void Keep_AChange_IsTheNextVersionWithWhoAndWhy(Store store)
    {
        using var site = new TestSite(store);
        using var mill = site.Open();
        Assert.Equal(1, FlowSheets.Keep(mill, "A", Paper(), "Ada Miller", 0).Kept!.Version);
        var kept = FlowSheets.Keep(mill, "A", Paper(" rolls were changed ", 520), "Ben Roller", 1).Kept!;
        Assert.Equal((2, "Ben Roller", "rolls were changed", 520), (kept.Version, kept.By, kept.Reason, kept.Sheet.Passages[0].Rolls!.GapMicrometres));
        Assert.Equal([500, 520], FlowSheets.Versions(mill, "A").Select(v => v.Sheet.Passages[0].Rolls!.GapMicrometres));
        Assert.Equal(["A 2"], FlowSheets.Newest(mill).Select(k => $"{k.Unit} {k.Version}"));
        Assert.Equal(["B1 gap: 500 µm, now 520 µm"], FlowSheetChanges.Of(FlowSheets.Versions(mill, "A")[0].Sheet, kept.Sheet));
        Assert.Null(FlowSheets.Newest(mill, "B"));
        Assert.Empty(FlowSheets.Versions(mill, "B"));
    }

    [Fact]
    public void Keep_TheSameOnceMore_ChangesNothing()
    {
        using var site = new TestSite(Store.Sqlite);
        using var mill = site.Open();
        FlowSheets.Keep(mill, "A", Paper(), "Ada Miller", 0);
        Assert.Equal((1, "Ada Miller"), (FlowSheets.Keep(mill, "A", Paper("another reason"), "Ben Roller", 1).Kept!.Version, FlowSheets.Newest(mill, "A")!.By));
    }

    [Fact]
    public void Keep_WhatAnotherHasKeptMeanwhile_IsRefused()
    {
        using var site = new TestSite(Store.Sqlite);
        using var mill = site.Open();
        FlowSheets.Keep(mill, "A", Paper(), "Ada Miller", 0);
        FlowSheets.Keep(mill, "A", Paper("a", 510), "Ada Miller", 1);
        var (kept, faults) = FlowSheets.Keep(mill, "A", Paper("b", 520), "Ben Roller", 1);
        Assert.Null(kept);
        Assert.Equal(["Version 2 of A was kept meanwhile by Ada Miller. Look at it, and make the change to that one."], faults);
    }

    [Fact]
    public void Keep_AVersionThatIsAhead_FollowsTheNewest()
    {
        using var site = new TestSite(Store.Sqlite);
        using var mill = site.Open();
        Assert.Equal(1, FlowSheets.Keep(mill, "A", Paper(), "Ada Miller", 7).Kept!.Version);
    }

    [Fact]
    public void Keep_WhatCannotBe_SaysEveryReasonAndKeepsNothing()
    {
        using var site = new TestSite(Store.Sqlite);
        using var mill = site.Open();
        var (kept, faults) = FlowSheets.Keep(mill, "../A", Paper(" ", -5), " ", 0);
        Assert.Null(kept);
        Assert.Equal(4, faults.Count);
        Assert.Contains("Say who you are first: every record carries a name.", faults);
        Assert.Contains("B1: a roll gap lies from 10 to 2000 µm.", faults);
        Assert.Contains(faults, f => f.StartsWith("Say why this version is made", StringComparison.Ordinal));
        Assert.Contains(faults, f => f.StartsWith("A unit has a code of 1 to 12 letters", StringComparison.Ordinal));
        Assert.Empty(FlowSheets.Newest(mill));
    }
}
