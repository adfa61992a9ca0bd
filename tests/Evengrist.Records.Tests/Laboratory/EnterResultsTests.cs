using Evengrist.Laboratory.Methods;
using Evengrist.Laboratory.Samples;
using Evengrist.Ledger;
using Evengrist.Records.Laboratory;
using Evengrist.Records.Tests.Stores;
using NodaTime;

namespace Evengrist.Records.Tests.Laboratory;

public sealed class EnterResultsTests
{
    private static readonly LabSample Jar = new("S-1", "", [new(Property.Moisture, "oven 130 °C")], "after the sifter");

    [Theory, OnSqlite, OnPostgres]
    public void In_DuplicatesAndARetest_StandBesideEachOther(Store store)
    {
        using var site = new TestSite(store);
        using (var mill = site.Open())
        {
            mill.Record(SmallMill.Places, "Ada", "test");
            Assert.Equal(1, new TakeLabSample("B1", Hour(1), Jar).In(mill, "Ada").Added);
            Assert.Equal(0, new TakeLabSample("B1", Hour(1), Jar).In(mill, "Ada").Added);
            Assert.Equal(2, Enter("a", 13.42m, 13.56m).In(mill, "Ben", Hour(3)).Receipt!.Added);
            Assert.Equal(0, Enter("a", 13.42m, 13.56m).In(mill, "Ben", Hour(3)).Receipt!.Added);
            Assert.Equal(2, Enter("b", 13.48m, 13.50m).In(mill, "Ada", Hour(4)).Receipt!.Added);
        }

        using var reopened = site.Open();
        var sample = reopened.Ask(v => TakenSample.Find(v.Book, "s-1", Hour(9)))!;
        Assert.True(sample.IsTested);
        var rounds = LabRounds.Of(reopened, sample, LabMethods.Start);
        Assert.Equal([("Ben", false), ("Ada", true)], rounds.Select(r => (r.By, r.IsRetest)));
        Assert.IsType<MoreNeeded>(rounds[0].Judged); // r 0.12 from memory of ISO 712-1.
        Assert.Equal(13.49m, Assert.IsType<ResultsAgree>(rounds[1].Judged).Mean);

        // Two pairs, 0.14 and 0.02 apart: s_r = √((0.0196 + 0.0004)/4) by hand; a retest is no duplicate of the first round.
        var (method, own) = Assert.Single(OwnDuplicates.Of(reopened, LabMethods.Start, Hour(9)));
        Assert.Equal(("oven 130 °C", 2), (method.Code, own.Freedom));
        Assert.Equal(Math.Sqrt(0.005), own.StandardDeviation, 12);
        Assert.Empty(OwnDuplicates.Of(reopened, LabMethods.Start, Hour(1)));
    }

    [Theory, OnSqlite]
    public void In_WhatCannotBe_IsRefusedAndOddOnesAskForAReason(Store store)
    {
        using var site = new TestSite(store);
        using var mill = site.Open();
        mill.Record(SmallMill.Places, "Ada", "test");
        mill.Record([new Measure("m", "B1", Hour(0), Property.Moisture, 13.4m, "%", default, "oven 130 °C")], "Ada", "test");
        Assert.Contains("There is no sample", Assert.Single(Enter("x", 13m).In(mill, "Ada").Objections).Words, StringComparison.Ordinal);
        new TakeLabSample("B1", Hour(1), Jar).In(mill, "Ada");
        Assert.Contains("before the sample", Assert.Single((Enter("x", 13m) with { Measured = Hour(0) }).In(mill, "Ada").Objections).Words, StringComparison.Ordinal);
        var (none, asked) = Enter("y", 16m).In(mill, "Ada", Hour(3));
        Assert.Null(none);
        Assert.True(Assert.Single(asked).IsQuestion);
        Assert.Equal(1, (Enter("y", 16m) with { Reason = "rain got in" }).In(mill, "Ada", Hour(3)).Receipt!.Added);
        var round = Assert.Single(LabRounds.Of(mill, mill.Ask(v => TakenSample.Find(v.Book, "S-1", Hour(9)))!, LabMethods.Start));
        Assert.Contains("unlike the last ones", round.Note, StringComparison.Ordinal);
        Assert.EndsWith("Taken because: rain got in.", round.Note, StringComparison.Ordinal);
        Assert.Equal(LedgerRule.KeyTaken, Assert.Throws<LedgerRefusal>(() => new TakeLabSample("B2", Hour(2), Jar with { Code = "s-1" }).In(mill, "Ada")).Rule);
        Assert.Equal(LedgerRule.UnknownPlace, Assert.Throws<LedgerRefusal>(() => new TakeLabSample("B9", Hour(2), Jar with { Code = "S-2" }).In(mill, "Ada")).Rule);
        Assert.Equal(LedgerRule.Malformed, Assert.Throws<LedgerRefusal>(() => new TakeLabSample("B1", Hour(2), Jar with { Code = "" }).In(mill, "Ada")).Rule);
    }

    private static EnterResults Enter(string key, params decimal[] values) => new(key, "S-1", [new ResultEntry(Property.Moisture, "oven 130 °C", "", values, "%", default)], Hour(2));

    private static Instant Hour(int hours) => SmallMill.Morning + Duration.FromHours(hours);
}
