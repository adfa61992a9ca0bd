using Evengrist.Bins;
using Evengrist.Bins.Storage;
using Evengrist.Ledger;
using Evengrist.Quantities;
using NodaTime;

namespace Evengrist.Tests.Bins.Storage;

/// <summary>Bins of a small book judged: every rule is provoked, and none fires without cause.</summary>
public sealed class StorageSurveyTests
{
    private static readonly Instant Start = Instant.FromUtc(2025, 8, 1, 12, 0);
    private static readonly Instant At = Start + Duration.FromDays(60);

    [Fact]
    public void Of_TwoTrucksOfUnlikeMoisture_TakesTheMeanAndTellsTheMoistest()
    {
        var layer = Assert.Single(Survey([.. Truck("T1", 30, 12m), .. Truck("T2", 10, 16m)]).All()).Layers;
        Assert.Equal(2, layer.Count);
        Assert.Equal([12.0, 16.0], layer.Select(l => l.Layer.MoisturePercent!.Value));

        // 20 small trucks: slabs of an eighth of the bin, means by mass, everything accounted for.
        var many = Assert.Single(Survey([.. Enumerable.Range(0, 20).SelectMany(n => Truck($"T{n}", 5, n % 2 == 0 ? 12m : 14m))]).All());
        Assert.InRange(many.Layers.Count, 6, 10);
        Assert.Equal(100, many.Layers.Sum(l => l.Layer.Tonnes), 1e-6);
        Assert.Equal(13, many.Layers.Sum(l => l.Layer.Tonnes * l.Layer.MoisturePercent!.Value) / 100, 1e-6);
        Assert.All(many.Layers, l => Assert.Equal((14.0, 1.0), (l.Layer.MoistestPercent!.Value, l.Layer.ShareRead)));
    }

    [Fact]
    public void All_MoistWarmBin_ComesFirstWithItsReasons()
    {
        var ranked = Survey([.. Truck("T1", 40, 15m), .. Weekly("B", "C1 at 8.0 m", 28, 28, 28, 28, 28, 28, 28, 28), .. Truck("T2", 40, 10m, "D"), .. Weekly("D", "C1 at 8.0 m", 10, 10, 10, 10, 10, 10, 10, 10)]).All();
        Assert.Equal(["B", "D"], ranked.Select(r => r.Bin.Code));
        Assert.Equal(RiskLevel.Act, ranked[0].Level);
        Assert.Equal(RiskKind.Life, ranked[0].Reasons[0].Kind);
        Assert.Contains("15.0 % moisture, 28.0 °C now", ranked[0].Reasons[0].Words, StringComparison.Ordinal);
        Assert.Contains("from memory", ranked[0].Reasons[0].Source, StringComparison.Ordinal);
        Assert.Contains(ranked[0].Reasons, r => r is { Kind: RiskKind.MoistAir, Level: RiskLevel.Look } && r.Source.Contains("not verified", StringComparison.Ordinal));
        Assert.Contains(ranked[0].Reasons, r => r is { Kind: RiskKind.Moist, Level: RiskLevel.Note });
        Assert.Contains(ranked[0].Reasons, r => r is { Kind: RiskKind.InsectWarmth, Level: RiskLevel.Note });
        Assert.Empty(ranked[1].Reasons);
        Assert.Equal((RiskLevel.Nothing, 0), (ranked[1].Level, ranked[1].MostUsed));
        Assert.Contains(StorageCautions.Entry, StorageCautions.For(ranked[0].Reasons));
        Assert.Empty(StorageCautions.For(ranked[1].Reasons));
    }

    [Fact]
    public void Of_CableThatRises_IsActedOnAtTwiceTheLimit()
    {
        var bin = Assert.Single(Survey([.. Truck("T1", 40, 12m), .. Weekly("B", "C1 at 8.0 m", 10, 10, 10, 10, 10, 12.5, 15, 17.5)]).All());
        var reason = Assert.Single(bin.Reasons, r => r.Kind == RiskKind.Heating);
        Assert.Equal(RiskLevel.Act, reason.Level);
        Assert.Contains("C1 at 8.0 m warms by 2.5 °C a week", reason.Words, StringComparison.Ordinal);
        Assert.Contains("the season is not known", reason.Words, StringComparison.Ordinal);
    }

    [Fact]
    public void Of_InsectsCarbonDioxideAndSilence_AreTold()
    {
        Measure Read(int day, Property what, decimal value, string unit) => new($"{what} {day}", "B", Start + Duration.FromDays(day), what, value, unit, default, "by hand");
        var bin = Assert.Single(Survey(
        [
            .. Truck("T1", 40, 12m), Read(50, Property.LiveWeevils, 2, "/sample"), Read(50, Property.OtherLiveInsects, 0, "/sample"),
            Read(30, Property.CarbonDioxide, 600, "ppm"), Read(37, Property.CarbonDioxide, 640, "ppm"), Read(44, Property.CarbonDioxide, 1000, "ppm"),
        ]).All());
        Assert.Equal((RiskKind.Insects, RiskLevel.Act), (bin.Reasons[0].Kind, bin.Reasons[0].Level));
        Assert.Contains("2 weevils, 0 others", bin.Reasons[0].Words, StringComparison.Ordinal);
        Assert.Contains(bin.Reasons, r => r.Kind == RiskKind.CarbonDioxide && r.Words.Contains("1000 ppm; 620 ppm", StringComparison.Ordinal) && r.Source.Contains("do not use for release", StringComparison.Ordinal));
        Assert.Contains(bin.Reasons, r => r.Kind == RiskKind.NotRead && r.Words.Contains("60 days", StringComparison.Ordinal));
        Assert.Contains(StorageCautions.Fumigant, StorageCautions.For(bin.Reasons));
        Assert.Contains("25 °C", bin.Layers[0].History.Assumption, StringComparison.Ordinal);
    }

