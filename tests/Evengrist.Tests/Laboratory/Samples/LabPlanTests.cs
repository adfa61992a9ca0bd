using Evengrist.Laboratory.Methods;
using Evengrist.Laboratory.Samples;
using Evengrist.Ledger;
using Evengrist.Quantities;
using NodaTime;

namespace Evengrist.Tests.Laboratory.Samples;

public sealed class LabPlanTests
{
    private static readonly Instant Six = Instant.FromUtc(2025, 9, 15, 6, 0);
    private static readonly PlanLine Hourly = new("UA-2h", [new(Property.Protein, "NIR")], Place: "UA", EveryHours: 2);
    private static readonly PlanLine Lots = new("load", [new(Property.Ash, "furnace")], Kind: PlaceKind.BulkLoad, Material: "WB");

    [Fact]
    public void Json_ThereAndBack_IsTheSameAndFaultsAreSaid()
    {
        var json = LabPlanJson.Write(new LabPlan([Hourly, Lots]));
        Assert.True(LabPlanJson.TryRead(json, out var read, out _));
        Assert.Equal(json, LabPlanJson.Write(read));
        Assert.Contains("stands twice", Assert.Single(new LabPlan([Hourly, Hourly]).Faults()), StringComparison.Ordinal);
        Assert.Contains("one of both", Assert.Single((Hourly with { Kind = PlaceKind.Bin }).Faults()), StringComparison.Ordinal);
        Assert.Contains("say everyHours", Assert.Single((Hourly with { EveryHours = null }).Faults()), StringComparison.Ordinal);
        Assert.Contains("8784 hours", Assert.Single((Hourly with { EveryHours = -1 }).Faults()), StringComparison.Ordinal);
        Assert.Contains("at least one test", Assert.Single((Hourly with { Tests = [] }).Faults()), StringComparison.Ordinal);
        Assert.Contains("there is no method", Assert.Single(new LabPlan([Hourly with { Tests = [new(Property.Protein, "guess")] }]).Unknown(LabMethods.Start)), StringComparison.Ordinal);
    }

    [Fact]
    public void Of_EverySoManyHours_IsDueWhileSomethingRuns()
    {
        var book = Book();
        Assert.Empty(PlannedSample.Of(new([Hourly]), book, Six));
        Assert.Equal(At(10), Assert.Single(PlannedSample.Of(new([Hourly]), book, At(11))).Due); // Since it began to run.
        Append(book, Sample(book, 11, "S-1", "UA-2h"));
        Assert.Equal((At(13), false), (Due(11) is var planned ? (planned.Due, planned.IsDue(At(11))) : default));
        Assert.True(Due(13).IsDue(At(13)));
        Append(book, Sample(book, 14, "S-2", "UA-2h")); // The mill stopped at 14: nothing is asked for any more.
        Assert.Empty(PlannedSample.Of(new([Hourly]), book, At(20)));
        PlannedSample Due(int hour) => Assert.Single(PlannedSample.Of(new([Hourly]), book, At(hour)));
    }

    [Fact]
    public void Of_AReadingByALinesMethod_CountsAsASample()
    {
        var book = Book();
        Append(book, new Measure("r", "UA", At(12), Property.Protein, 11.9m, "%", Basis.At14, "nir"));
        Assert.Equal(At(14), Assert.Single(PlannedSample.Of(new([Hourly]), book, At(13))).Due);
    }

    [Fact]
    public void Of_OneOfEachLot_IsDueOnceFilledForThreeDays()
    {
        var book = Book();
        Assert.Empty(PlannedSample.Of(new([Lots]), book, At(14)));
        var due = Assert.Single(PlannedSample.Of(new([Lots]), book, At(16)));
        Assert.Equal(("BL-1", At(15)), (due.Place.Code, due.Due));
        Assert.Empty(PlannedSample.Of(new([Lots with { Material = "XX" }]), book, At(16)));
        Assert.Empty(PlannedSample.Of(new([Lots]), book, At(15 + (24 * 4))));
        Append(book, Sample(book, 16, "S-3", "load", "BL-1"));
        Assert.Empty(PlannedSample.Of(new([Lots]), book, At(17)));
    }

    [Fact]
    public void Within_TakenSamples_HaveTheReadingsOfTheirMoment()
    {
        var book = Book();
        Append(book, Sample(book, 11, "S-1", ""));
        Assert.Equal(["protein by NIR"], TakenSample.Find(book, "s-1", At(12))!.Waiting.Select(t => t.Words));
        Append(book, new Measure("r", "UA", At(11), Property.Protein, 11.9m, "%", Basis.At14, "NIR"));
        Append(book, new Measure("q", "UA", At(10), Property.Protein, 10.9m, "%", Basis.At14, "NIR"));
        var sample = Assert.Single(TakenSample.Within(book, At(10), At(12)));
        Assert.Equal((true, 11.9m), (sample.IsTested, Assert.Single(sample.Readings).Value));
        Assert.Null(TakenSample.Find(book, "S-", At(12)));
        Assert.Null(TakenSample.Find(book, "S-1", At(10)));
        Assert.Null(LabSample.Of(new Happening(new FactId(1), sample.Place.Id, At(1), HappeningKind.Sampled, "words\n{\"pattern\":\"x\"}")));
    }

    private static Happen Sample(Book book, int hour, string code, string line, string on = "UA") => new Happen(code, book.Named(on).Code, At(hour), HappeningKind.Sampled, new LabSample(code, line, [new(Property.Protein, "NIR")]).Text);

    private static Book Book()
    {
        var book = new Book();
        Append(book,
            new OpenPlace("o", "OPEN", PlaceKind.Opening), new OpenPlace("t", "TA", PlaceKind.TemperBin), new OpenPlace("u", "UA", PlaceKind.MillUnit), new OpenPlace("f", "F1", PlaceKind.FlourBin),
            new OpenPlace("l", "L1", PlaceKind.PackingLine), new OpenPlace("b", "BL-1", PlaceKind.BulkLoad, Material: "WB"), new Connect("tu", "TA", "UA"), new Connect("uf", "UA", "F1"), new Connect("fl", "F1", "L1"),
            new Move("1", "OPEN", "TA", Mass.FromTonnes(60), Six), new Move("2", "TA", "UA", Mass.FromTonnes(40), At(10), At(14)), new Move("3", "UA", "F1", Mass.FromTonnes(30), At(10), At(14)),
            new Move("4", "F1", "L1", Mass.FromTonnes(20), At(15)), new Move("5", "L1", "BL-1", Mass.FromTonnes(20), At(15)));
        return book;
    }

    private static void Append(Book book, params Draft[] drafts) => book.Append(book.ToFacts(drafts, "Ada", "test", At(24 * 30)));

    private static Instant At(int hour) => Six + Duration.FromHours(hour - 6);
}
