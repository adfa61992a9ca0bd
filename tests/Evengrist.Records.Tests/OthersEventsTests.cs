using Evengrist.Ledger;
using Evengrist.Quantities;
using Evengrist.Records.Ledger;
using Evengrist.Records.Tests.Stores;
using Evengrist.Records.Tracing;
using NodaTime;

namespace Evengrist.Records.Tests;

/// <summary>Events of others are kept once, whichever documents they stood in.</summary>
public sealed class OthersEventsTests
{
    private const string One = """{"type":"ObjectEvent","n":1}""", Two = """{"type":"ObjectEvent","n":2}""", OneWrong = """{"type":"ObjectEvent","n":1,"errorDeclaration":{"declarationTime":"2025-01-01T00:00:00Z"}}""";

    [Theory, OnSqlite, OnPostgres]
    public void Take_SameTwiceAndOverlapping_KeepsEachEventOnce(Store store)
    {
        using var site = new TestSite(store);
        using var mill = site.Open();
        Assert.Equal(new EventsTaken(1, 0, 0), OthersEvents.Take(mill, "d1", "{}", [("h1", One)], "Ada"));
        Assert.Equal(new EventsTaken(0, 0, 1), OthersEvents.Take(mill, "d1", "{}", [("h1", One)], "Bo"));
        Assert.Equal(new EventsTaken(1, 0, 2), OthersEvents.Take(mill, "d2", "[]", [("h1", One), ("h2", Two), ("h2", Two)], "Bo"));
        Assert.Equal([("h1", One, "Ada"), ("h2", Two, "Bo")], OthersEvents.All(mill).Select(p => (p.Code, p.Json, p.By)));
        Assert.Equal(["d1", "d2"], mill.Papers(OthersEvents.DocumentKind).All().Select(p => p.Code));
    }

    [Theory, OnSqlite, OnPostgres]
    public void Take_ErrorDeclared_MarksTheEventAndKeepsWhatItSaidBefore(Store store)
    {
        using var site = new TestSite(store);
        using var mill = site.Open();
        OthersEvents.Take(mill, "d1", "{}", [("h1", One), ("h2", Two)], "Ada");
        Assert.Equal(new EventsTaken(0, 1, 0), OthersEvents.Take(mill, "d2", "[]", [("h1", OneWrong)], "Bo"));
        Assert.Equal(new EventsTaken(0, 0, 2), OthersEvents.Take(mill, "d3", "1", [("h1", One), ("h1", OneWrong)], "Bo"));
        Assert.Equal([OneWrong, Two], OthersEvents.All(mill).Select(p => p.Json));
        Assert.Equal([One, OneWrong, Two], mill.Papers(OthersEvents.EventKind).All().Select(p => p.Json));
    }

    [Theory, OnSqlite, OnPostgres]
    public void Take_DeclarationOfAnEventNeverSeen_IsCounted(Store store)
    {
        using var site = new TestSite(store);
        using var mill = site.Open();
        Assert.Equal(new EventsTaken(1, 0, 0, 1), OthersEvents.Take(mill, "d1", "{}", [("h1", OneWrong)], "Ada"));
        Assert.Equal(new EventsTaken(0, 0, 1), OthersEvents.Take(mill, "d2", "1", [("h1", OneWrong)], "Ada"));

        // What stands in one document before its declaration was told.
        Assert.Equal(new EventsTaken(1, 1, 0), OthersEvents.Take(mill, "d3", "2", [("h2", Two), ("h2", OneWrong)], "Ada"));
    }

    [Theory, OnSqlite, OnPostgres]
    public void Take_OneIsNoJson_KeepsNothing(Store store)
    {
        using var site = new TestSite(store);
        using var mill = site.Open();
        Assert.Throws<ArgumentException>(() => OthersEvents.Take(mill, "d1", "{}", [("h1", One), ("h2", "{")], "Ada"));
        Assert.Empty(OthersEvents.All(mill));
        Assert.Equal(new EventsTaken(1, 0, 0), OthersEvents.Take(mill, "d1", "{}", [("h1", One)], "Ada"));
    }

    [Theory, OnSqlite, OnPostgres]
    public void Corrected_MovementsPutRight_AreListedWithWhoAndWhen(Store store)
    {
        using var site = new TestSite(store);
        using var mill = site.Open();
        mill.Record([.. SmallMill.Places, new Move("g", "GAIN", "B1", Mass.FromTonnes(60m), SmallMill.Morning)], "Ada", "test");
        Assert.Empty(Corrected.By(mill));
        var wrong = mill.Ask(v => v.Book.Movements[0].Id);
        new PutRight(wrong, "misread") { Mass = Mass.FromTonnes(50m) }.In(mill, "Bo", SmallMill.Morning + Duration.FromHours(1));
        var fact = Assert.Single(Corrected.By(mill));
        Assert.Equal((wrong, "Bo", SmallMill.Morning + Duration.FromHours(1)), (fact.Attribution.Corrects, fact.Attribution.By, fact.Attribution.Recorded));
    }
}
