using Evengrist.Ledger;

namespace Evengrist.Tests.Ledger;

/// <summary>Three layers of 100 t drawn out of a bin: the table of the three outflow models (design of our own, core share 0.10).</summary>
public sealed class OutflowTests
{
    // Rows: to which tonne, then tonnes of A, B, C in the draw.
    private static readonly double[][] FirstInFirstOut = [[10, 10, 0, 0], [30, 20, 0, 0], [120, 70, 20, 0], [210, 0, 80, 10], [300, 0, 0, 90]];
    private static readonly double[][] CoreFirst = [[10, 10, 0, 0], [30, 0, 10, 10], [120, 0, 0, 90], [210, 0, 90, 0], [300, 90, 0, 0]];
    private static readonly double[][] Stirred = [[10, 10 / 3.0, 10 / 3.0, 10 / 3.0], [30, 20 / 3.0, 20 / 3.0, 20 / 3.0], [120, 30, 30, 30], [210, 30, 30, 30], [300, 30, 30, 30]];

    [Theory]
    [InlineData(Outflow.FirstInFirstOut)]
    [InlineData(Outflow.CoreFirst)]
    [InlineData(Outflow.Stirred)]
    public void Draw_ThreeLayers_LeavesAsTheModelSays(Outflow outflow)
    {
        var mill = new PosedMill().Open(PlaceKind.Opening, "A", "B", "C").Open(PlaceKind.Bin, "BIN").Open(PlaceKind.Waste, "D1", "D2", "D3", "D4", "D5");
        mill.Move("A", "BIN", 100, 0).Move("B", "BIN", 100, 1).Move("C", "BIN", 100, 2);
        var rows = outflow switch { Outflow.FirstInFirstOut => FirstInFirstOut, Outflow.CoreFirst => CoreFirst, _ => Stirred };
        double drawn = 0;
        for (var i = 0; i < rows.Length; i++)
        {
            // Every second draw is a flow, every other one at once: it must not matter.
            mill.Move("BIN", $"D{i + 1}", (decimal)(rows[i][0] - drawn), 10 + i, i % 2 == 0 ? 10 + i + 0.5 : null);
            drawn = rows[i][0];
        }

        var reckoning = mill.Reckon(outflow);
        drawn = 0;
        for (var i = 0; i < rows.Length; i++)
        {
            var load = reckoning.LoadOf(mill.Book.Movements.Count - rows.Length + i)!.Value;
            var origins = mill.OriginsOf(reckoning, load);
            var tonnes = rows[i][0] - drawn;
            Assert.Equal(rows[i][1], tonnes * origins.GetValueOrDefault("A"), 6);
            Assert.Equal(rows[i][2], tonnes * origins.GetValueOrDefault("B"), 6);
            Assert.Equal(rows[i][3], tonnes * origins.GetValueOrDefault("C"), 6);
            drawn = rows[i][0];
        }
    }

    [Fact]
    public void CoreFirst_RefillOnPartDrawnBin_NewGrainLeavesBeforeTheOldSides()
    {
        var mill = new PosedMill().Open(PlaceKind.Opening, "A", "B").Open(PlaceKind.Bin, "BIN").Open(PlaceKind.Waste, "D1", "D2", "D3");
        mill.Move("A", "BIN", 100, 0).Move("BIN", "D1", 10, 1).Move("B", "BIN", 50, 2).Move("BIN", "D2", 50, 3).Move("BIN", "D3", 90, 4);
        var reckoning = mill.Reckon(Outflow.CoreFirst);
        Assert.Equal(1, mill.OriginsOf(reckoning, reckoning.LoadOf(1)!.Value)["A"], 9);
        Assert.Equal(1, mill.OriginsOf(reckoning, reckoning.LoadOf(3)!.Value)["B"], 9);
        Assert.Equal(1, mill.OriginsOf(reckoning, reckoning.LoadOf(4)!.Value)["A"], 9);
    }

    // Derived: 100 t of A whose core of 10 t is drawn; then B falls in for an hour while 10 t are drawn. What falls in goes straight out, its core share by the core and
    // the rest over the surface; the crater gives only what B falls short of the draw.
    [Theory]
    [InlineData(4, 0.4, false)]
    [InlineData(9.99, 0.999, false)]
    [InlineData(10, 1, false)]
    [InlineData(10.01, 1, false)]
    [InlineData(15, 1, false)]
    [InlineData(150, 1, false)]
    [InlineData(4, 0.4, true)]
    [InlineData(15, 1, true)]
    public void CoreFirst_FilledAndDrawnAtOnce_FreshGrainGoesStraightThrough_InFewStretches(double tonnes, double share, bool fromABin)
    {
        var mill = new PosedMill().Open(PlaceKind.Opening, "A", "B").Open(PlaceKind.Bin, "BIN", "FEED").Open(PlaceKind.MixLine, "MX").Open(PlaceKind.Waste, "D0", "D")
            .Connect("BIN", "MX").Connect("FEED", "BIN");
        mill.Move("A", "BIN", 100, 0).Move("BIN", "D0", 10, 1).Move("B", "FEED", 200, 1).Move("BIN", "MX", 10, 2, 3).Move("MX", "D", 10, 2, 3).Move(fromABin ? "FEED" : "B", "BIN", (decimal)tonnes, 2, 3);
        var reckoning = mill.Reckon(Outflow.CoreFirst);
        Assert.Equal(share, mill.OriginsOf(reckoning, reckoning.LoadOf(4)!.Value).GetValueOrDefault("B"), 6);
        Assert.InRange(reckoning.Stretches, 3, 20);
        var left = reckoning.At(PosedMill.Hour(4)).ContentOf(mill.Id("BIN"));
        Assert.Equal(80e6 + tonnes * 1e6, left.Sum(l => l.Grams), 1.0);
        Assert.Equal((tonnes - 10 * share) * 1e6, left.Sum(l => l.Grams * mill.OriginsOf(reckoning, l.Parcel).GetValueOrDefault("B")), 5.0);
    }

