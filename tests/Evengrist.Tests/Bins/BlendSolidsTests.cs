using Evengrist.Bins;
using Evengrist.Ledger;
using Evengrist.Quantities;
using NodaTime;

namespace Evengrist.Tests.Bins;

public sealed class BlendSolidsTests
{
    private static readonly PlaceId Wet = new(2), Drier = new(3), Untested = new(4);

    private static Reading Read(PlaceId on, Property what, decimal value, Basis basis, decimal? error = null) => new(new FactId(1), on, Instant.FromUtc(2026, 1, 1, 0, 0), what, value, what == Property.Don ? "mg/kg" : "%", basis, "test", "", error);

    private static IEnumerable<Reading> On(PlaceId load) => load == Wet ? [Read(Wet, Property.Moisture, 16, default), Read(Wet, Property.Don, 9m, Basis.Dry), Read(Wet, Property.Don, 0.5m, Basis.Dry, 0.3m), Read(Wet, Property.Protein, 12m, Basis.At12)]
        : load == Drier ? [Read(Drier, Property.Moisture, 10, default), Read(Drier, Property.Don, 0.88m, Basis.At12, 0.176m), Read(Drier, Property.Ash, 1.6m, Basis.Dry)] : [];

    /// <summary>By hand, by mass balance: 20 t at 16 % and 30 t at 10 % are 16.8 and 27.0 t dry; DON 0.5 and 0.88/0.88 = 1.0 on dry matter, so (16.8·0.5 + 27·1)/43.8 = 0.80822; u² = (16.8/43.8·0.3)² + (27/43.8·0.2)². The newer reading of a load counts.</summary>
    [Fact]
    public void Of_LoadsReadForDifferentThings_BlendsEachByDryMatterOverThoseReadForIt()
    {
        var blends = BlendSolids.Of(new Makeup([new PlacePart(new(1), 100)], [new PlacePart(Untested, 50), new PlacePart(Drier, 30), new PlacePart(Wet, 20)]), On);
        Assert.Equal([Property.Ash, Property.Don], blends.Select(b => b.What)); // protein has a blend of its own
        Assert.Equal(35.4 / 43.8, blends[1].ValueDry, 9);
        Assert.Equal(Math.Sqrt(Math.Pow(16.8 / 43.8 * 0.3, 2) + Math.Pow(27 / 43.8 * 0.2, 2)), blends[1].StandardUncertaintyDry!.Value, 9);
        Assert.Equal((0.5, 1.6, 0.3), (blends[1].ShareRead, Math.Round(blends[0].ValueDry, 9), blends[0].ShareRead));
        Assert.Null(blends[0].StandardUncertaintyDry);
    }

    [Fact]
    public void Of_NothingRead_IsNothing() => Assert.Empty(BlendSolids.Of(new Makeup([new PlacePart(new(1), 5)], [new PlacePart(Untested, 5)]), On));
}
