using Evengrist.Ledger;
using Evengrist.Mix;
using Evengrist.Mix.Relations;
using Evengrist.Quantities;
using Evengrist.Records.Mix;
using Evengrist.Records.Season;
using Evengrist.Records.Tests.Stores;

namespace Evengrist.Records.Tests.Mix;

/// <summary>Relations of flour to wheat: runs read from a ledger reckoned by hand, fitted, kept by version.</summary>
public sealed class MillRelationsTests
{
    private static Mill Filled(TestSite site)
    {
        var mill = site.Open();
        MilledRuns.LayDown(mill);
        return mill;
    }

    private static MillRelation Typed(double slope = 1, double uncertainty = 0.2, string flour = "wb") => new(flour, new FlourRelation(Property.Protein, Basis.At12, Basis.At14, -1.3, slope, uncertainty, false, "a book"));

    [Theory, OnSqlite, OnPostgres]
    public void Runs_OfASmallLedger_AreTheirOwnWheatAndTheReadingsOfItsFlourAlone(Store store)
    {
        using var site = new TestSite(store);
        using var mill = Filled(site);
        var runs = RelationRuns.Of(mill, MilledRuns.Hour(100)).Points;
        Assert.Equal(MilledRuns.Runs, runs.Count);
        foreach (var (n, run) in runs.OrderBy(r => r.At).Index())
        {
            Assert.Equal(MilledRuns.Hour((8 * n) + 10), run.At);
            Assert.Equal(12 + (2 * MilledRuns.Share(n)), run.Wheat, 6);
            Assert.Equal(0.1 * Math.Sqrt(Math.Pow(MilledRuns.Share(n), 2) + Math.Pow(1 - MilledRuns.Share(n), 2)), run.WheatUncertainty, 6); // two bins, each 0.1 of its own
            Assert.Equal(run.Wheat - 1.3, run.Read, 6);
            Assert.Equal(0.1 / Math.Sqrt(2), run.ReadUncertainty, 9);
            Assert.Equal(2, run.Readings);
        }

        // Run 3 was last on the rolls at hour 39: a minute before that it is not over.
        Assert.Equal(4, RelationRuns.Of(mill, MilledRuns.Hour(39)).Points.Count);
        Assert.Equal(3, RelationRuns.Of(mill, MilledRuns.Hour(38.9)).Points.Count);
        Assert.Empty(RelationRuns.Of(mill, MilledRuns.Hour(0)).Points);
    }

    [Theory, OnSqlite, OnPostgres]
    public void Runs_ThatTellNothing_SayWhy(Store store)
    {
        using var site = new TestSite(store);
        using var mill = Filled(site);
        void Says(string words, double hour = 100) => Assert.Contains(RelationRuns.Of(mill, MilledRuns.Hour(hour)).Silent, s => s.Reason.Contains(words, StringComparison.Ordinal));
        Assert.Empty(RelationRuns.Of(mill, MilledRuns.Hour(100)).Silent);
        Says("is not through the rolls yet", 38.9);

        // Run 6 was drawn and its flour not read; run 7 names one of its two bins; hour 64 on nothing is drawn.
        Assert.Empty(MixSheets.Keep(mill, MilledRuns.Sheet(6), null, "x").Faults);
        Says("its flour was not read on U");
        Assert.Empty(MixSheets.Keep(mill, MilledRuns.Sheet(7) with { Gates = [.. MilledRuns.Sheet(6).Gates.Take(1).Select(g => g with { SharePercent = 100 })] }, null, "x").Faults);
        Says("a bin that is not on it gave wheat");
        Assert.Empty(MixSheets.Keep(mill, MilledRuns.Sheet(6) with { From = MilledRuns.Hour(64), Until = MilledRuns.Hour(66) }, null, "x").Faults);
        Says("no wheat was drawn in its time");
        mill.Record([new OpenPlace("open T2", "T2", PlaceKind.TemperBin), new Connect("CL>T2", "CL", "T2")], "x", "test");
        Says("the way from MX parts");
        Assert.Empty(RelationRuns.Of(mill, MilledRuns.Hour(100)).Points);
    }

    [Theory, OnSqlite, OnPostgres]
    public void Fit_OfTheRuns_IsTheLineTheyLieOnAndCanBeKept(Store store)
    {
        using var site = new TestSite(store);
        using var mill = Filled(site);
        var records = RelationRecords.Of(mill, SeasonShelf.TermsOf(mill)!.Value.Terms, MilledRuns.Hour(100));
        var fit = Assert.IsType<RelationFitted>(records.Single(r => r.What == Property.Protein).Fit);
        Assert.Equal(1, fit.Line.Slope, 6);
        Assert.Equal(-1.3, fit.Line.Offset, 5);
        Assert.IsType<RelationNotFitted>(records.Single(r => r.What == Property.Ash).Fit);
        var (relation, _) = MillRelations.Fitted(records, "WB", Property.Protein, mill.Settings.Zone);
        var kept = MillRelations.Keep(mill, relation!, "Ada Miller").Kept!;
        Assert.Equal((1, true, 12.4, 13.4), (kept.Version, kept.Relation.Relation.IsFitted, kept.Relation.Relation.LeastWheat!.Value, kept.Relation.Relation.MostWheat!.Value));
        Assert.Contains("Too few", MillRelations.Fitted(records, "WB", Property.Ash, mill.Settings.Zone).Faults.Single(), StringComparison.Ordinal);
        Assert.Contains("no flour QQ", MillRelations.Fitted(records, "QQ", Property.Ash, mill.Settings.Zone).Faults.Single(), StringComparison.Ordinal);
    }

    [Theory, OnSqlite, OnPostgres]
    public void Keep_Again_IsANextVersionAndTheOldOneStays(Store store)
    {
        using var site = new TestSite(store);
        using var mill = Filled(site);
        Assert.Equal(1, MillRelations.Keep(mill, Typed(), "Ada Miller").Kept!.Version);
        Assert.Equal(1, MillRelations.Keep(mill, Typed(), "Osric Venn").Kept!.Version); // the same once more changes nothing
        Assert.Equal(2, MillRelations.Keep(mill, Typed(0.9), "Osric Venn").Kept!.Version);
        var row = RelationRecords.Of(mill, SeasonShelf.TermsOf(mill)!.Value.Terms, MilledRuns.Hour(100)).Single(r => r.What == Property.Protein);
        Assert.Equal([("Ada Miller", 1.0), ("Osric Venn", 0.9)], row.Versions.Select(v => (v.By, v.Relation.Relation.Slope)));
        Assert.Equal(0.9, Assert.Single(MillRelations.Of(mill, "WB")).Relation.Relation.Slope);
        Assert.Empty(MillRelations.Of(mill, "AP"));
    }

    [Theory, OnSqlite, OnPostgres]
    public void Keep_WhatCannotBe_IsRefusedAndNothingKept(Store store)
    {
        using var site = new TestSite(store);
        using var mill = Filled(site);
        foreach (var (relation, by, says) in new[] { (Typed(0), "x", "a slope other than 0"), (Typed(1, -0.1), "x", "an uncertainty of 0 or more"), (Typed(flour: "QQ"), "x", "There is no flour QQ in the terms: there is WB"), (Typed(), " ", "Say who you are") })
        {
            Assert.Contains(says, string.Join(" ", MillRelations.Keep(mill, relation, by).Faults), StringComparison.Ordinal);
        }

        Assert.Empty(MillRelations.All(mill));
    }
}
