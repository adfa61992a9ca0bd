using CsCheck;
using Evengrist.Bins.Shape;

namespace Evengrist.Tests.Bins.Shape;

public sealed class BinVolumeTests
{
    private const double CubicFoot = 0.3048 * 0.3048 * 0.3048;
    private static readonly Surface[] Surfaces = Enum.GetValues<Surface>();

    private static readonly Gen<BinShape> Shapes = Gen.Select(Gen.Bool, Gen.Double[2, 30], Gen.Double[2, 30], Gen.Double[1, 40], Gen.Double[0, 70], Gen.Double[0.05, 0.6], Gen.Double[0, 40]).Select((round, a, b, wall, hopper, outlet, repose) => new BinShape
    {
        DiameterMetres = round ? a : null, LengthMetres = round ? null : a, WidthMetres = round ? null : b, WallMetres = wall,
        HopperDegrees = hopper < 10 ? null : hopper, OutletMetres = hopper < 10 ? null : outlet, HeapDegrees = repose, DrawnDegrees = repose,
    });

    [Fact]
    public void VolumeAt_TallBinWithHopper_AsTheVector()
    {
        // Vector B1, derived by hand from the textbook solids: cylinder 1,570.80, heap 61.04, hopper frustum 130.87 m³; at 785 kg/m³ 1,383.7 t, × 1.04 1,439.1 t.
        var bin = new BinShape { DiameterMetres = 10, WallMetres = 20, HopperDegrees = 45, OutletMetres = 0.6, HeapDegrees = 25 };
        var flat = bin with { HopperDegrees = null, OutletMetres = null };
        Assert.Equal(1570.80, BinVolumeModel.MostOf(flat, Surface.Level), 0.005);
        Assert.Equal(61.04, BinVolumeModel.MostOf(flat, Surface.Heaped) - BinVolumeModel.MostOf(flat, Surface.Level), 0.005);
        Assert.Equal(130.87, BinVolumeModel.MostOf(bin, Surface.Level) - BinVolumeModel.MostOf(flat, Surface.Level), 0.005);
        Assert.Equal(1762.71, BinVolumeModel.MostOf(bin, Surface.Heaped), 0.005);
        var sounded = Assert.IsType<Sounded>(SoundingModel.Of(bin, new Sounding(0, Surface.Heaped), BulkDensity.Given(785, 0), new PackFactor(1, 0, "none")));
        Assert.Equal(1383.7, sounded.Tonnes, 0.05);
        Assert.Equal(1439.1, Assert.IsType<Sounded>(SoundingModel.Of(bin, new Sounding(0, Surface.Heaped), BulkDensity.Given(785, 0), new PackFactor(1.04, 0, "posed"))).Tonnes, 0.05);
    }

    [Fact]
    public void VolumeAt_LevelBinInFeet_AsTheVector()
    {
        // Vector B2: 30 ft × 24 ft level holds 16,964.6 ft³ or 13,632.1 bushels of 2,150.42 in³ (7 CFR 810.102, 2015 edition: the Winchester bushel).
        var bin = new BinShape { DiameterMetres = 30 * 0.3048, WallMetres = 24 * 0.3048 };
        var volume = BinVolumeModel.MostOf(bin, Surface.Level);
        Assert.Equal(16_964.6, volume / CubicFoot, 0.05);
        Assert.Equal(13_632.1, volume / (2150.42 * CubicFoot / 1728), 0.05);
    }

    [Fact]
    public void VolumeAt_TooLowForAWholeCone_IsTheRestOfIt()
    {
        // The solids by their own formulas. A free heap on the floor is a cone of its own radius; a drawn-down bin with a bare middle is a ring of triangular section.
        var bin = new BinShape { DiameterMetres = 12, WallMetres = 10, HeapDegrees = 25, DrawnDegrees = 27 };
        var (heap, drawn) = (Math.Tan(25 * Math.PI / 180), Math.Tan(27 * Math.PI / 180));
        const double radius = 4, level = 1.5;
        Assert.Equal(Math.PI * radius * radius * radius * heap / 3, BinVolumeModel.VolumeAt(bin, (radius - 6) * heap, Surface.Heaped), 1e-9);
        var wide = level / drawn;
        Assert.Equal(Math.PI * ((6 * level * wide) - (level * wide * wide / 3)), BinVolumeModel.VolumeAt(bin, level, Surface.DrawnDown), 1e-9);

        // A whole cone drawn down: the level bin less π R³ tan/3.
        Assert.Equal((Math.PI * 36 * 8) - (Math.PI * 216 * drawn / 3), BinVolumeModel.VolumeAt(bin, 8, Surface.DrawnDown), 1e-9);
    }

    [Fact]
    public void VolumeAt_Rectangular_AsPrismPyramidAndWedge()
    {
        // A square hopper is a frustum of a pyramid, h/3 (A + a + √(Aa)); a hipped heap over a square is a pyramid.
        var bin = new BinShape { LengthMetres = 6, WidthMetres = 6, WallMetres = 10, HopperDegrees = 45, OutletMetres = 1, HeapDegrees = 25 };
        var pyramid = 36 * 3 * Math.Tan(25 * Math.PI / 180) / 3;
        Assert.Equal(360 + (2.5 / 3 * (36 + 1 + 6)) + pyramid, BinVolumeModel.MostOf(bin, Surface.Heaped), 1e-9);

        // Over 9 × 6 the hip roof is a wedge of width 6 and height k between two half pyramids: k·6·3/2 + k·6·6/3.
        var k = 3 * Math.Tan(25 * Math.PI / 180);
        var hall = new BinShape { LengthMetres = 9, WidthMetres = 6, WallMetres = 10, HeapDegrees = 25 };
        Assert.Equal(540 + (k * 9) + (k * 12), BinVolumeModel.MostOf(hall, Surface.Heaped), 1e-9);
    }

