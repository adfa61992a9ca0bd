using Evengrist.Laboratory.Conformity;
using MathNet.Numerics.Distributions;

namespace Evengrist.Tests.Laboratory.Conformity;

public sealed class LotRiskTests
{
    // Resistors N(1500, 0.12), u 0.04, 1499.8 to 1500.2: the setting of JCGM 106:2012 from memory, figures computed in R 4.2.2.
    [Theory]
    [InlineData(0, 0.0189422, 0.0372078)]
    [InlineData(0.04, 0.00433407, 0.1146566)]
    [InlineData(0.08, 0.00046863, 0.2476696)]
    public void Of_ResistorsWithGuardBands_AgreesWithTheReference(double guard, double buyers, double mills)
    {
        var tolerance = new Tolerance(1499.8, 1500.2);
        var risk = LotRisk.Of(new NormalBelief(1500, 0.12), 0.04, tolerance, tolerance.Within(guard));
        Assert.Equal(0.9044193, risk.Inside, 1e-7);
        Assert.Equal(buyers, risk.AcceptedOutside, 1e-7);
        Assert.Equal(mills, risk.RejectedInside, 1e-7);
    }

    // Lots of protein N(12.3, 0.25), u 0.15, at least 12.0: posed by us, computed in R 4.2.2.
    [Theory]
    [InlineData(12.0, 0.0295194, 0.0661915)]
    [InlineData(12.24675, 0.0018536, 0.3143218)]
    [InlineData(12.3, 0.00077256, 0.3857029)]
    public void Of_LotsOfFlour_AgreesWithTheReference(double acceptFrom, double buyers, double mills)
    {
        var risk = LotRisk.Of(new NormalBelief(12.3, 0.25), 0.15, new Tolerance(12.0, null), new Tolerance(acceptFrom, null));
        Assert.Equal(buyers, risk.AcceptedOutside, 1e-7);
        Assert.Equal(mills, risk.RejectedInside, 1e-7);
    }

    [Fact]
    public void Of_AllLots_AddsUp()
    {
        // What is accepted at all is normal with both spreads: Φ of a sum, by definition.
        var (tolerance, lots) = (new Tolerance(11.7, 12.1), new NormalBelief(11.9, 0.12));
        var risk = LotRisk.Of(lots, 0.1, tolerance, tolerance);
        Assert.Equal(lots.Plus(0, 0.1).Inside(tolerance), risk.Inside - risk.RejectedInside + risk.AcceptedOutside, 1e-9);
    }

    [Theory]
    [InlineData(0.03)]
    [InlineData(0.005)]
    public void Guard_ForARiskOverAllLots_KeepsIt(double wanted)
    {
        var (tolerance, lots) = (new Tolerance(12.0, null), new NormalBelief(12.3, 0.25));
        var guard = GuardBand.ForLotsAcceptedOutside(lots, 0.15, tolerance, wanted)!.Value;
        Assert.Equal(wanted, LotRisk.Of(lots, 0.15, tolerance, tolerance.Within(guard)).AcceptedOutside, 1e-6);
        var other = GuardBand.ForLotsRejectedInside(lots, 0.15, tolerance, wanted)!.Value;
        Assert.Equal(wanted, LotRisk.Of(lots, 0.15, tolerance, tolerance.Within(other)).RejectedInside, 1e-6);
        Assert.True(other < guard);
    }

    [Fact]
    public void Guard_AtTheLimit_IsTheNormalsQuantile()
    {
        Assert.Equal(0.1644854, GuardBand.ForBuyersRisk(0.1, 0.05), 1e-7);
        Assert.Equal(0.2, GuardBand.ForBuyersRisk(0.1, Normal.CDF(0, 1, -2)), 1e-9);
        Assert.Equal(-0.1644854, GuardBand.ForMillsRisk(0.1, 0.05), 1e-7);
        Assert.Throws<ArgumentOutOfRangeException>(() => GuardBand.ForBuyersRisk(0.1, 0.7));
    }

    [Fact]
    public void Of_NoSpread_IsRefused() => Assert.Throws<ArgumentException>(() => LotRisk.Of(new NormalBelief(1, 0), 0.1, new Tolerance(0, 1), new Tolerance(0, 1)));
}
