namespace Evengrist.Laboratory.Charts;

/// <summary>Exponentially weighted moving mean: small shifts show sooner than on a chart of single values. Model: docs/model/control-charts.md.</summary>
/// <param name="Target">The mean that is wanted; it begins there.</param>
/// <param name="Sigma">One standard deviation of what is put in, above 0.</param>
/// <param name="Weight">λ, the weight of the newest, above 0 to 1; 0.2 is usual.</param>
/// <param name="Width">L, half the width in standard deviations of the moving mean, above 0; 3 is usual, a reference manual uses 3.09.</param>
public sealed record EwmaChart(double Target, double Sigma, double Weight = 0.2, double Width = 3)
{
    /// <summary>Limits once many values have passed: target ± L σ √(λ/(2 − λ)).</summary>
    public ControlLimits Steady => Around(1);

    /// <summary>Limits of the value with a number: target ± L σ √(λ/(2 − λ) · (1 − (1 − λ)²ᵗ)).</summary>
    /// <param name="number">From 1.</param>
    public ControlLimits At(int number) => Around(1 - Math.Pow(1 - Weight, 2.0 * number));

    /// <summary>The moving mean after each value: zₜ = λ xₜ + (1 − λ) zₜ₋₁.</summary>
    /// <param name="values">In the order of time.</param>
    public IReadOnlyList<double> Of(IReadOnlyList<double> values)
    {
        ArgumentNullException.ThrowIfNull(values);
        Check();
        var (z, all) = (Target, new double[values.Count]);
        for (var t = 0; t < all.Length; t++)
        {
            all[t] = z = (Weight * values[t]) + ((1 - Weight) * z);
        }

        return all;
    }

    /// <summary>Places, from 0, whose moving mean lies beyond its own limits.</summary>
    public IReadOnlyList<int> Signals(IReadOnlyList<double> values) => [.. Of(values).Index().Where(z => At(z.Index + 1).IsBeyond(z.Item)).Select(z => z.Index)];

    private ControlLimits Around(double share)
    {
        Check();
        var half = Width * Sigma * Math.Sqrt(Weight / (2 - Weight) * share);
        return new ControlLimits(Target - half, Target, Target + half);
    }

    private void Check()
    {
        if (!(Sigma > 0 && double.IsFinite(Sigma) && double.IsFinite(Target) && Weight is > 0 and <= 1 && Width > 0))
        {
            throw new InvalidOperationException("A moving mean needs a standard deviation above 0, a weight above 0 and at most 1, and a width above 0.");
        }
    }
}
