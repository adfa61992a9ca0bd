using CsCheck;
using Evengrist.Intake.Carrying;
using Evengrist.Quantities;
using Evengrist.Tests.Architecture;

namespace Evengrist.Tests.Intake.Carrying;

public sealed class CarryOverModelTests
{
    private static readonly CarryOverSpec Published = new();

    // Trans. ASAE 46(6):1625-1631 (2003), abstract and the laboratory's own summary: more than 1 % at most for the first 38 s at 47 t/h (0.496 t),
    // less than 0.5 % within the first tonne.
    [Theory]
    [InlineData(0.496, 0.01)]
    [InlineData(0.99, 0.005)]
    public void ShareAfter_PublishedBounds_PassesThroughThem(double tonnes, double share) =>
        Assert.Equal(share, CarryOverModel.ShareAfter(tonnes, Published), 0.00005);

    // The same study: cumulative admixture in a load of 7.3 t 0.18 % (pit and boot) to 0.24 % (cleaner).
    [Fact]
    public void Of_LoadOfTheTrial_LiesWithinWhatWasMeasured()
    {
        var load = CarryOverModel.Of(Mass.FromTonnes(7.3m), Published);
        Assert.InRange(load.Share.Value, 0.18m, 0.24m);
        Assert.Equal(14.3m, decimal.Round(load.Carried.Value, 1));
        Assert.Contains("not calibrated", load.Carried.Because!.Source, StringComparison.Ordinal);
    }

    [Fact]
    public void Of_WorkedCase_IsWhatThePageSays()
    {
        var load = CarryOverModel.Of(Mass.FromTonnes(26m), Published with { BootResidue = 60, IsMeasured = true });
        Assert.Contains(
            $"{load.Carried.In(UnitSystem.Si)}, {load.Share.In(UnitSystem.Si)} of the load, below 0.1 % after {load.Until.In(UnitSystem.Si)}",
            Repository.Text("docs/model/carry-over.md"), StringComparison.Ordinal);
    }

    [Fact]
    public void Of_AnyLoad_GrowsWithLoadAndResidueAndNeverBeyondTheWhole() => Gen.Select(Gen.Double[0.1, 100], Gen.Double[1, 400], Gen.Double[0.001, 0.5]).Sample((tonnes, residue, first) =>
    {
        var spec = new CarryOverSpec { BootResidue = residue, FirstShare = first };
        decimal Kg(double t, CarryOverSpec s) => CarryOverModel.Of(Mass.FromTonnes((decimal)t), s).Carried.Value;
        var kg = Kg(tonnes, spec);
        Assert.True(kg <= Kg(tonnes * 1.5, spec) && kg <= Kg(tonnes, spec with { BootResidue = residue * 1.5 }));
        Assert.True((double)kg <= first * tonnes * 1000 + 1e-6);
    });

    [Fact]
    public void Of_FirstShareBelowTheThreshold_IsBelowItAtOnce() =>
        Assert.Equal(0m, CarryOverModel.Of(Mass.FromTonnes(26m), Published with { FirstShare = 0.0005 }).Until.Value);

    [Theory]
    [InlineData(-0.1, 0.716, 120)]
    [InlineData(1.1, 0.716, 120)]
    [InlineData(0.02, 0, 120)]
    [InlineData(0.02, 0.716, 0)]
    [InlineData(double.NaN, 0.716, 120)]
    [InlineData(0.02, double.NaN, 120)]
    public void Of_RouteThatCannotBe_IsRefused(double first, double length, double residue) =>
        Assert.Throws<ArgumentException>(() => CarryOverModel.Of(Mass.FromTonnes(1m), new CarryOverSpec { FirstShare = first, Length = length, BootResidue = residue }));
}
