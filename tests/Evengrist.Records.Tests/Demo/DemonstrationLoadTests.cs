using Evengrist.Demo;
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
        Assert.Equal(year.Drafts, mill.Ask(v => v.Book.Last.Value));
        Assert.Equal(year.Book.StockOf(year.Book.Named("B06").Id), mill.Ask(v => v.Book.StockOf(v.Book.Named("B06").Id)));
        Assert.Equal((MillCalendar.ZoneId, true), (mill.Settings.ZoneId, mill.Settings.IsDemonstration));
        Assert.Equal(HouseContracts.All.Count, mill.Contracts.All().Count);
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
