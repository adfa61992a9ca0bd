using Evengrist.Ledger;
using Evengrist.Quantities;
using Evengrist.Records.Browsing;
using Evengrist.Records.Ledger;
using Evengrist.Records.Tests.Stores;
using NodaTime;

namespace Evengrist.Records.Tests;

public sealed class FactsTests
{
    private static readonly Duration Hour = Duration.FromHours(1);

    [Theory, OnSqlite, OnPostgres]
    public void Facts_Filters_NarrowAsTheySay(Store store)
    {
        using var site = new TestSite(store);
        using var mill = Filled(site);
        long[] Numbers(FactFilter filter) => [.. mill.Facts(filter).Lines.Select(l => l.Fact.Id.Value)];
        Assert.Equal(Enumerable.Range(1, 25).Select(n => (long)n).Reverse(), Numbers(new FactFilter()));
        Assert.Equal([22, 21, 20, 19, 18], Numbers(new FactFilter { Place = "t2" }));
        Assert.Equal([20, 13], Numbers(new FactFilter { Sort = FactSort.Reading }));
        Assert.Equal([25], Numbers(new FactFilter { By = "bea" }));
        Assert.Equal([25], Numbers(new FactFilter { Source = "LEDGER" }));
        Assert.Equal([21, 14], Numbers(new FactFilter { Text = "spot 1" }));
        Assert.Empty(Numbers(new FactFilter { Text = "spot%1" }));
        Assert.Equal([25, 24, 23, 22, 21, 20, 19], Numbers(new FactFilter { From = SmallMill.Morning + Hour, Until = SmallMill.Morning + Hour + Hour }));
        Assert.Empty(Numbers(new FactFilter { Place = "nowhere" }));
        Assert.Empty(Numbers(new FactFilter { Text = "' OR 1=1 --" }));
    }

    [Theory, OnSqlite, OnPostgres]
    public void Facts_PageAfterPage_GivesEachOnce(Store store)
    {
        using var site = new TestSite(store);
        using var mill = Filled(site);
        var numbers = new List<long>();
        for (var page = mill.Facts(new FactFilter { Size = 4 }); ; page = mill.Facts(new FactFilter { Size = 4, Before = page.Next }))
        {
            Assert.InRange(page.Lines.Count, 1, 4);
            numbers.AddRange(page.Lines.Select(l => l.Fact.Id.Value));
            if (page.Next is null)
            {
                break;
            }
        }

        Assert.Equal(Enumerable.Range(1, 25).Select(n => (long)n).Reverse(), numbers);
    }

    [Theory, OnSqlite, OnPostgres]
    public void Facts_Corrected_SaysByWhatAndByWhom(Store store)
    {
        using var site = new TestSite(store);
        using var mill = Filled(site);
        var lines = mill.Facts(new FactFilter { Sort = FactSort.Movement, Place = "B2" }).Lines;
        Assert.Equal([(25L, true), (24L, false)], lines.Select(l => (l.Fact.Id.Value, l.Counts)));
        Assert.Equal(new FactId(25), lines[1].CorrectedBy);
        Assert.Equal(("Bea", "ledger", "puts right 24", new FactId(24), "wrong scale"), lines[0].Fact.Attribution is var a ? (a.By, a.Source, a.SourceKey, a.Corrects!.Value, a.Note) : default);
        Assert.Equal(Instant.FromUtc(2026, 8, 1, 12, 0), lines[0].Fact.Attribution.Recorded);
        Assert.Equal(Mass.FromTonnes(19m), ((Moved)lines[0].Fact).Movement.Mass);
    }

    // Facts 1 to 10 places, 11 to 17 truck T1, 18 to 24 truck T2 an hour later into B2, 25 puts 24 right.
    private static Mill Filled(TestSite site)
    {
        var mill = site.Open();
        mill.Record(SmallMill.Places, "Ada", "test");
        mill.Record(SmallMill.Truck("T1", 26m, SmallMill.Morning), "Ada", "test");
        mill.Record(SmallMill.Truck("T2", 20m, SmallMill.Morning + Hour, "B2"), "Ada", "test");
        new PutRight(new FactId(24), "wrong scale") { Mass = Mass.FromTonnes(19m) }.In(mill, "Bea");
        return mill;
    }
}
