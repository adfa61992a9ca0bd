using Evengrist.Ledger;
using Evengrist.Records.Tests.Stores;
using Evengrist.Records.Tracing;

namespace Evengrist.Records.Tests;

/// <summary>Documents that were sent, by whom they went to and in their order.</summary>
public sealed class SendingsTests
{
    [Theory, OnSqlite, OnPostgres]
    public void Keep_Sendings_AreNumberedForEachAndHoldWhatTheyTold(Store store)
    {
        using var site = new TestSite(store);
        using var mill = site.Open();
        Assert.Empty(Sendings.All(mill));
        Assert.Equal("C5", Sendings.NameOf(mill, " C5 "));
        Sendings.Keep(mill, "C5", 1, kept => $$"""{"kept":{{kept}}}""", """{"told":"a"}""", "Ada");
        Sendings.Keep(mill, "C5", 2, kept => $$"""{"kept":{{kept}}}""", """{"told":"b"}""", "Bo");
        Sendings.Keep(mill, "Authority", 1, kept => $$"""{"kept":{{kept}}}""", """{"told":"c"}""", "Ada");
        Assert.Equal([(1, """{"kept":1}""", "Ada"), (2, """{"kept":2}""", "Bo")], Sendings.To(mill, "C5").Select(p => (p.Version, p.Json, p.By)));
        Assert.Equal("""{"told":"b"}""", Sendings.EventsOf(mill, "C5", 2));
        Assert.Equal("Authority", Sendings.NameOf(mill, "AUTHORITY"));
        Assert.Throws<InvalidOperationException>(() => Sendings.EventsOf(mill, "C5", 3));
    }

    [Theory, OnSqlite, OnPostgres]
    public void Keep_SomethingElseSentMeanwhile_IsRefusedAndCountsForNothing(Store store)
    {
        using var site = new TestSite(store);
        using var mill = site.Open();
        Sendings.Keep(mill, "C5", 1, kept => $$"""{"kept":{{kept}}}""", """{"told":"a"}""", "Ada");
        var refusal = Assert.Throws<LedgerRefusal>(() => Sendings.Keep(mill, "C5", 1, kept => $$"""{"kept":{{kept}}}""", """{"told":"b"}""", "Bo"));
        Assert.Contains("write it again", refusal.Message, StringComparison.Ordinal);
        Assert.Equal("Ada", Assert.Single(Sendings.To(mill, "C5")).By);

        // What it told was kept beside; the next one counts from its own.
        Sendings.Keep(mill, "C5", 2, kept => $$"""{"kept":{{kept}}}""", """{"told":"c"}""", "Bo");
        Assert.Equal("""{"told":"c"}""", Sendings.EventsOf(mill, "C5", 3));
        Assert.Equal("""{"kept":3}""", Sendings.To(mill, "C5")[1].Json);
    }
}
