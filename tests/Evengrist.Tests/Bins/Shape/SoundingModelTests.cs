using CsCheck;
using Evengrist.Bins;
using Evengrist.Bins.Shape;
using Evengrist.Quantities;
using Evengrist.Tests.Architecture;

namespace Evengrist.Tests.Bins.Shape;

public sealed class SoundingModelTests
{
    private static readonly BinShape Bin = new() { DiameterMetres = 10, WallMetres = 20 };
    private static readonly PackFactor Pack = new(1.04, 0.01, "posed");

    [Fact]
    public void Of_WorkedCaseOfThePage_AsThePagePrints()
    {
        // docs/model/bin-shape.md [derived]: level 16.5 m, V = 25π·16.5 = 1,295.9 m³; 60.0 lb/bu is 78.939 kg/hL by the federal equation; the parts by hand.
        var density = BulkDensity.Of(TestWeight.Read(60.0m, TestWeightConvention.UsWheat), 0.5m);
        var sounded = Assert.IsType<Sounded>(SoundingModel.Of(Bin, new Sounding(3.5, Surface.Level), density, Pack));
        Assert.Equal(789.39, density.KilogramsPerCubicMetre, 1e-9);
        Assert.Contains("1.292 × lb/bu + 1.419", density.Words, StringComparison.Ordinal);
        Assert.Equal(1295.907, sounded.CubicMetres, 0.001);
        Assert.Equal(1063.89, sounded.Tonnes, 0.01);
        Assert.Equal([6.448, 0, 6.739, 10.230], sounded.Parts.Select(p => Math.Round(p.Tonnes, 3)));
        Assert.Equal(13.843, sounded.StandardUncertaintyTonnes, 0.001);
        var page = Repository.Text("docs/model/bin-shape.md");
        Assert.Contains($"| {sounded.Stock} |", page, StringComparison.Ordinal);

        var check = StockCheck.Of(1080, sounded);
        Assert.True(check.IsWithin);
        Assert.Contains($"| {check.Difference} |", page, StringComparison.Ordinal);
        Assert.False(StockCheck.Of(1100, sounded).IsWithin);
        Assert.Contains("36.1 t less", StockCheck.Of(1100, sounded).Verdict, StringComparison.Ordinal);
    }

    [Fact]
    public void Of_FromTheMiddle_IsTheSameAsFromTheWall() => Gen.Select(Gen.Double[5, 12], Gen.Int[0, 2]).Sample((ullage, s) =>
    {
        // A tape in the middle of a heap ends higher by R·tan(repose), of a drawn-down cone lower.
        var surface = Enum.GetValues<Surface>()[s];
        var rise = s switch { 1 => 5 * Math.Tan(25 * Math.PI / 180), 2 => -5 * Math.Tan(27 * Math.PI / 180), _ => 0 };
        var density = BulkDensity.Given(780, 5);
        var wall = Assert.IsType<Sounded>(SoundingModel.Of(Bin, new Sounding(ullage, surface), density, Pack));
        var middle = Assert.IsType<Sounded>(SoundingModel.Of(Bin, new Sounding(ullage - rise, surface, SoundedFrom.Centre), density, Pack));
        Assert.Equal(wall.Tonnes, middle.Tonnes, 1e-6);
        Assert.Equal(wall.LevelMetres, middle.LevelMetres, 1e-9);
    });

    [Fact]
    public void Of_EachUncertaintyTakenAway_NarrowsTheWhole()
    {
        var heaped = new Sounding(4, Surface.Heaped);
        var density = BulkDensity.Given(780, 5);
        double U(BinShape shape, Sounding sounding, BulkDensity loose, PackFactor pack) => Assert.IsType<Sounded>(SoundingModel.Of(shape, sounding, loose, pack)).StandardUncertaintyTonnes;
        var all = U(Bin, heaped, density, Pack);
        Assert.True(U(Bin, heaped with { StandardUncertaintyMetres = 0 }, density, Pack) < all);
        Assert.True(U(Bin with { ReposeUncertaintyDegrees = 0 }, heaped, density, Pack) < all);
        Assert.True(U(Bin, heaped, density with { StandardUncertainty = 0 }, Pack) < all);
        Assert.True(U(Bin, heaped, density, Pack with { StandardUncertainty = 0 }) < all);
        Assert.Equal(0, U(Bin with { ReposeUncertaintyDegrees = 0 }, heaped with { StandardUncertaintyMetres = 0 }, density with { StandardUncertainty = 0 }, Pack with { StandardUncertainty = 0 }), 1e-9);
    }

    [Theory]
    [InlineData(-0.1, Surface.Level, SoundedFrom.Wall, "above the eave")]
    [InlineData(20.5, Surface.Level, SoundedFrom.Wall, "the wall is bare")]
    [InlineData(1.0, Surface.DrawnDown, SoundedFrom.Centre, "above the eave")]
    [InlineData(20.0, Surface.DrawnDown, SoundedFrom.Centre, "Sound at the wall")]
    [InlineData(21.0, Surface.Heaped, SoundedFrom.Centre, "the floor is bare")]
    public void Of_TapeThatCannotBe_SaysWhatToDo(double ullage, Surface surface, SoundedFrom from, string says) =>
        Assert.Contains(Assert.IsType<NotSounded>(SoundingModel.Of(Bin, new Sounding(ullage, surface, from), BulkDensity.Given(780, 5), Pack)).Reasons, r => r.Contains(says, StringComparison.Ordinal));

