using Evengrist.Laboratory.Charts;
using Evengrist.Ledger;
using Evengrist.Tests.Ledger;

namespace Evengrist.Tests.Laboratory.Charts;

/// <summary>What flour a unit makes: through the mixer after it, which feeds one bin after another, and by the largest flow. Invented mill.</summary>
public sealed class FlourMadeTests
{
    [Theory]
    [InlineData(0, "WB")]
    [InlineData(3.9, "WB")]
    [InlineData(4, "AP")]
    [InlineData(7.5, "AP")]
    [InlineData(8, "")]
    [InlineData(-1, "")]
    public void At_UnitThatChangesItsFlour_IsTheFlourOfTheMoment(double hour, string flour)
    {
        var mill = Open();
        Assert.Equal(flour, new FlourMade(mill.Book).At(mill.Book.Named("U").Id, PosedMill.Hour(hour)));
    }

    // The clear leaves beside it, and is never most.
    private static PosedMill Open()
    {
        var mill = new PosedMill().Open(PlaceKind.Gain, "GAIN").Open(PlaceKind.TemperBin, "T").Open(PlaceKind.MillUnit, "U").Open(PlaceKind.PackingLine, "M")
            .Open(new OpenPlace("w", "W", PlaceKind.FlourBin, Material: "WB")).Open(new OpenPlace("a", "A", PlaceKind.FlourBin, Material: "AP")).Open(new OpenPlace("c", "C", PlaceKind.FlourBin, Material: "C1"))
            .Connect("T", "U").Connect("U", "M").Connect("U", "C").Connect("M", "W").Connect("M", "A");
        return mill.Move("GAIN", "T", 200, -8).Move("T", "U", 100, 0, 8).Move("U", "C", 20, 0, 8).Move("U", "M", 80, 0, 8).Move("M", "W", 40, 0, 4).Move("M", "A", 40, 4, 8);
    }
}
