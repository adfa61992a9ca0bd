using Evengrist.Ledger;
using Evengrist.Packing.Dispatch;
using Evengrist.Tests.Ledger;

namespace Evengrist.Tests.Packing.Dispatch;

public sealed class TankerLayersTests
{
    // A bin of 20 t milled of one wheat in the first hour and 20 t of another in the second, 24 t drawn after: derived by hand for each way of emptying.
    [Fact]
    public void Of_ABinOfTwoHours_GivesEachHypothesisItsShares()
    {
        var mill = Open().Move("FW", "B1", 24, 3);
        var layers = Enum.GetValues<Outflow>().ToDictionary(o => o, o => Of(mill, o, "B1")!);
        Assert.Equal([20.0 / 24, 4.0 / 24], Hours(layers[Outflow.FirstInFirstOut]), Near);
        Assert.Equal([0.5, 0.5], Hours(layers[Outflow.Stirred]), Near);
        Assert.All(layers.Values, l => Assert.Equal(1, l.Layers.Sum(p => p.Share) + l.LeftOut, 1e-9)); // nothing is lost
        Assert.All(layers.Values, l => Assert.Equal(["GAIN", "OTHER"], l.Layers.Select(p => p.From.Code).Order())); // a unit that mixes nothing makes no parcel of its own
    }

    [Fact]
    public void Of_AReworkedLoad_StopsAtTheTote_AndAnEmptyOneHasNone()
    {
        var mill = Open().Open(PlaceKind.ReworkTote, "R1").Move("FW", "R1", 1, 3).Move("R1", "B1", 1, 4).Move("FW", "B1", 9, 5);
        var layers = Of(mill, Outflow.Stirred, "B1")!;
        Assert.Equal(0.1, layers.Layers.Where(l => l.From.Code == "R1").Sum(l => l.Share), 9);
        Assert.Null(Of(mill.Open(PlaceKind.BulkLoad, "B2"), Outflow.Stirred, "B2"));
    }

    private static bool Near(double a, double b) => Math.Abs(a - b) < 1e-9;

    private static double[] Hours(TankerLayers layers) => [.. layers.Layers.OrderBy(l => l.Since).Select(l => l.Share)];

    private static TankerLayers? Of(PosedMill mill, Outflow outflow, string load)
    {
        var reckoning = new Reckoning(mill.Book, outflow);
        reckoning.CatchUp();
        return TankerLayers.Of(mill.Book, reckoning, mill.Book.Named(load).Id, PosedMill.Hour(20), at => PosedMill.Hour(Math.Floor((at - PosedMill.Hour(0)).TotalHours + 1e-9)));
    }

    private static PosedMill Open()
    {
        var mill = new PosedMill().Open(PlaceKind.Gain, "GAIN").Open(PlaceKind.Gain, "OTHER").Open(PlaceKind.TemperBin, "T").Open(PlaceKind.MillUnit, "U").Open(PlaceKind.BulkLoad, "B1").Open(new OpenPlace("fw", "FW", PlaceKind.FlourBin, Material: "WB")).Connect("T", "U").Connect("U", "FW");
        return mill.Move("GAIN", "T", 20, -2).Move("OTHER", "T", 20, -1).Move("T", "U", 20, 0, 1).Move("U", "FW", 20, 0, 1).Move("T", "U", 20, 1, 2).Move("U", "FW", 20, 1, 2);
    }
}
