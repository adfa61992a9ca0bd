using Evengrist.Bins;
using Evengrist.Ledger;
using Evengrist.Quantities;
using Evengrist.Tempering;
using NodaTime;

namespace Evengrist.Tests.Tempering;

public sealed class TemperContentTests
{
    private static readonly Instant Start = Instant.FromUtc(2026, 1, 14, 6, 0);

    [Fact]
    public void Of_WheatOfTwoLoadsWithWater_KnowsBothAndTheMoistureAtFirstBreak()
    {
        // By hand: 60 t of 11 % and 20 t of 13 % are 80 t of 11.5 %; with 4 t of water 84 t of (9.2 + 4)/84 = 15.714 %. To 16 % it takes 80 · 4.5/84 = 4.2857 t.
        var (book, at) = Mill();
        var content = Look(book, at);
        Assert.Equal((80.0, 4.0), (Math.Round(content.WheatTonnes, 6), Math.Round(content.WaterTonnes, 6)));
        Assert.Equal((11.5, 0.2, 1.0), (Math.Round(content.MoisturePercent!.Value, 9), Math.Round(content.MoistureUncertainty!.Value, 9), Math.Round(content.ShareRead, 9)));
        Assert.Equal([("HW", 0.75), ("SW", 0.25)], content.Classes.Select(c => (c.Class, Math.Round(c.Share, 9))));
        Assert.Equal(100 * 13.2 / 84, content.AtFirstBreak(0)!.Percent, 1e-9);
        Assert.Equal(4.2857, Assert.IsType<TemperWater>(content.Asked(16, 0)).KilogramsPerTonne * 80 / 1000, 1e-4);
        Assert.IsType<NoTemperWater>(content.Asked(11, 0));
    }

    [Fact]
    public void Of_NothingReadOrNothingThere_SaysNothing()
    {
        var (book, at) = Mill();
        var before = Look(book, at, Start - Duration.FromHours(2));
        Assert.Null(before.MoisturePercent);
        Assert.Null(before.AtFirstBreak(0));
        Assert.Null(before.Asked(16, 0));
        var empty = TemperContent.Of(book, new MakeupModel(book, Reckon(book).Parcels), [], at);
        Assert.Equal((0.0, 0.0, 0), (empty.WheatTonnes, empty.WaterTonnes, empty.Classes.Count));
        Assert.Null(empty.AtFirstBreak(0));
    }

    [Fact]
    public void Over_WaysThatDiffer_IsTheirMeanAndLessSure()
    {
        // By hand: 11.5 and 12.5 % are 12 %; u² = 0.2² + 1²/12.
        var (book, at) = Mill();
        var one = Look(book, at);
        var both = TemperContent.Over([one, one with { MoisturePercent = 12.5 }]);
        Assert.Equal((12.0, Math.Round(Math.Sqrt(0.04 + (1.0 / 12)), 9)), (both.MoisturePercent!.Value, Math.Round(both.MoistureUncertainty!.Value, 9)));
        Assert.Equal(one.MoistureUncertainty!.Value, TemperContent.Over([one, one]).MoistureUncertainty!.Value, 1e-12);
        Assert.Same(one, TemperContent.Over([one]));
    }

    private static TemperContent Look(Book book, Instant at, Instant? readUpTo = null)
    {
        var reckoning = Reckon(book);
        return TemperContent.Of(book, new MakeupModel(book, reckoning.Parcels), reckoning.At(at).ContentOf(book.Named("T").Id), readUpTo ?? at);
    }

    private static Reckoning Reckon(Book book)
    {
        var reckoning = new Reckoning(book, Outflow.FirstInFirstOut);
        reckoning.CatchUp();
        return reckoning;
    }

    private static (Book Book, Instant At) Mill()
    {
        var (book, later) = (new Book(), Start + Duration.FromHours(1));
        book.Append(book.ToFacts(
        [
            new OpenPlace("1", "F", PlaceKind.Field), new OpenPlace("2", "T1", PlaceKind.Truck) { Material = "HW" }, new OpenPlace("3", "T2", PlaceKind.Truck) { Material = "SW" },
            new OpenPlace("4", "B", PlaceKind.Bin), new OpenPlace("5", "WATER", PlaceKind.Water), new OpenPlace("6", "CL", PlaceKind.Cleaner), new OpenPlace("7", "T", PlaceKind.TemperBin), new OpenPlace("8", "MX", PlaceKind.MixLine),
            new Connect("a", "B", "MX"), new Connect("b", "MX", "CL"), new Connect("c", "CL", "T"),
            new Move("m1", "F", "T1", Mass.FromTonnes(60m), Start), new Move("m2", "F", "T2", Mass.FromTonnes(20m), Start), new Move("m3", "T1", "B", Mass.FromTonnes(60m), Start), new Move("m4", "T2", "B", Mass.FromTonnes(20m), Start),
            new Move("m5", "B", "MX", Mass.FromTonnes(80m), Start, later), new Move("m6", "MX", "CL", Mass.FromTonnes(80m), Start, later), new Move("m7", "WATER", "CL", Mass.FromTonnes(4m), Start, later),
            new Move("m8", "CL", "T", Mass.FromTonnes(84m), Start, later),
            new Measure("r1", "T1", Start, Property.Moisture, 11m, "%", default, "NIR", StandardUncertainty: 0.2m), new Measure("r2", "T2", Start, Property.Moisture, 13m, "%", default, "NIR", StandardUncertainty: 0.2m),
        ], "test", "test", Start + Duration.FromDays(1)));
        return (book, later);
    }
}
