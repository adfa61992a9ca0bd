using CsCheck;
using Evengrist.Bins.States;
using Evengrist.Ledger;
using Evengrist.Tests.Ledger;

namespace Evengrist.Tests.Bins;

public sealed class BinStateModelTests
{
    [Fact]
    public void Of_WorkedCaseOfThePage_GoesThroughTheStates()
    {
        // docs/model/bin-states.md; hours from the first load on.
        var mill = Mill().Move("OPEN", "B1", 100, 0).Move("B1", "WASTE", 30, 2, 4);
        Happen(mill, HappeningKind.UnderGas, 120);
        Happen(mill, HappeningKind.GasCleared, 288);
        mill.Move("B1", "WASTE", 70, 300);
        Happen(mill, HappeningKind.ProvenEmpty, 301);
        mill.Move("OPEN", "B1", 10, 400);
        foreach (var (hour, states) in new (double, BinState[])[]
        {
            (-1, [BinState.Open]), (10 / 60.0, [BinState.Filling]), (1, [BinState.Open]), (3, [BinState.Drawing]), (4, [BinState.Open]), (75.9, [BinState.Open]), (76, [BinState.Resting]),
            (120, [BinState.UnderGas, BinState.Resting]), (288, [BinState.Resting]), (300.1, [BinState.Drawing]), (300.9, [BinState.Open]), (301, [BinState.ProvenEmpty]), (399, [BinState.ProvenEmpty]), (400, [BinState.Filling]),
        })
        {
            Assert.Equal((hour, string.Join(", ", states)), (hour, string.Join(", ", Of(mill, hour).States)));
        }
    }

    [Fact]
    public void Of_Barred_GravestFirstAndLeftOutOfSuggestions()
    {
        var mill = Mill().Move("OPEN", "B1", 100, 0);
        Happen(mill, HappeningKind.Shut, 1);
        Happen(mill, HappeningKind.Held, 2);
        Happen(mill, HappeningKind.PersonInside, 3);
        var standing = Of(mill, 4);
        Assert.Equal([BinState.PersonInside, BinState.Held, BinState.Shut], standing.States);
        Assert.True(standing.IsOut);
        Assert.Equal(HappeningKind.PersonInside, standing.AgainstFilling!.Kind);
        Happen(mill, HappeningKind.PersonOut, 5);
        Happen(mill, HappeningKind.Released, 6);
        Assert.Equal(HappeningKind.Shut, Of(mill, 7).AgainstFilling!.Kind);
        Assert.Null(Of(mill, 7).AgainstDrawing);
        Happen(mill, HappeningKind.Reopened, 8);
        Assert.False(Of(mill, 9).IsOut);
    }

    [Fact]
    public void Of_AnyHappenings_NeverWithoutAStateAndAsOfOnly() => Gen.Select(Gen.Int[2, 21].Select(k => (HappeningKind)k), Gen.Int[1, 100]).Array[0, 12].Sample(happened =>
    {
        var (mill, early) = (Mill().Move("OPEN", "B1", 100, 0), Mill().Move("OPEN", "B1", 100, 0));
        foreach (var (kind, hour) in happened)
        {
            try
            {
                Happen(mill, kind, hour);
                if (hour <= 50)
                {
                    Happen(early, kind, hour);
                }
            }
            catch (LedgerRefusal)
            {
                // A person into gas; not in the book then.
                return;
            }
        }

        Assert.NotEmpty(Of(mill, 50).States);
        Assert.Equal(Of(early, 50).States, Of(mill, 50).States);
        Assert.Equal(Of(mill, 50).Bars.IsAny, Of(mill, 50).States.Any(s => s <= BinState.Shut));
    });

    [Fact]
    public void GasClearance_WrittenAndRead_IsTheSame()
    {
        var clearance = new GasClearance("R. Voss", "4711", "0.05 ppm at the hatch");
        var text = Happening.TextOf(clearance.Words, clearance.ToJson());
        var happening = new Happening(new FactId(1), new PlaceId(1), PosedMill.Start, HappeningKind.GasCleared, text);
        Assert.Equal(clearance, GasClearance.Read(happening.Particulars));
        Assert.Contains("licence 4711", happening.Words, StringComparison.Ordinal);
        Assert.Null(GasClearance.Read(""));
        Assert.Equal(2, new GasClearance(" ", "").Faults.Count);
    }

    private static BinStanding Of(PosedMill mill, double hour) => BinStateModel.Of(mill.Book, mill.Id("B1"), PosedMill.Hour(hour));

    private static void Happen(PosedMill mill, HappeningKind kind, double hour) => mill.Record(new Happen(mill.Key(), "B1", PosedMill.Hour(hour), kind, "as posed"));

    private static PosedMill Mill() => new PosedMill().Open(PlaceKind.Opening, "OPEN").Open(PlaceKind.Waste, "WASTE").Open(PlaceKind.Bin, "B1");
}