    [Theory]
    [InlineData(Outflow.FirstInFirstOut)]
    [InlineData(Outflow.CoreFirst)]
    [InlineData(Outflow.Stirred)]
    public void ProvenEmpty_CutsTheChain(Outflow outflow)
    {
        var mill = new PosedMill().Open(PlaceKind.Opening, "A", "B").Open(PlaceKind.Bin, "BIN").Open(PlaceKind.Waste, "D").Open(PlaceKind.Shortage, "SHORT");
        mill.Move("A", "BIN", 100, 0).Move("BIN", "D", 99, 1).Move("BIN", "SHORT", 1, 2);
        mill.Record(new Happen(mill.Key(), "BIN", PosedMill.Hour(2), HappeningKind.ProvenEmpty));
        mill.Move("B", "BIN", 10, 3).Move("BIN", "D", 10, 4);
        var reckoning = mill.Reckon(outflow);
        var origins = mill.OriginsOf(reckoning, reckoning.LoadOf(mill.Book.Movements.Count - 1)!.Value);
        Assert.Equal(1, origins["B"], 12);
        Assert.DoesNotContain("A", origins.Keys);
    }

    [Fact]
    public void ChainAtOneMoment_ThroughATruckAndTwoLegs_KeepsItsOrigin()
    {
        // A ticket is often recorded with one time for all its steps, and in any order.
        var mill = new PosedMill().Open(PlaceKind.Field, "F").Open(PlaceKind.Truck, "T").Open(PlaceKind.Pit, "P").Open(PlaceKind.Leg, "L1", "L2").Open(PlaceKind.Bin, "B")
            .Connect("P", "L1").Connect("L1", "L2").Connect("L2", "B");
        mill.Record(
            new Move("5", "L2", "B", Evengrist.Quantities.Mass.FromTonnes(26), PosedMill.Hour(1)),
            new Move("4", "L1", "L2", Evengrist.Quantities.Mass.FromTonnes(26), PosedMill.Hour(1)),
            new Move("3", "P", "L1", Evengrist.Quantities.Mass.FromTonnes(26), PosedMill.Hour(1)),
            new Move("2", "T", "P", Evengrist.Quantities.Mass.FromTonnes(26), PosedMill.Hour(1)),
            new Move("1", "F", "T", Evengrist.Quantities.Mass.FromTonnes(26), PosedMill.Hour(1)));
        var reckoning = mill.Reckon(Outflow.FirstInFirstOut);
        var layers = reckoning.At(PosedMill.Hour(2)).ContentOf(mill.Id("B"));
        Assert.Equal(26e6, layers.Sum(l => l.Grams), 3);
        Assert.All(layers, l => Assert.Equal(["F"], mill.OriginsOf(reckoning, l.Parcel).Keys));
        Assert.Equal([mill.Id("B")], reckoning.At(PosedMill.Hour(2)).Places);
    }

    [Fact]
    public void ProvenEmpty_WithStockLeft_IsRefusedWithTheGrams()
    {
        var mill = new PosedMill().Open(PlaceKind.Opening, "A").Open(PlaceKind.Bin, "BIN");
        mill.Move("A", "BIN", 1.5m, 0);
        var refusal = Assert.Throws<LedgerRefusal>(() => mill.Record(new Happen(mill.Key(), "BIN", PosedMill.Hour(2), HappeningKind.ProvenEmpty)));
        Assert.Equal(LedgerRule.NotEmpty, refusal.Rule);
        Assert.Contains("1,500 kg", refusal.Message, StringComparison.Ordinal);
    }

    [Fact]
    public void Snapshot_NextOut_AgreesWithWhatIsDrawnLater()
    {
        foreach (var outflow in Enum.GetValues<Outflow>())
        {
            var mill = new PosedMill().Open(PlaceKind.Opening, "A", "B", "C").Open(PlaceKind.Bin, "BIN").Open(PlaceKind.Waste, "D");
            mill.Move("A", "BIN", 100, 0).Move("B", "BIN", 70, 1).Move("C", "BIN", 30, 2).Move("BIN", "D", 40, 10, 20);
            var reckoning = mill.Reckon(outflow);
            var next = reckoning.At(PosedMill.Hour(5)).NextOut(mill.Id("BIN"), Evengrist.Quantities.Mass.FromTonnes(40));
            var drawn = mill.OriginsOf(reckoning, reckoning.LoadOf(3)!.Value);
            foreach (var code in new[] { "A", "B", "C" })
            {
                var posed = next.Sum(l => l.Grams * mill.OriginsOf(reckoning, l.Parcel).GetValueOrDefault(code)) / 40e6;
                Assert.Equal(drawn.GetValueOrDefault(code), posed, 9);
            }
        }
    }
}
