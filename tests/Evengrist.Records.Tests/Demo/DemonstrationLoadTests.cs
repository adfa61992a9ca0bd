using Evengrist.Demo;
using Evengrist.Intake.Paying;
using Evengrist.Laboratory.Samples;
using Evengrist.Ledger;
using Evengrist.Quantities;
using Evengrist.Records.Intake;
using Evengrist.Records.Tests.Stores;

namespace Evengrist.Records.Tests.Demo;

[Collection(DemonstrationYearCollection.Name)]
public sealed class DemonstrationLoadTests(DemonstrationYear year)
{
    [Fact]
    public void Load_MillLoadedHalfWay_GoesOnToTheWholeYear()
    {
        using var site = new TestSite(Store.Sqlite);
        using var mill = site.Open();
        mill.Set(DemonstrationMill.Settings);
        foreach (var batch in DemonstrationMill.Drafts().Take(40))
        {
            mill.Record(batch.Drafts, batch.By, batch.Source, batch.Recorded);
        }

        var shares = new List<double>();
        DemonstrationMill.Load(mill, p => shares.Add(p.Share));
        Assert.Equal(shares.Order(), shares);
        Assert.Equal(1, shares[^1]);
        var paid = mill.Ask(v => v.Book.Happenings.Count(h => h.Kind == HappeningKind.Settled));
        const int readAgain = 1, retained = 5 * 3; // three pallets of each of the five lots of the instrument that read wrong
        var jars = mill.Ask(v => v.Book.Happenings.Count(h => LabSample.Of(h) is not null)) + 2;
        Assert.InRange(jars, 8, 20); // The jars of the last days, and two readings of a retest.
        Assert.InRange(paid, 300, 1500);
        Assert.Equal(year.Drafts + paid + readAgain + retained + jars, mill.Ask(v => v.Book.Last.Value));
        Assert.Equal(year.Book.StockOf(year.Book.Named("B06").Id), mill.Ask(v => v.Book.StockOf(v.Book.Named("B06").Id)));
        Assert.Equal((MillCalendar.ZoneId, true), (mill.Settings.ZoneId, mill.Settings.IsDemonstration));
        Assert.Equal(HouseContracts.All.Count, mill.Contracts.All().Count);
    }

    [Fact]
    public void Load_TheYear_PaysGrowersWhoseStatementsAddUpToTheCent()
    {
        using var site = new TestSite(Store.Sqlite);
        using var mill = site.Open();
        DemonstrationMill.Load(mill);
        var last = mill.Ask(v => v.Book.Last);
        var shelf = TradeShelf.Of(mill);
        var loads = mill.Ask(v => shelf.Reader(v, MillCalendar.OpeningMoment).All().ToList());
        var statements = Statement.Of(loads.Where(l => l.Grower is not null && l.Terms is not null), new(2025, 7, 1), new(2026, 6, 30), Basis.At12);
        Assert.Equal(10, statements.Count);
        Assert.All(statements, s => Assert.Equal(s.All.Accounts.Sum(a => a.Settled?.Pay.Amount ?? 0m), s.All.Gross!.Value.Amount));
        Assert.All(statements, s => Assert.Equal(s.All.Gross!.Value - s.All.Left!.Value, s.All.Paid ?? Money.Of(0m, "USD")));
        Assert.Single(statements.SelectMany(s => s.All.Accounts), a => a.Stage == PaymentStage.SettledOtherwise);
        Assert.Equal(new(2025, 8, 19), Assert.Single(loads.Where(l => l.Uncertified.Count > 0).Select(l => l.Date).Distinct()));
        Assert.Equal(["telephone of the source (1.337(a)(1))"], loads.SelectMany(l => l.Receipt().Missing).Distinct());
        Assert.All(loads.Where(l => l.Source?.Kind == PlaceKind.Field), l => Assert.NotEmpty(l.Variety));

        DemonstrationMill.Load(mill);
        Assert.Equal(last, mill.Ask(v => v.Book.Last));
    }

    [Fact]
    public void Load_MillWithFactsOfItsOwn_IsRefused()
    {
        using var site = new TestSite(Store.Sqlite);
        using var mill = site.Open();
        mill.Record(SmallMill.Places, "Ada", "test");
        var last = mill.Ask(v => v.Book.Last);
        Assert.Throws<InvalidOperationException>(() => DemonstrationMill.Load(mill));
        Assert.Equal(last, mill.Ask(v => v.Book.Last));
        Assert.False(mill.Settings.IsDemonstration);
    }
}
