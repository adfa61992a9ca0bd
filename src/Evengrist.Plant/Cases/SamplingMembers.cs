using Evengrist.Intake.Sampling;

namespace Evengrist.Plant.Cases;

/// <summary>Members that cases of sampling share.</summary>
internal static class SamplingMembers
{
    /// <summary>A number of an object's member; the usual one where it is left out.</summary>
    public static double Number(this JsonNode node, string name, double usual, double least, double most) =>
        node.Has(name) ? (double)(node.Member(name)!.Number((decimal)least, (decimal)most) ?? (decimal)usual) : usual;

    /// <summary>A whole number of an object's member; the usual one where it is left out.</summary>
    public static int Whole(this JsonNode node, string name, int usual, int least, int most) => node.Has(name) ? node.Member(name)!.Whole(least, most) ?? usual : usual;

    /// <summary>A prior given by mean and standard deviation; null, with a fault where it is there and cannot be.</summary>
    public static LoadPrior? Prior(this JsonNode node, string name, PriorScale scale)
    {
        if (!node.Has(name) || node.Member(name) is not { } prior || !prior.IsObject("mean", "sd"))
        {
            return null;
        }

        var (mean, sd) = (prior.Member("mean")?.Number(0.0001m, 10_000m), prior.Member("sd")?.Number(0.0001m, 10_000m));
        return mean is null || sd is null ? null : new LoadPrior(scale, (double)mean.Value, (double)sd.Value);
    }

    /// <summary>Sizes of a DON test; the base sizes where they are left out.</summary>
    public static DonSizes Sizes(this JsonNode node)
    {
        if (!node.Has("sizes") || node.Member("sizes") is not { } sizes || !sizes.IsObject("sampleKg", "portionG", "determinations"))
        {
            return DonSizes.Base;
        }

        return new DonSizes(sizes.Number("sampleKg", 0.454, 0.001, 100), sizes.Number("portionG", 25, 0.01, 10_000), sizes.Whole("determinations", 1, 1, 100));
    }

    /// <summary>Notes what a model would refuse.</summary>
    public static bool Sound(this JsonNode node, IReadOnlyList<string> faults)
    {
        foreach (var fault in faults)
        {
            node.Fault($"a question that can be answered. {fault}");
        }

        return faults.Count == 0;
    }
}
