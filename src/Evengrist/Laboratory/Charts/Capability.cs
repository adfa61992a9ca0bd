using MathNet.Numerics.Distributions;

namespace Evengrist.Laboratory.Charts;

/// <summary>How much room limits leave a process of nearly normal values. Model: docs/model/control-charts.md.</summary>
/// <param name="Cp">(upper − lower)/(6 s); null without both limits.</param>
/// <param name="Cpk">The nearer limit's distance over 3 s.</param>
/// <param name="Cpm">(upper − lower)/(6 √(s² + (m − target)²)); null without both limits or a target.</param>
/// <param name="CpBounds">Confidence limits of Cp; null with it.</param>
/// <param name="CpkBounds">Confidence limits of Cpk.</param>
/// <param name="ShareAbove">Share of normal values above the upper limit; 0 without one.</param>
/// <param name="ShareBelow">Share below the lower limit; 0 without one.</param>
public sealed record Capability(double? Cp, double Cpk, double? Cpm, (double Lower, double Upper)? CpBounds, (double Lower, double Upper) CpkBounds, double ShareAbove, double ShareBelow)
{
    /// <summary>Fewest values it should rest on: about 50 independent ones [NIST/SEMATECH e-Handbook 6.1.6].</summary>
    public const int UsualCount = 50;

    /// <summary>Reckons it.</summary>
    /// <param name="mean">Mean of the values.</param>
    /// <param name="sigma">Standard deviation, above 0: within groups for Cp and Cpk, of all values for what is often called Pp and Ppk.</param>
    /// <param name="count">How many values, at least 2.</param>
    /// <param name="lower">Lower limit; null for none.</param>
    /// <param name="upper">Upper limit, above the lower; null for none.</param>
    /// <param name="target">Target; null for none.</param>
    /// <param name="level">Confidence, above 0 and below 1.</param>
    /// <exception cref="ArgumentException">A figure cannot be, or there is no limit.</exception>
    public static Capability Of(double mean, double sigma, int count, double? lower, double? upper, double? target = null, double level = 0.95)
    {
        if (!(sigma > 0 && double.IsFinite(sigma) && double.IsFinite(mean)) || count < 2 || (lower is null && upper is null) || lower >= upper || !(level is > 0 and < 1))
        {
            throw new ArgumentException("Capability needs a standard deviation above 0, two values or more, a limit, the lower below the upper, and a confidence between 0 and 1.");
        }

        var cpk = Math.Min((upper - mean) / (3 * sigma) ?? double.PositiveInfinity, (mean - lower) / (3 * sigma) ?? double.PositiveInfinity);
        double? cp = upper - lower is { } width ? width / (6 * sigma) : null;
        var (tail, freedom) = ((1 - level) / 2, count - 1.0);
        var half = Normal.InvCDF(0, 1, 1 - tail) * Math.Sqrt((1 / (9.0 * count)) + (cpk * cpk / (2 * freedom)));
        return new Capability(
            cp, cpk, upper - lower is { } room && target is { } wanted ? room / (6 * Math.Sqrt((sigma * sigma) + ((mean - wanted) * (mean - wanted)))) : null,
            cp is { } c ? (c * Math.Sqrt(ChiSquared.InvCDF(freedom, tail) / freedom), c * Math.Sqrt(ChiSquared.InvCDF(freedom, 1 - tail) / freedom)) : null, (cpk - half, cpk + half),
            upper is { } above ? Normal.CDF(0, 1, (mean - above) / sigma) : 0, lower is { } below ? Normal.CDF(0, 1, (below - mean) / sigma) : 0);
    }
}
