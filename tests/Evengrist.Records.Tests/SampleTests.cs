using Evengrist.Intake.Sampling;
using Evengrist.Ledger;
using Evengrist.Records.Intake;
using Evengrist.Records.Tests.Stores;
using NodaTime;

namespace Evengrist.Records.Tests;

public sealed class SampleTests
{
    private static readonly SampleTaken Kept = new("us-hopper-bottom", 6, 2400, "R-1", "A3", "2026-12-28");

    [Theory, OnSqlite, OnPostgres]
    public void TakeSample_Kept_StandsOnItsShelfUntilItIsThrownAway(Store store)
    {
        using var site = new TestSite(store);
        using var mill = Filled(site);
        Assert.Equal(1, new TakeSample("T1", SmallMill.Morning, Kept).In(mill, "Ada").Added);
        Assert.Equal(1, new TakeSample("T1", SmallMill.Morning, Kept).In(mill, "Ada").AlreadyKnown);
        var sample = Assert.Single(mill.Ask(v => RetainedSample.All(v.Book, Instant.MaxValue)));
        Assert.Equal(("T1", Kept, null), (sample.Load.Code, sample.Taken, sample.Discarded));
        Assert.Empty(mill.Ask(v => RetainedSample.All(v.Book, SmallMill.Morning - Duration.FromMinutes(1))));

        var year = SmallMill.Morning + Duration.FromDays(181);
        Assert.Contains("to be kept until 2026-12-28", Assert.Throws<LedgerRefusal>(() => new DiscardSamples(["R-1"], year, new LocalDate(2026, 12, 28)).In(mill, "Ada", year)).Message, StringComparison.Ordinal);
        mill.Record([new Happen("h", "T1", SmallMill.Morning, HappeningKind.Held, "complaint")], "Ada", "test");
        Assert.Contains("on hold", Assert.Throws<LedgerRefusal>(() => new DiscardSamples(["R-1"], year, new LocalDate(2026, 12, 29)).In(mill, "Ada", year)).Message, StringComparison.Ordinal);
        mill.Record([new Happen("r", "T1", SmallMill.Morning + Duration.FromHours(1), HappeningKind.Released, "settled")], "Ada", "test");
        Assert.Equal(1, new DiscardSamples(["r-1"], year, new LocalDate(2026, 12, 29)).In(mill, "Ada", year).Added);
        Assert.Equal(year, Assert.Single(mill.Ask(v => RetainedSample.All(v.Book, Instant.MaxValue))).Discarded);
        Assert.Throws<LedgerRefusal>(() => new DiscardSamples(["R-1"], year, new LocalDate(2026, 12, 29)).In(mill, "Ada", year));
    }

    [Theory, OnSqlite, OnPostgres]
    public void TakeSample_WhatCannotBe_IsRefused(Store store)
    {
        using var site = new TestSite(store);
        using var mill = Filled(site);
        new TakeSample("T1", SmallMill.Morning, Kept).In(mill, "Ada");
        var before = mill.Ask(v => v.Book.Last);
        Assert.Equal(LedgerRule.KeyTaken, Assert.Throws<LedgerRefusal>(() => new TakeSample("T2", SmallMill.Morning, Kept).In(mill, "Ada")).Rule);
        Assert.Equal(LedgerRule.UnknownPlace, Assert.Throws<LedgerRefusal>(() => new TakeSample("T9", SmallMill.Morning, Kept).In(mill, "Ada")).Rule);
        Assert.Contains("is no truck", Assert.Throws<LedgerRefusal>(() => new TakeSample("B1", SmallMill.Morning, Kept).In(mill, "Ada")).Message, StringComparison.Ordinal);
        Assert.Contains("probes or cuts", Assert.Throws<LedgerRefusal>(() => new TakeSample("T1", SmallMill.Morning, Kept with { Cuts = 0 }).In(mill, "Ada")).Message, StringComparison.Ordinal);
        Assert.Equal(before, mill.Ask(v => v.Book.Last));
    }

    [Theory, OnSqlite, OnPostgres]
    public void Papers_KeptOrNot_AreReadOrTheUsualHolds(Store store)
    {
        using var site = new TestSite(store);
        using var mill = site.Open();
        Assert.Equal((SamplingPolicy.Usual, 0), SamplingPapers.PolicyOf(mill));
        Assert.Null(SamplingPapers.CostsOf(mill));
        mill.Papers(SamplingPolicy.Kind).Keep(SamplingPolicy.Code, 1, new SamplingPolicy { KeepDays = 90 }.ToJson(), "Ada");
        mill.Papers(TestCosts.Kind).Keep(TestCosts.Code, 1, new TestCosts { Currency = "USD", CostPerMinute = 1, Tests = [] }.ToJson(), "Ada");
        Assert.Equal((90, 1), (SamplingPapers.PolicyOf(mill).Policy.KeepDays, SamplingPapers.PolicyOf(mill).Version));
        Assert.Empty(SamplingPapers.KeepPolicy(mill, new SamplingPolicy { KeepDays = 91 }.ToJson(), "Ada"));
        Assert.Equal((91, 2), (SamplingPapers.PolicyOf(mill).Policy.KeepDays, SamplingPapers.PolicyOf(mill).Version));
        Assert.NotEmpty(SamplingPapers.KeepPolicy(mill, "{ \"keepDays\": 0 }", "Ada"));
        Assert.NotEmpty(SamplingPapers.KeepCosts(mill, "{", "Ada"));
        Assert.NotEmpty(SamplingPapers.KeepPolicy(mill, "{}", ""));
        Assert.Equal(2, SamplingPapers.PolicyOf(mill).Version);
        Assert.Equal("USD", SamplingPapers.CostsOf(mill)!.Value.Costs.Currency);
    }

    private static Mill Filled(TestSite site)
    {
        var mill = site.Open();
        mill.Record([.. SmallMill.Places, .. SmallMill.Truck("T1", 25m, SmallMill.Morning), .. SmallMill.Truck("T2", 25m, SmallMill.Morning)], "Ada", "test");
        return mill;
    }
}
