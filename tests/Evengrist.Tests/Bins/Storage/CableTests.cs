using Evengrist.Bins.Shape;
using Evengrist.Bins.Storage;
using NodaTime;

namespace Evengrist.Tests.Bins.Storage;

public sealed class CableTests
{
    private static readonly Instant Start = Instant.FromUtc(2025, 12, 1, 12, 0);

    [Theory]
    [InlineData("C2 at 4.0 m", "C2", 4.0)]
    [InlineData(" c12 AT 11 m ", "C12", 11)]
    [InlineData("A at 0.25 m", "A", 0.25)]
    public void Parse_PointOfACable_IsRead(string text, string cable, double metres)
    {
        var point = CablePoint.Parse(text);
        Assert.Equal((cable, (decimal)metres), (point!.Cable, point.Metres));
        Assert.Equal(point, CablePoint.Parse(point.ToString()));
    }

    [Theory]
    [InlineData("")]
    [InlineData(null)]
    [InlineData("NIR-1")]
    [InlineData("C2 at -4 m")]
    [InlineData("C2 at 4,0 m")]
    [InlineData("C2 at 140 m")]
    [InlineData("C2 at 4 ft")]
    [InlineData("C2 at  m")]
    public void Parse_AnythingElse_IsNone(string? text) => Assert.Null(CablePoint.Parse(text));

    [Fact]
    public void ToString_OfAPoint_HasOneDecimalAtLeast() => Assert.Equal(["C2 at 4.0 m", "C2 at 4.25 m"], [new CablePoint("C2", 4m).ToString(), new CablePoint("C2", 4.25m).ToString()]);

    [Fact]
    public void Of_RisingPoint_TellsTheRateAndTheSeason()
    {
        // By hand: 10, 12, 14, 16 °C at weeks 0 to 3; the window of three weeks holds the last three: 2 °C a week. The season takes 0.5 off.
        var states = CableModel.Of([.. Weekly("C1 at 4.0 m", 10, 12, 14, 16), .. Weekly("C1 at 8.0 m", 8, 8, 8, 8), .. Weekly("C1 at 12.0 m", 7, 7, 7, 7)], -0.5);
        var rising = states[0];
        Assert.Equal((16.0, 8.0), (rising.Celsius, rising.AboveMedian));
        Assert.Equal(2.0, rising.RisePerWeek!.Value, 1e-9);
        Assert.Equal(2.5, rising.AgainstSeason!.Value, 1e-9);
        Assert.True(rising.IsRising && rising.IsHotSpot);
        Assert.All(states.Skip(1), s => Assert.False(s.IsRising || s.IsHotSpot));
    }

    [Fact]
    public void Of_PointReadTwiceInADay_HasNoRate()
    {
        CableReading[] once = [new(CablePoint.Parse("C1 at 4 m")!, Start, 10), new(CablePoint.Parse("C1 at 4 m")!, Start + Duration.FromHours(12), 14)];
        Assert.Null(Assert.Single(CableModel.Of(once, 0)).RisePerWeek);
        Assert.False(CableModel.Of(once, 0)[0].IsRising);
        Assert.Empty(CableModel.Of([], null));
    }

    [Fact]
    public void Of_PointNotReadForAWeek_IsNotTold()
    {
        var states = CableModel.Of([.. Weekly("C1 at 4.0 m", 10, 10), .. Weekly("C1 at 8.0 m", 10, 10, 10, 10)], null);
        Assert.Equal("C1 at 8.0 m", Assert.Single(states).Point.ToString());
    }

    [Fact]
    public void Season_OfManyPoints_IsTheirMedianAndOfFewIsNotKnown()
    {
        CableState[] Points(int points) => [.. Enumerable.Range(0, points).SelectMany(n => CableModel.Of([.. Weekly($"C{n} at 4.0 m", 10, 10 - (n * 0.1), 10 - (n * 0.2))], null))];
        Assert.Null(CableModel.Season(Points(7)));
        Assert.Equal(-0.4, CableModel.Season(Points(9))!.Value, 1e-9);
    }

    [Fact]
    public void Levels_OfAShape_StandByItsVolumeAndFillTheHopperFirst()
    {
        // By hand: 10 m across, 20 m wall, flat: 78.54 m² · 10 m · 0.785 · 1.04 = 641.2 t stand 10 m high. A hopper of 45° to 0.6 m is 4.7 m deep and holds 130.87 m³, 106.8 t.
        var flat = BinLevels.Of(new BinShape { DiameterMetres = 10, WallMetres = 20 }, new PackFactor(1.04, 0, "posed"));
        Assert.Equal(10, flat.MetresOf(641.2), 0.005);
        Assert.Equal((0.0, 20.0), (Math.Round(flat.MetresOf(0), 6), Math.Round(flat.MetresOf(5000), 6)));
        var hopper = BinLevels.Of(new BinShape { DiameterMetres = 10, WallMetres = 20, HopperDegrees = 45, OutletMetres = 0.6 }, new PackFactor(1.04, 0, "posed"));
        Assert.Equal(4.7, hopper.MetresOf(106.84), 0.005);
        Assert.Equal(14.7, hopper.MetresOf(106.84 + 641.2), 0.01);
    }

    private static IEnumerable<CableReading> Weekly(string point, params double[] celsius) =>
        celsius.Select((c, week) => new CableReading(CablePoint.Parse(point)!, Start + Duration.FromDays(7 * week), c));
}