    [Fact]
    public void Of_StockWithoutReadings_SaysWhatIsNotKnown()
    {
        var bin = Assert.Single(Survey([new OpenPlace("o", "OPEN", PlaceKind.Opening), new Move("m", "OPEN", "B", Mass.FromTonnes(50m), Start)], "RYE").All());
        Assert.Equal(["no moisture was read on 50 t", "no equilibrium constants are given for the class \"RYE\""], bin.Reasons.Where(r => r.Kind == RiskKind.NotKnown).Select(r => r.Words.Split(new[] { " of it", ": the" }, StringSplitOptions.None)[0]));
        Assert.Null(bin.Layers[0].Life);
        Assert.Null(bin.Layers[0].Air);
    }

    [Fact]
    public void Of_LayerThatSank_TakesThePointItLayAtThen()
    {
        // 100 t of T1 below, 100 t of T2 above; capacity 200 t is 10 m. T2's middle lies at 7.5 m until T1 is drawn on day 30, then at 2.5 m.
        var bin = Assert.Single(Survey(
        [
            .. Truck("T1", 100, 12m), .. Truck("T2", 100, 12m), new OpenPlace("mix", "MIX", PlaceKind.MixLine), new Connect("c", "B", "MIX"), new OpenPlace("cl", "CL", PlaceKind.Cleaner), new Connect("c2", "MIX", "CL"), new OpenPlace("w", "W", PlaceKind.Waste),
            new Move("d1", "B", "MIX", Mass.FromTonnes(100m), Start + Duration.FromDays(30)), new Move("d2", "MIX", "CL", Mass.FromTonnes(100m), Start + Duration.FromDays(30)), new Move("d3", "CL", "W", Mass.FromTonnes(100m), Start + Duration.FromDays(30)),
            .. Weekly("B", "C1 at 2.0 m", 10, 10, 10, 10, 10, 10, 10, 10), .. Weekly("B", "C1 at 7.0 m", 20, 20, 20, 20, 20, 20, 20, 20), .. Weekly("B", "C1 at 10.0 m", 30, 30, 30, 30, 30, 30, 30, 30),
        ]).All());
        Assert.All(bin.Layers.Select(l => l.Layer), layer => Assert.Equal([20.0, 20, 20, 20, 10, 10, 10, 10], layer.Read.Select(r => r.Celsius)));
        Assert.Equal(5.0, bin.Layers[^1].Layer.Metres!.Value.To, 1e-6);
        Assert.Contains("straight walls", bin.Stored.LevelsBy, StringComparison.Ordinal);
    }

    [Fact]
    public void Ranked_AnyOrder_IsTheSame()
    {
        var bins = Survey([.. Truck("T1", 40, 15m), .. Truck("T2", 40, 12m, "D")]).All();
        Assert.Equal(bins, BinRisk.Ranked(bins.Reverse()));
    }

    private static Draft[] Truck(string code, decimal tonnes, decimal moisture, string bin = "B") =>
    [
        new OpenPlace(code, code, PlaceKind.Truck), new Move($"{code} 1", "F", code, Mass.FromTonnes(tonnes), Start), new Move($"{code} 2", code, bin, Mass.FromTonnes(tonnes), Start),
        new Measure($"{code} m", code, Start, Property.Moisture, moisture, "%", default, "NIR"),
    ];

    private static IEnumerable<Draft> Weekly(string bin, string point, params double[] celsius) => celsius.Select((c, week) =>
        new Measure($"{point} {week}", bin, Start + Duration.FromDays(7 * (week + 1)), Property.Temperature, (decimal)c, "°C", default, "cable", point));

    private static StorageSurvey Survey(Draft[] drafts, string material = "HW")
    {
        var book = new Book();
        book.Append(book.ToFacts(
        [
            new OpenPlace("F", "F", PlaceKind.Field), new OpenPlace("B", "B", PlaceKind.Bin, Material: material) { Capacity = Mass.FromTonnes(200m) },
            new OpenPlace("D", "D", PlaceKind.Bin, Material: material) { Capacity = Mass.FromTonnes(200m) }, .. drafts,
        ], "test", "test", At));
        var reckoning = new Reckoning(book, Outflow.FirstInFirstOut);
        reckoning.CatchUp();
        return new StorageSurvey(reckoning.At(At), new MakeupModel(book, reckoning.Parcels), book, EmcTable.Start);
    }
}
