using MathNet.Numerics.Distributions;

namespace Evengrist.Packing.NetContent;

/// <summary>The least mean net weight that keeps the rules, given how net weights spread. Model: docs/model/net-content.md.</summary>
/// <param name="Grams">Mean net weight to aim at when the package is sold, grams.</param>
/// <param name="ByAverage">What the rule of the average asks for, grams.</param>
/// <param name="ByEach">What the rules of each package ask for, grams.</param>
public sealed record TargetFill(double Grams, double ByAverage, double ByEach)
{
    /// <summary>Standard deviations above T1 and T2 that leave 2.5 % and 1 in 10,000 below [practice of packers, from memory].</summary>
    public const double AboveFirst = 1.960, AboveSecond = 3.719;

    /// <summary>Chance that the average test is to pass, and most of a sample that may be short by more than the allowed variation [ours].</summary>
    public const double AveragePasses = 0.99, ShortInSample = 0.001;

    /// <summary>Given away on average, grams a package.</summary>
    /// <param name="label">What the package declares.</param>
    public double Giveaway(NetLabel label) => Grams - (label ?? throw new ArgumentNullException(nameof(label))).Grams;

    /// <summary>For the European Union: Q = max(label + drift, T1 + 1.960 s, T2 + 3.719 s).</summary>
    /// <param name="label">What the package declares.</param>
    /// <param name="deviation">s of net weights, grams, above 0.</param>
    /// <param name="drift">Allowance for the drift of the fill between checks, grams.</param>
    public static TargetFill InEurope(NetLabel label, double deviation, double drift = 0)
    {
        ArgumentNullException.ThrowIfNull(label);
        ArgumentOutOfRangeException.ThrowIfNegativeOrZero(deviation);
        ArgumentOutOfRangeException.ThrowIfNegative(drift);
        return Of(label.Grams + drift, Math.Max(TolerableError.First(label) + (AboveFirst * deviation), TolerableError.Second(label) + (AboveSecond * deviation)));
    }

    /// <summary>For the United States: the average test passes with 99 % and fewer than one in a thousand samples holds a package short by more than the allowed variation.</summary>
    /// <param name="label">What the package declares.</param>
    /// <param name="deviation">s of net weights, grams, above 0.</param>
    /// <param name="lot">Packages in a lot, which sets the plan.</param>
    /// <param name="drift">Allowance for the drift of the fill between checks, grams.</param>
    public static TargetFill InAmerica(NetLabel label, double deviation, int lot, double drift = 0)
    {
        ArgumentNullException.ThrowIfNull(label);
        ArgumentOutOfRangeException.ThrowIfNegativeOrZero(deviation);
        ArgumentOutOfRangeException.ThrowIfNegative(drift);
        var plan = PackagePlan.For(lot);
        var each = label.Grams - AllowedVariation.Grams(label) - (Normal.InvCDF(0, 1, ShortInSample / plan.Size) * deviation);
        return Of(label.Grams + drift + (ShiftThatPasses(plan) * deviation), each);
    }

    private static TargetFill Of(double average, double each) => new(Math.Max(average, each), average, each);

    // At the label itself the test passes with 97.5 %: the shift lies above 0 and, for the smallest sample, below 20.
    private static double ShiftThatPasses(PackagePlan plan)
    {
        var (least, most) = (0.0, 20.0);
        for (var round = 0; round < 60; round++)
        {
            var middle = (least + most) / 2;
            (least, most) = plan.Chance(middle) < AveragePasses ? (middle, most) : (least, middle);
        }

        return most;
    }
}
