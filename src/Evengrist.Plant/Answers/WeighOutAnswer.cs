using Evengrist.Bins.Shape;
using Evengrist.Plant.Cases;

namespace Evengrist.Plant.Answers;

/// <summary>A pack factor found from posed weigh-outs; one standard uncertainty.</summary>
public sealed record WeighOutAnswer(double PackFactor, double StandardUncertainty, string From, double ChiSquare, bool IsWidened, IReadOnlyList<WeighedFactor> Each)
{
    /// <summary>Answers a case.</summary>
    public static Reply<WeighOutAnswer> To(WeighOutCase posed)
    {
        ArgumentNullException.ThrowIfNull(posed);
        return PackFactorModel.Of(posed.Shape, posed.WeighOuts) switch
        {
            PackFactorFound found => new(new WeighOutAnswer(found.Factor.Value, found.Factor.StandardUncertainty, found.Factor.Words, found.ChiSquare, found.IsWidened, found.Each), []),
            PackFactorNotFound not => new(null, not.Reasons),
            var other => throw new InvalidOperationException($"A calibration ended as {other.GetType().Name}."),
        };
    }
}
