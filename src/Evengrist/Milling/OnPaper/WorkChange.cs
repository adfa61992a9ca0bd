using Evengrist.Milling.Learning;
using Evengrist.Milling.Sheet;
using Evengrist.Milling.Stock;

namespace Evengrist.Milling.OnPaper;

/// <summary>What another setting or wheat changes of the rolls' work. Page: docs/model/mill-tuning.md.</summary>
/// <remarks>No work is measured in tuning: what rolls work for a kilogram they break is known to <see cref="Spread"/> only, fluted and smooth apart; what they break is known as the mill is. Motors' and drives' losses are not in it.</remarks>
/// <param name="Kilowatts">Change of the work of all rolls, kW.</param>
/// <param name="KilowattHoursPerTonne">The same for a tonne of wheat to first break as it flows, kWh/t.</param>
public sealed record WorkChange(Estimate Kilowatts, Estimate KilowattHoursPerTonne)
{
    /// <summary>Spread of the work for a kilogram broken, one standard uncertainty as a share [ours].</summary>
    public const double Spread = 0.3;

    /// <summary>Compares two settings.</summary>
    /// <param name="now">The flow sheet as it is set.</param>
    /// <param name="then">The flow sheet as it would be set.</param>
    /// <param name="wheat">The wheat now.</param>
    /// <param name="otherWheat">The wheat then.</param>
    /// <param name="tuning">What is known of the mill.</param>
    public static WorkChange Of(FlowSheet now, FlowSheet then, MillWheat wheat, MillWheat otherWheat, MillTuning tuning)
    {
        ArgumentNullException.ThrowIfNull(wheat);
        ArgumentNullException.ThrowIfNull(otherWheat);
        var (before, after) = (RollWork.Of(now, wheat, tuning), RollWork.Of(then, otherWheat, tuning));
        return new WorkChange(Between(1, 1), Between(1 / AsItFlows(wheat), 1 / AsItFlows(otherWheat)));

        Estimate Between(double one, double other)
        {
            var (fluted, smooth, gradient) = ((after.Fluted * other) - (before.Fluted * one), (after.Smooth * other) - (before.Smooth * one), (after.Gradient * other) - (before.Gradient * one));
            var change = fluted + smooth;
            return new Estimate(change, Math.Sqrt(Math.Max(0, gradient * (tuning.Covariance * gradient)) + (Spread * Spread * ((fluted * fluted) + (smooth * smooth))) + Math.Pow(MillChange.Shortfall * change, 2)));
        }
    }

    private static double AsItFlows(MillWheat wheat) => wheat.DryTonnesPerHour / (1 - (wheat.MoisturePercent / 100));
}
