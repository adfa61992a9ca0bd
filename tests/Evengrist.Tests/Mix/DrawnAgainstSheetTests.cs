using Evengrist.Ledger;
using Evengrist.Mix.Sheets;

namespace Evengrist.Tests.Mix;

public sealed class DrawnAgainstSheetTests
{
    /// <summary>Worked by hand: set 40 and 60 % at 10 t/h; in 20 h 90 and 110 t were weighed. 45 %, five points and 10 t more than set; protein 0.45·13.9 + 0.55·13.0 in the stead of 0.4·13.9 + 0.6·13.0.</summary>
    [Fact]
    public void Of_AWorkedSheet_HasSharesTonnesAndQuality()
    {
        var against = DrawnAgainstSheet.Of(Sheets.WithExpected, [new("B05", 90, 20), new("B06", 110, 20)], 20)!;
        Assert.Equal(["B05", "B06"], against.Gates.Select(g => g.Bin));
        var first = against.Gates[0];
        Assert.Equal((40, 45, 5), (first.SetPercent, first.DrawnPercent, first.Points));
        Assert.Equal((80, 90, 10), (first.SetTonnes, first.DrawnTonnes, first.Tonnes));
        Assert.True(first.IsBeyondWeighers);
        Assert.Equal((200, 200), (against.SetTonnes, against.DrawnTonnes));
        var protein = against.Qualities.Single(q => q.What == Property.Protein);
        Assert.Equal(13.36, protein.Sheet, 9);
        Assert.Equal(13.405, protein.Drawn, 9);
        Assert.Equal(0.1 * Math.Sqrt((0.45 * 0.45) + (0.55 * 0.55)), protein.DrawnUncertainty, 9);
        Assert.Empty(against.Remarks);
    }

    /// <summary>Of two gates with shares s and 1 − s the share is off by s(1 − s)·√2 times a weigher's relative error, by hand.</summary>
    [Theory]
    [InlineData(0.5)]
    [InlineData(0.1)]
    public void Of_TwoGates_TheWeighersErrorOfTheShareIsThatByHand(double share)
    {
        var gate = DrawnAgainstSheet.Of(Sheets.Usual, [new("B05", 100 * share, 10), new("B06", 100 * (1 - share), 10)], 10, weigher: 0.01)!.Gates[0];
        Assert.Equal(100 * 0.01 * share * (1 - share) * Math.Sqrt(2), gate.DrawnUncertainty, 9);
    }

    [Fact]
    public void Of_DrawnAsSet_DiffersNowhere()
    {
        var against = DrawnAgainstSheet.Of(Sheets.WithExpected, [new("B06", 144, 24), new("B05", 96, 24)], 24)!;
        Assert.All(against.Gates, g => Assert.Equal(0, g.Points, 9));
        Assert.All(against.Gates, g => Assert.False(g.IsBeyondWeighers));
        Assert.All(against.Qualities, q => Assert.Equal(q.Sheet, q.Drawn, 9));
        Assert.Equal(100, against.Gates.Sum(g => g.DrawnPercent), 9);
    }

    [Fact]
    public void Of_ABinThatIsNotOnTheSheet_IsNamedAndNoQualityIsMadeUp()
    {
        var against = DrawnAgainstSheet.Of(Sheets.WithExpected, [new("B05", 40, 10), new("B07", 60, 10)], 10)!;
        Assert.Equal(["B05", "B06", "B07"], against.Gates.Select(g => g.Bin));
        Assert.Equal((0, 60), (against.Gates[2].SetPercent, against.Gates[2].DrawnTonnes));
        Assert.Equal(0, against.Gates[1].DrawnTonnes);
        Assert.Empty(against.Qualities);
        Assert.Contains("B07 gave 60.0 t and is not on the sheet", Assert.Single(against.Remarks), StringComparison.Ordinal);
    }

    [Fact]
    public void Of_NothingDrawn_IsNothing() => Assert.Null(DrawnAgainstSheet.Of(Sheets.Usual, [], 0));
}
