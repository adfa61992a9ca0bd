using Evengrist.Ledger;
using Evengrist.Tempering;
using NodaTime;

namespace Evengrist.Tests.Tempering;

/// <summary>How a temper bin is run by what persons recorded; hours and litres by hand.</summary>
public sealed class TemperRunTests
{
    private static readonly Instant Start = Instant.FromUtc(2026, 1, 13, 22, 10);

    [Fact]
    public void Run_OfASettingTrimmedTwice_AddsLitresStretchByStretch()
    {
        var book = Book((0, new(TemperAct.FillingBegun, 17.5, 1000)), (2, new(TemperAct.WaterSet, null, 1100)), (3, new(TemperAct.DrawingBegun)), (5, new(TemperAct.WaterSet, null, 0)), (6, new(TemperAct.FillingEnded)));
        Assert.Equal((null, null, null), (At(book, -1).FillingSince, At(book, -1).LitresPerHour, At(book, -1).LitresByNow));
        Assert.Equal((Start, 17.5, 1000.0, 1500.0), (At(book, 1.5).FillingSince, At(book, 1.5).TonnesPerHourIn, At(book, 1.5).LitresPerHour, At(book, 1.5).LitresByNow!.Value));

        // By hand: 2 h of 1000, 3 h of 1100, then none.
        Assert.Equal((2000.0, 3100.0, 5300.0, 5300.0), (At(book, 2).LitresByNow, At(book, 3).LitresByNow, At(book, 5).LitresByNow, At(book, 5.5).LitresByNow));
        Assert.Equal(Start + Duration.FromHours(5), At(book, 5.5).WaterSince);
        Assert.Equal((null, null, Start + Duration.FromHours(3)), (At(book, 7).FillingSince, At(book, 7).LitresPerHour, At(book, 7).DrawingSince));
        Assert.Equal([TemperAct.WaterSet, TemperAct.FillingBegun, TemperAct.DrawingEnded], At(book, 7).Next);
    }

    [Fact]
    public void Run_WithoutTheWaterAtItsStart_KnowsNoLitres()
    {
        var book = Book((0, new(TemperAct.FillingBegun)), (1, new(TemperAct.WaterSet, null, 900)));
        Assert.Equal((null, 900.0), (At(book, 3).LitresByNow, At(book, 3).LitresPerHour));
        Assert.Equal(900, At(Book((0, new(TemperAct.FillingBegun)), (0, new(TemperAct.WaterSet, null, 900))), 1).LitresByNow); // Set in the minute it began.
    }

    [Theory]
    [InlineData(TemperAct.None, null, null, "Say what was done")]
    [InlineData((TemperAct)99, null, null, "Say what was done")]
    [InlineData(TemperAct.WaterSet, null, null, "how many litres an hour")]
    [InlineData(TemperAct.WaterSet, null, -1.0, "from 0 to 100,000 L/h; read -1")]
    [InlineData(TemperAct.WaterSet, 5.0, 10.0, "leave them out")]
    [InlineData(TemperAct.FillingBegun, 0.0, null, "above 0 and up to 1000 t/h; read 0")]
    [InlineData(TemperAct.FillingBegun, double.NaN, null, "above 0 and up to 1000 t/h")]
    [InlineData(TemperAct.FillingEnded, null, 5.0, "leave it out")]
    public void Entry_ThatCannotBe_SaysWhy(TemperAct act, double? wheat, double? water, string why) => Assert.Contains(why, string.Join(" ", new TemperEntry(act, wheat, water).Faults()), StringComparison.Ordinal);

    [Fact]
    public void Entry_AsAHappening_IsReadBackWithItsWords()
    {
        var entry = new TemperEntry(TemperAct.FillingBegun, 17.5, 1010);
        var happening = new Happening(new FactId(1), new PlaceId(1), Start, HappeningKind.Tempered, entry.Text("drier wheat\nfrom B14"));
        Assert.Equal("filling begun at 17.5 t/h, water 1,010 L/h: drier wheat from B14", happening.Words);
        Assert.Equal(entry, TemperEntry.Of(happening));
        Assert.Null(TemperEntry.Of(happening with { Text = "words alone" }));
        Assert.Null(TemperEntry.Of(happening with { Kind = HappeningKind.Note }));
        Assert.Equal("water set to 0 L/h", new TemperEntry(TemperAct.WaterSet, null, 0).Words);
    }

    private static TemperRun At(Book book, double hours) => TemperRun.Of(book, book.Named("T").Id, Start + Duration.FromHours(hours));

    private static Book Book(params (double Hours, TemperEntry Entry)[] entries)
    {
        var book = new Book();
        Draft[] drafts = [new OpenPlace("t", "T", PlaceKind.TemperBin), .. entries.Select((e, i) => new Happen($"{i}", "T", Start + Duration.FromHours(e.Hours), HappeningKind.Tempered, e.Entry.Text()))];
        book.Append(book.ToFacts(drafts, "Ada", "test", Start + Duration.FromDays(1)));
        return book;
    }
}