    [Fact]
    public void PackFactor_OneWeighOut_AsTheWorkedCase()
    {
        // docs/model/bin-shape.md [derived]: from ullage 3.5 to 11.5 m level, 8 m × 25π = 628.32 m³ at 789.39 kg/m³ loose; 515.8 t weighed.
        var density = BulkDensity.Given(789.39, 5);
        var found = Assert.IsType<PackFactorFound>(PackFactorModel.Of(Bin, [new WeighOut("12 Nov", new Sounding(3.5, Surface.Level), new Sounding(11.5, Surface.Level), density, 515.8, 1.0)]));
        Assert.Equal(1.0399, found.Factor.Value, 1e-4);
        Assert.Equal(0.0197, found.Factor.StandardUncertainty, 1e-4);
        Assert.True(found.Factor.IsCalibrated);
        Assert.True(BinPapers.TryReadCalibration(BinPapers.Write(found.Factor), out var read, out _));
        Assert.Equal(found.Factor, read);
    }

    [Fact]
    public void PackFactor_PosedTruth_IsFoundAndMoreWeighOutsNarrowIt() => Gen.Select(Gen.Double[0.95, 1.15], Gen.Int[1, 6]).Sample((truth, n) =>
    {
        var density = BulkDensity.Given(780, 5);
        WeighOut Posed(int i) => new($"w{i}", new Sounding(2 + i, Surface.Heaped), new Sounding(10 + i, Surface.Heaped), density, truth * 0.78 * 8 * 25 * Math.PI, 1);
        var found = Assert.IsType<PackFactorFound>(PackFactorModel.Of(Bin, [.. Enumerable.Range(0, n).Select(Posed)]));
        Assert.Equal(truth, found.Factor.Value, 1e-6);
        Assert.Equal(1, found.Each.Sum(e => e.Weight), 1e-9);
        Assert.Equal(found.Each[0].StandardUncertainty / Math.Sqrt(n), found.Factor.StandardUncertainty, 1e-6);
        Assert.False(found.IsWidened);
    });

    [Fact]
    public void PackFactor_WeighOutsThatDisagree_WidenAndOrderDoesNotMatter()
    {
        var density = BulkDensity.Given(780, 2);
        WeighOut Posed(string code, double factor) => new(code, new Sounding(2, Surface.Level, StandardUncertaintyMetres: 0.02), new Sounding(12, Surface.Level, StandardUncertaintyMetres: 0.02), density, factor * 0.78 * 10 * 25 * Math.PI, 1);
        WeighOut[] apart = [Posed("a", 1.02), Posed("b", 1.08)];
        var found = Assert.IsType<PackFactorFound>(PackFactorModel.Of(Bin, apart));
        Assert.True(found.IsWidened);
        Assert.True(found.Factor.StandardUncertainty > found.Each[0].StandardUncertainty);
        Assert.Equal(found.Factor.Value, Assert.IsType<PackFactorFound>(PackFactorModel.Of(Bin, [apart[1], apart[0]])).Factor.Value, 1e-12);
    }

    [Fact]
    public void PackFactor_WeighOutsThatCannotBe_SayWhy()
    {
        var density = BulkDensity.Given(780, 5);
        var (high, low) = (new Sounding(2, Surface.Level), new Sounding(12, Surface.Level));
        string Says(params WeighOut[] weighOuts) => string.Join(" ", Assert.IsType<PackFactorNotFound>(PackFactorModel.Of(Bin, weighOuts)).Reasons);
        Assert.Contains("no weigh-out", Says(), StringComparison.Ordinal);
        Assert.Contains("lower after than before", Says(new WeighOut("a", low, high, density, 500, 1)), StringComparison.Ordinal);
        Assert.Contains("cannot be (0.8 to 1.3", Says(new WeighOut("a", high, low, density, 5000, 1)), StringComparison.Ordinal);
        Assert.Contains("sounding after: ", Says(new WeighOut("a", high, new Sounding(25, Surface.Level), density, 500, 1)), StringComparison.Ordinal);
    }

    [Fact]
    public void Papers_Shape_ReadsBackAndRefusesWhatItDoesNotKnow()
    {
        var shape = Bin with { HopperDegrees = 45, OutletMetres = 0.6, Note = "drawing 12" };
        Assert.True(BinPapers.TryReadShape(BinPapers.Write(shape), out var read, out _));
        Assert.Equal(shape, read);
        Assert.False(BinPapers.TryReadShape("""{"diameterMetres":10,"wallMetres":20,"colour":"red"}""", out _, out var faults));
        Assert.Contains("colour", faults[0], StringComparison.Ordinal);
        Assert.False(BinPapers.TryReadShape("""{"diameterMetres":10}""", out _, out _));
        Assert.False(BinPapers.TryReadShape("""{"diameterMetres":10,"wallMetres":-2}""", out _, out faults));
        Assert.Contains("The wall", faults[0], StringComparison.Ordinal);
    }
}
