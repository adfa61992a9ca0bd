using MathNet.Numerics.Distributions;

namespace Evengrist.Laboratory.Conformity;

/// <summary>What is known of a value: a normal distribution. JCGM 106:2012.</summary>
/// <param name="Mean">Its mean, in the unit of the value.</param>
/// <param name="Deviation">Its standard deviation, at least 0; 0 means it is known.</param>
public sealed record NormalBelief(double Mean, double Deviation)
{
    /// <summary>The chance, 0 to 1, that the value is inside: Φ((U − m)/s) − Φ((L − m)/s).</summary>
    public double Inside(Tolerance tolerance)
    {
        ArgumentNullException.ThrowIfNull(tolerance);
        return tolerance.IsCrossed ? 0
            : Deviation > 0 ? Math.Max(0, Below(tolerance.Upper, 1) - Below(tolerance.Lower, 0))
            : tolerance.Holds(Mean) ? 1 : 0;
    }

    /// <summary>What is known after a result: mean w·y + (1 − w)·y₀, deviation u·√w, with w = u₀²/(u₀² + u²).</summary>
    /// <param name="result">y.</param>
    /// <param name="uncertainty">u, at least 0.</param>
    public NormalBelief After(double result, double uncertainty)
    {
        if (Deviation <= 0)
        {
            return this;
        }

        var weight = Deviation * Deviation / ((Deviation * Deviation) + (uncertainty * uncertainty));
        return new NormalBelief((weight * result) + ((1 - weight) * Mean), uncertainty * Math.Sqrt(weight));
    }

    /// <summary>The same moved, and wider by something independent.</summary>
    /// <param name="by">How far it moves.</param>
    /// <param name="wider">A further standard deviation, at least 0.</param>
    public NormalBelief Plus(double by, double wider) => new(Mean + by, double.Hypot(Deviation, wider));

    private double Below(double? edge, double without) => edge is { } at ? Normal.CDF(0, 1, (at - Mean) / Deviation) : without;
}
