using Evengrist.Ledger;
using Evengrist.Quantities;
using Evengrist.Tests.Ledger;
using Evengrist.Tracing;
using Evengrist.Tracing.Bounds;
using Evengrist.Tracing.Recall;

namespace Evengrist.Tests.Tracing.Recall;

/// <summary>What a recall tells as unknown where nothing was read or recorded. The mill is invented, its figures derived.</summary>
public sealed class UnknownTests
{
    [Fact]
    public void LevelNobodyTook_IsToldWithItsSpanAndTheKilogramsThatWentThrough_UntilItWasTaken()
    {
        var mill = Posed();
        var told = Assert.Single(Of(mill, "T"), u => u.Kind == UnknownKind.LevelNotRead && u.Place!.Code == "B");
        Assert.Equal((20e6, PosedMill.Hour(1)), (told.Grams!.Value, told.From!.Value));
        mill.Record(new Measure(mill.Key(), "B", PosedMill.Hour(3), Property.SoundedStock, 20m, "t", default, "tape"));
        Assert.DoesNotContain(Of(mill, "T"), u => u.Kind == UnknownKind.LevelNotRead && u.Place!.Code == "B");
        Assert.Contains(Of(mill, "T"), u => u.Kind == UnknownKind.LevelNotRead && u.Place!.Code == "FB");
    }

    [Fact]
    public void LevelTakenLongBefore_IsToldForTheLongestSpanWithoutOne()
    {
        // Wheat lies from hour 1 to hour 401; sounded at 30 and 390: between them 15 days.
        var mill = Posed().Open(PlaceKind.Bin, "B2").Connect("B", "B2").Connect("B2", "MU");
        mill.Move("B", "B2", 5, 6).Move("B2", "MU", 1, 400, 401).Move("MU", "FB", 1, 400, 401);
        foreach (var hour in new[] { 30, 390 })
        {
            mill.Record(new Measure(mill.Key(), "B2", PosedMill.Hour(hour), Property.SoundedStock, 5m, "t", default, "tape"));
        }

        var told = Assert.Single(Of(mill, "T"), u => u.Kind == UnknownKind.LevelNotRead && u.Place!.Code == "B2");
        Assert.Equal((PosedMill.Hour(30), PosedMill.Hour(390)), (told.From!.Value, told.Until!.Value));
    }

    [Fact]
    public void LoadNobodyWeighed_IsTold_UntilGrossAndTareStand()
    {
        var mill = Posed();
        Assert.Equal(20e6, Assert.Single(Of(mill, "F"), u => u.Kind == UnknownKind.WeightNotRead).Grams);
        mill.Record(new Measure(mill.Key(), "T", PosedMill.Hour(0), Property.GrossWeight, 35_000m, "kg", default, "weighbridge"));
        Assert.Contains(Of(mill, "F"), u => u.Kind == UnknownKind.WeightNotRead);
        mill.Record(new Measure(mill.Key(), "T", PosedMill.Hour(1), Property.TareWeight, 15_000m, "kg", default, "weighbridge"));
        Assert.DoesNotContain(Of(mill, "F"), u => u.Kind == UnknownKind.WeightNotRead);
    }

    [Fact]
    public void StockFoundAtACount_IsTold_WhereTheSuspectLayThen()
    {
        var mill = Posed().Open(PlaceKind.Gain, "G").Open(PlaceKind.Shortage, "S");
        mill.Move("G", "B", 0.5m, 3).Move("B", "S", 0.2m, 4).Move("G", "FB", 0.1m, 0);
        var told = Assert.Single(Of(mill, "T"), u => u.Kind == UnknownKind.FoundByCount);
        Assert.Equal(("B", 0.7e6, PosedMill.Hour(3), PosedMill.Hour(4)), (told.Place!.Code, told.Grams!.Value, told.From!.Value, told.Until!.Value));
        Assert.Equal(["G", "S"], told.Others.Select(o => o.Code));
    }

