using Evengrist.Demo;
using Evengrist.Milling.OnPaper;
using Evengrist.Milling.Sheet;
using Evengrist.Records.Milling;
using Evengrist.Records.Tests.Stores;

namespace Evengrist.Records.Tests.Milling;

/// <summary>Trials on paper kept by name, changed and struck.</summary>
public sealed class MillTrialsTests
{
    private static MillTrialPaper Paper(string gap = "210", string name = "wider third break") => new("UA", name, 1, new Dictionary<string, string> { ["gap-B3C"] = gap, ["releases"] = "B1 26\nB2 52" });

    private static Mill Open(TestSite site)
    {
        var mill = site.Open();
        FlowSheets.Keep(mill, "UA", new FlowSheetPaper("first", HouseFlowSheets.Of('A')), "Ada Miller", 0);
        return mill;
    }

    [Theory, OnSqlite, OnPostgres]
    public void Keep_AChange_KeepsTheOlderVersion_AndNobodysIsOverwrittenUnseen(Store store)
    {
        using var site = new TestSite(store);
        using var mill = Open(site);
        var first = MillTrials.Keep(mill, Paper(), "Ada Miller", 0).Kept!;
        Assert.Equal((1, true, "B1 26\nB2 52"), (first.Version, first.Stands, first.Paper.Typed["releases"]));
        Assert.Equal(2, MillTrials.Keep(mill, Paper("220"), "Ben Roller", 1).Kept!.Version);
        Assert.Equal(["210", "220"], MillTrials.Versions(mill, "UA", "wider third break").Select(v => v.Paper.Typed["gap-B3C"]));
        Assert.Equal(2, MillTrials.Keep(mill, Paper("220"), "Ada Miller", 0).Kept!.Version); // twice is once
        Assert.Equal(["A trial “wider third break” of UA stands already in version 2, kept by Ben Roller: give another name, or open that one and change it."], MillTrials.Keep(mill, Paper("230"), "Ada Miller", 1).Faults);
        Assert.NotNull(MillTrials.Keep(mill, Paper("230", "another"), "Ada Miller", 0).Kept);
        Assert.Equal(["another", "wider third break"], MillTrials.Of(mill, "UA").Select(t => t.Paper.Name).Order());
        Assert.Empty(MillTrials.Of(mill, "UB"));
    }

    [Fact]
    public void Strike_NeedsAReason_IsListedNoLonger_AndTheNameMayBeGivenAnew()
    {
        using var site = new TestSite(Store.Sqlite);
        using var mill = Open(site);
        MillTrials.Keep(mill, Paper(), "Ada Miller", 0);
        Assert.Contains("Say why the trial is struck", Assert.Single(MillTrials.Strike(mill, "UA", "wider third break", " ", "Ada Miller", 1).Faults), StringComparison.Ordinal);
        Assert.Equal("tried in the mill", MillTrials.Strike(mill, "UA", "wider third break", "tried in the mill", "Ada Miller", 1).Kept!.Paper.Struck);
        Assert.Empty(MillTrials.Of(mill, "UA"));
        Assert.Equal("210", MillTrials.Versions(mill, "UA", "wider third break")[1].Paper.Typed["gap-B3C"]);
        Assert.Contains("struck already, by Ada Miller: tried in the mill", Assert.Single(MillTrials.Strike(mill, "UA", "wider third break", "x", "Ada Miller", 2).Faults), StringComparison.Ordinal);
        Assert.Contains("No trial “Q” of UA is kept", Assert.Single(MillTrials.Strike(mill, "UA", "Q", "x", "Ada Miller", 1).Faults), StringComparison.Ordinal);
        Assert.Equal(3, MillTrials.Keep(mill, Paper("250"), "Ben Roller", 0).Kept!.Version);
    }

    [Fact]
    public void Keep_WhatCannotBe_SaysWhyAndKeepsNothing()
    {
        using var site = new TestSite(Store.Sqlite);
        using var mill = Open(site);
        (MillTrialPaper Paper, string By, string Says)[] cases =
        [
            (Paper(), " ", "Say who you are first"), (Paper(name: ""), "Ada", "Give the trial a name"), (Paper(name: new string('x', 61)), "Ada", "Give the trial a name"), (Paper() with { Unit = "UQ" }, "Ada", "No flow sheet of a unit UQ"),
            (Paper() with { Remark = new string('x', 401) }, "Ada", "The remark is said in 400"), (Paper(new string('1', 5000)), "Ada", "More was typed than a trial holds"),
        ];
        Assert.All(cases, c => Assert.Contains(MillTrials.Keep(mill, c.Paper, c.By, 0).Faults, f => f.Contains(c.Says, StringComparison.Ordinal)));
        Assert.Contains("to be changed: keep it as a new one", Assert.Single(MillTrials.Keep(mill, Paper(), "Ada", 4).Faults), StringComparison.Ordinal);
        Assert.Empty(MillTrials.Of(mill, "UA"));
    }
}
