using Evengrist.Ledger;
using Evengrist.Records.Tests.Stores;
using NodaTime;

namespace Evengrist.Records.Tests;

public sealed class ReckoningTests
{
    [Theory, OnSqlite, OnPostgres]
    public void Reckoning_AfterFurtherAndLateFacts_IsUpToDateAndTheSameAsAnew(Store store)
    {
        using var site = new TestSite(store);
        var hour = Duration.FromHours(1);
        List<double> before;
        using (var mill = site.Open())
        {
            mill.Record(SmallMill.Places, "Ada", "test");
            mill.Record(SmallMill.Truck("T1", 26m, SmallMill.Morning + hour), "Ada", "test");
            mill.Warm();
            Assert.Equal([26e6], Layers(mill));
            mill.Record(SmallMill.Truck("T2", 20m, SmallMill.Morning), "Ada", "test");
            before = Layers(mill);
            Assert.Equal([20e6, 26e6], before);
        }

        using var again = site.Open();
        again.Warm();
        Assert.Equal(before, Layers(again));
        Assert.Throws<ArgumentOutOfRangeException>(() => again.Ask(v => v.Reckoning((Outflow)99)));
    }

    /// <summary>Grams of the layers of bin B1 from the bottom, first in first out.</summary>
    private static List<double> Layers(Mill mill) => mill.Ask(v =>
        v.Reckoning(Outflow.FirstInFirstOut).At(Instant.FromUtc(2026, 8, 1, 0, 0)).ContentOf(v.Book.Named("B1").Id).Select(l => l.Grams).ToList());
}
