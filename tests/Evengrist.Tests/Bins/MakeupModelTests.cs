using Evengrist.Bins;
using Evengrist.Ledger;
using Evengrist.Quantities;
using NodaTime;

namespace Evengrist.Tests.Bins;

public sealed class MakeupModelTests
{
    private static readonly Instant Start = Instant.FromUtc(2025, 7, 9, 12, 0);

    [Fact]
    public void Of_ABinOfTwoTrucksAndOpeningStock_NamesTrucksAndOriginsAndSumsToTheStock()
    {
        // By hand: 5 t found, then 26 t and 24 t from two trucks of one field; nothing drawn.
        var book = new Book();
        book.Append(book.ToFacts(
        [
            new OpenPlace("1", "OPEN", PlaceKind.Opening), new OpenPlace("2", "F", PlaceKind.Field), new OpenPlace("3", "T1", PlaceKind.Truck), new OpenPlace("4", "T2", PlaceKind.Truck),
            new OpenPlace("5", "B", PlaceKind.Bin),
            new Move("m1", "OPEN", "B", Mass.FromTonnes(5m), Start),
            new Move("m2", "F", "T1", Mass.FromTonnes(26m), Start), new Move("m3", "T1", "B", Mass.FromTonnes(26m), Start + Duration.FromHours(1)),
            new Move("m4", "F", "T2", Mass.FromTonnes(24m), Start), new Move("m5", "T2", "B", Mass.FromTonnes(24m), Start + Duration.FromHours(2)),
            new Measure("r1", "T1", Start, Property.Protein, 12.32m, "%", Basis.At12, "NIR", StandardUncertainty: 0.22m), new Measure("r2", "T1", Start, Property.Moisture, 11m, "%", default, "NIR"),
        ], "test", "test", Start + Duration.FromDays(1)));
        var reckoning = new Reckoning(book, Outflow.FirstInFirstOut);
        reckoning.CatchUp();
        var at = Start + Duration.FromHours(3);

        var makeup = new MakeupModel(book, reckoning.Parcels).Of(reckoning.At(at).ContentOf(book.Named("B").Id));

        Assert.Equal(55e6, makeup.Grams, 3);
        Assert.Equal([("F", 50e6), ("OPEN", 5e6)], makeup.Origins.Select(o => (book[o.Place].Code, o.Grams)));
        Assert.Equal([("T1", 26e6), ("T2", 24e6)], makeup.Loads.Select(l => (book[l.Place].Code, l.Grams)));

        // 12.32 % at 12 % moisture is 12.32/0.88 = 14.0 % dry; 0.22 becomes 0.25.
        var test = LoadTest.Of(book, book.Named("T1").Id, at)!;
        Assert.Equal(14.0, test.ProteinPercentDry, 9);
        Assert.Equal(0.89, test.DryShare, 9);
        Assert.Equal(0.25, test.StandardUncertaintyPercentDry!.Value, 9);
        Assert.Null(LoadTest.Of(book, book.Named("T2").Id, at));
        Assert.Null(LoadTest.Of(book, book.Named("T1").Id, Start - Duration.FromHours(1)));
    }
}
