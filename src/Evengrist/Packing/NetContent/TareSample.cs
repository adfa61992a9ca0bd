using MathNet.Numerics.Distributions;
using MathNet.Numerics.Statistics;
using NodaTime;

namespace Evengrist.Packing.NetContent;

/// <summary>Empty packages of one delivery, weighed by hand.</summary>
/// <param name="Product">Code of the product that is packed in them.</param>
/// <param name="At">When they were weighed; from then on it holds.</param>
/// <param name="Grams">Their weights, grams, at least <see cref="Least"/>.</param>
/// <param name="Delivery">Which delivery of packages, in words.</param>
public sealed record TareSample(string Product, Instant At, IReadOnlyList<double> Grams, string Delivery = "")
{
    /// <summary>Fewest empty packages that say something of a delivery, and most that are typed [ours; rules ask for 2 to 10 or more].</summary>
    public const int Least = 5, Most = 200;

    /// <summary>Mean, grams.</summary>
    public double Mean => Grams.Mean();

    /// <summary>Standard deviation, grams.</summary>
    public double Deviation => Grams.StandardDeviation();

    /// <summary>How far the mean may be off, grams: t(0.975; n − 1) · s/√n.</summary>
    public double PlusMinus => StudentT.InvCDF(0, 1, Grams.Count - 1, 0.975) * Deviation / Math.Sqrt(Grams.Count);

    /// <summary>By how much net weights have to be corrected where another tare was taken off: that tare less this one, grams; below 0 where every package is lighter than shown.</summary>
    /// <param name="used">Tare taken off, grams.</param>
    public double Correction(double used) => used - Mean;

    /// <summary>Whether a tare that was taken off differs from these packages by more than their spread explains, and by at least a tenth of a gram.</summary>
    /// <param name="used">Tare taken off, grams.</param>
    public bool Contradicts(double used) => Math.Abs(Correction(used)) > Math.Max(PlusMinus, 0.1);

    /// <summary>What is wrong, each a sentence; empty where nothing is.</summary>
    /// <param name="packGrams">Net mass of the product's pack, grams.</param>
    public IReadOnlyList<string> Faults(long packGrams) =>
    [
        .. Grams.Count is >= Least and <= Most ? Array.Empty<string>() : [$"Weigh {Least} to {Most} empty packages; got {Grams.Count}."],
        .. Grams.Any(g => !double.IsFinite(g) || g <= 0) ? ["An empty package weighs more than 0 g."] : Array.Empty<string>(),
        .. Grams.Any(g => g >= packGrams / 2.0) ? [FormattableString.Invariant($"An empty package of half the net mass ({packGrams / 2.0:0.#} g) or more: were full ones weighed, or is the unit another than grams?")] : Array.Empty<string>(),
    ];
}