    [Fact]
    public void VolumeAt_AnyBin_RisesWithTheLevelAndTheInverseFindsIt() => Gen.Select(Shapes, Gen.Int[0, 2], Gen.Double[0.001, 1], Gen.Double[0.001, 1]).Sample((shape, s, one, other) =>
    {
        Assert.Empty(shape.Faults());
        var surface = Surfaces[s];
        var (least, most) = (BinVolumeModel.LeastLevelOf(shape, surface), shape.WallMetres);
        Assert.Equal(0, BinVolumeModel.VolumeAt(shape, least, surface), 1e-9);
        double At(double part) => BinVolumeModel.VolumeAt(shape, least + (part * (most - least)), surface);
        Assert.True(At(Math.Min(one, other)) <= At(Math.Max(one, other)) + 1e-9);
        Assert.True(At(one) > 0);
        Assert.Equal(At(one), BinVolumeModel.VolumeAt(shape, BinVolumeModel.LevelOf(shape, At(one), surface), surface), 1e-6 * Math.Max(1, At(one)));
        Assert.Equal(least + (one * (most - least)), BinVolumeModel.LevelOf(shape, At(one), surface), 1e-4 * Math.Max(1, most - least));
    });

    [Fact]
    public void VolumeAt_SameLevel_HeapedHoldsMoreThanLevelMoreThanDrawn() => Gen.Select(Shapes, Gen.Double[0, 1]).Sample((shape, part) =>
    {
        double At(Surface surface) => BinVolumeModel.VolumeAt(shape, part * shape.WallMetres, surface);
        Assert.True(At(Surface.Heaped) >= At(Surface.Level) - 1e-9 && At(Surface.Level) >= At(Surface.DrawnDown) - 1e-9);
    });

    [Fact]
    public void VolumeAt_RingsAddedUpByHand_AreTheSame() => Gen.Select(Shapes, Gen.Int[0, 2], Gen.Double[-0.2, 1]).Sample(
        (shape, s, part) =>
        {
            // The same integral by many thin rings, written from the definition.
            const int rings = 20_000;
            var middle = shape.IsRound ? shape.DiameterMetres!.Value / 2 : Math.Min(shape.LengthMetres!.Value, shape.WidthMetres!.Value) / 2;
            double Plan(double d) => shape.IsRound ? Math.PI * Math.Pow(middle - d, 2) : (shape.LengthMetres!.Value - (2 * d)) * (shape.WidthMetres!.Value - (2 * d));
            var slope = s switch { 1 => 1, 2 => -1, _ => 0 } * Math.Tan(shape.HeapDegrees * Math.PI / 180);
            var level = part * shape.WallMetres;
            var sum = 0.0;
            for (var i = 0; i < rings; i++)
            {
                var d = (i + 0.5) * middle / rings;
                var floor = shape.HopperDegrees is { } hopper ? -Math.Min(d, middle - (shape.OutletMetres!.Value / 2)) * Math.Tan(hopper * Math.PI / 180) : 0;
                sum += (Plan(i * middle / rings) - Plan((i + 1) * middle / rings)) * Math.Max(0, level + (slope * d) - floor);
            }

            Assert.Equal(sum, BinVolumeModel.VolumeAt(shape, level, Surfaces[s]), 1e-5 * Math.Max(1, sum));
        },
        iter: 60);

    [Theory]
    [InlineData(null, null, 10.0, null, null, "either the diameter")]
    [InlineData(10.0, 5.0, 10.0, null, null, "either the diameter")]
    [InlineData(10.0, null, 900.0, null, null, "is the unit right")]
    [InlineData(10.0, null, 10.0, 45.0, null, "both a slope and an outlet")]
    [InlineData(10.0, null, 10.0, 45.0, 11.0, "narrower")]
    public void Faults_MeasuresThatCannotBe_SayWhatToDo(double? diameter, double? length, double wall, double? hopper, double? outlet, string says)
    {
        var shape = new BinShape { DiameterMetres = diameter, LengthMetres = length, WallMetres = wall, HopperDegrees = hopper, OutletMetres = outlet };
        Assert.Contains(says, Assert.Single(shape.Faults()), StringComparison.Ordinal);
        Assert.Throws<ArgumentException>(() => BinVolumeModel.MostOf(shape, Surface.Level));
    }

    [Fact]
    public void ReposeWords_OfEachSurface_SayWhereTheAngleComesFrom()
    {
        var bin = new BinShape { DiameterMetres = 10, WallMetres = 20 };
        Assert.Equal("angle of repose 25° ± 6°, from a weak source (a forum)", bin.ReposeWords(Surface.Heaped));
        Assert.Equal("angle of repose 27° ± 6°, from memory", bin.ReposeWords(Surface.DrawnDown));
        Assert.Equal("angle of repose 23.5° ± 6°, as kept for the bin", (bin with { DrawnDegrees = 23.5 }).ReposeWords(Surface.DrawnDown));
        Assert.Contains("no angle", bin.ReposeWords(Surface.Level), StringComparison.Ordinal);
    }

    [Fact]
    public void LevelOf_MoreThanItHolds_IsRefused()
    {
        var shape = new BinShape { DiameterMetres = 10, WallMetres = 10 };
        Assert.Throws<ArgumentOutOfRangeException>(() => BinVolumeModel.LevelOf(shape, 900, Surface.Level));
        Assert.Throws<ArgumentOutOfRangeException>(() => BinVolumeModel.LevelOf(shape, -1, Surface.Level));
    }
}
