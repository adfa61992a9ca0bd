using MathNet.Numerics.Statistics;

namespace Evengrist.Packing.NetContent;

/// <summary>Net weights of a sample against the label by the rules of the United States: the lot's average, and each package. NIST Handbook 133, figures from memory. It decides nothing. Model: docs/model/net-content.md.</summary>
public static class PackageCheck
{
    /// <summary>The share of the label that flour may have lost by drying before a shortage of the average calls for action [Handbook 133, from memory].</summary>
    public const double MoistureShare = 0.03;

    /// <summary>Judges a sample.</summary>
    /// <param name="label">What each package declares.</param>
    /// <param name="lot">Packages in the lot.</param>
    /// <param name="net">Net weights, grams; as many as the plan asks for.</param>
    /// <exception cref="ArgumentException">Another number of weights than the plan's.</exception>
    public static PackageFinding Of(NetLabel label, int lot, IReadOnlyList<double> net)
    {
        ArgumentNullException.ThrowIfNull(label);
        ArgumentNullException.ThrowIfNull(net);
        var plan = PackagePlan.For(lot);
        if (net.Count != plan.Size)
        {
            throw new ArgumentException($"Of a lot of {lot} packages {plan.Size} are weighed; got {net.Count} weights.", nameof(net));
        }

        var errors = net.Select(w => w - label.Grams).ToArray();
        var (mean, deviation) = errors.MeanStandardDeviation();
        var limit = plan.Factor * deviation;
        var variation = AllowedVariation.Grams(label);
        return new(plan, mean, deviation, limit, variation, errors.Count(e => -e > variation), Verdict(mean, limit, label));
    }

    private static AverageVerdict Verdict(double mean, double limit, NetLabel label) => mean >= -limit ? AverageVerdict.Passes
        : -mean <= (MoistureShare * label.Grams) + limit ? AverageVerdict.Grey
        : AverageVerdict.Fails;
}