    [Fact]
    public void HoursWithoutADose_AreTold_WithWhatRanMeanwhile()
    {
        // The unit gives 4 t in the hour 2 to 3 and 4 t in the hour 3 to 4; the dose stops at 2.5 and begins again at 3.25, so 2 + 1 t ran without. A like lot covers 3 to 3.25 in the second book.
        var mill = Posed();
        mill.Open(new OpenPlace("a1", "ADD", PlaceKind.AdditiveLot) { Material = "malt" }).Open(new OpenPlace("a2", "LIKE", PlaceKind.AdditiveLot) { Material = "malt" }).Open(new OpenPlace("a3", "OTHER", PlaceKind.AdditiveLot) { Material = "iron" });
        mill.Move("ADD", "MU", 0.01m, 2, 2.5).Move("MU", "FB", 0.01m, 2, 2.5).Move("ADD", "MU", 0.01m, 3.25, 4).Move("MU", "FB", 0.01m, 3.25, 4).Move("OTHER", "MU", 0.01m, 2, 4).Move("MU", "FB", 0.01m, 2, 4);
        var told = Assert.Single(Of(mill, "ADD"), u => u.Kind == UnknownKind.DoseNotRecorded);
        Assert.Equal(("MU", PosedMill.Hour(2.5), PosedMill.Hour(3.25)), (told.Place!.Code, told.From!.Value, told.Until!.Value));
        Assert.Equal((2 + 1 + 0.01 * 0.75 / 2) * 1e6, told.Grams!.Value, 1.0);

        // Nine hours on the unit runs without it for another flour: more than 4 h between two doses tell nothing.
        mill.Move("B", "MU", 8, 13, 15).Move("MU", "FB", 8, 13, 15).Move("ADD", "MU", 0.01m, 14, 15).Move("MU", "FB", 0.01m, 14, 15);
        Assert.Equal(told.Grams!.Value, Assert.Single(Of(mill, "ADD"), u => u.Kind == UnknownKind.DoseNotRecorded).Grams!.Value, 1.0);
        mill.Move("LIKE", "MU", 0.01m, 2.5, 3.25).Move("MU", "FB", 0.01m, 2.5, 3.25);
        Assert.DoesNotContain(Of(mill, "ADD"), u => u.Kind == UnknownKind.DoseNotRecorded);
        Assert.DoesNotContain(Of(mill, "T"), u => u.Kind == UnknownKind.DoseNotRecorded);
    }

    [Fact]
    public void FlushedOffALine_AndBroughtBack_AreToldAsWhatTheyAre()
    {
        var mill = Posed().Open(PlaceKind.PackingLine, "L").Open(PlaceKind.Pallet, "P").Open(PlaceKind.ReworkTote, "TOTE").Open(PlaceKind.Waste, "BIN-W").Open(PlaceKind.Customer, "C").Connect("FB", "L");
        mill.Move("FB", "L", 2, 5, 6).Move("L", "P", 1, 6).Move("L", "TOTE", 0.3m, 6.5).Move("L", "BIN-W", 0.2m, 6.6).Move("P", "C", 1, 7).Move("C", "P", 0.4m, 9);
        var (recall, unknown) = (Ask(mill, "T"), Of(mill, "T"));
        Assert.Equal([("L", 0.2e6, "BIN-W"), ("TOTE", 0.3e6, "L")], unknown.Where(u => u.Kind == UnknownKind.Flushed).Select(u => (u.Place!.Code, Math.Round(u.Grams!.Value), u.Others.Single().Code)));
        var back = Assert.Single(unknown, u => u.Kind == UnknownKind.Returned);
        Assert.Equal(("P", "C", PosedMill.Hour(9)), (back.Place!.Code, back.Others.Single().Code, back.From!.Value));

        // 0.6 t are still with the customer, so that is where it is; what came back does not make it heavier, and the balance tells it.
        var pallet = recall.Packages.Single(p => p.Place.Code == "P");
        Assert.Equal((Mass.FromTonnes(1), "C"), (pallet.Mass, pallet.Where?.Code));
        var balance = PackageBalance.Of(mill.Book, [pallet.Place.Id], recall.AsOf);
        Assert.Equal((Mass.FromTonnes(1.4m), Mass.FromTonnes(0.4m), Mass.FromTonnes(1), Mass.FromTonnes(0.4m), 100m), (balance.Made, balance.Stock, balance.Shipped, balance.Returned, balance.EffectivenessPercent));
        mill.Move("C", "P", 0.6m, 10);
        Assert.Null(Ask(mill, "T").Packages.Single(p => p.Place.Code == "P").Where);
    }

    // A truck of 20 t into a bin, 4 t an hour from the bin through a unit into a flour bin for two hours.
    private static PosedMill Posed() => new PosedMill().Open(PlaceKind.Field, "F").Open(PlaceKind.Truck, "T").Open(PlaceKind.Bin, "B").Open(PlaceKind.MillUnit, "MU").Open(PlaceKind.FlourBin, "FB")
        .Connect("B", "MU").Connect("MU", "FB")
        .Move("F", "T", 20, 0).Move("T", "B", 20, 1).Move("B", "MU", 8, 2, 4).Move("MU", "FB", 8, 2, 4);

    private static RecallOutcome Ask(PosedMill mill, string code) => Tracer.Over(mill.Book).Recall(new RecallQuestion([new Suspicion(mill.Book.Named(code))]));

    private static IReadOnlyList<StillUnknown> Of(PosedMill mill, string code) => Ask(mill, code).Unknown;
}
