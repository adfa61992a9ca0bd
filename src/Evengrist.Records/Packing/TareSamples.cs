using System.Text.Json;
using Evengrist.Packing.NetContent;
using Evengrist.Quantities;
using NodaTime;

namespace Evengrist.Records.Packing;

/// <summary>Empty packages weighed by hand: papers by product, one version for each weighing.</summary>
public static class TareSamples
{
    private const string Kind = "tare-sample";

    private static readonly JsonSerializerOptions Options = StrictJson.Options();

    /// <summary>All weighings of a product's empty packages up to a moment, the first first, each with who kept it.</summary>
    /// <param name="mill">The mill.</param>
    /// <param name="product">Code of the product; null for all.</param>
    /// <param name="asOf">The moment.</param>
    public static IReadOnlyList<(TareSample Sample, string By)> Of(Mill mill, string? product, Instant asOf)
    {
        ArgumentNullException.ThrowIfNull(mill);
        return [.. mill.Papers(Kind).All().Where(p => product is null || p.Code.Equals(product, StringComparison.OrdinalIgnoreCase)).Select(p => (Sample: JsonSerializer.Deserialize<TareSample>(p.Json, Options)!, p.By)).Where(s => s.Sample.At <= asOf).OrderBy(s => s.Sample.At)];
    }

    /// <summary>Keeps a weighing; every fault where it cannot be, and then nothing is kept. The same again is the same.</summary>
    /// <param name="mill">The mill.</param>
    /// <param name="sample">What was weighed.</param>
    /// <param name="by">Who weighed.</param>
    /// <param name="now">The present moment.</param>
    public static IReadOnlyList<string> Keep(Mill mill, TareSample sample, string? by, Instant now)
    {
        ArgumentNullException.ThrowIfNull(mill);
        ArgumentNullException.ThrowIfNull(sample);
        var product = Products.Find(mill, sample.Product);
        string[] faults =
        [
            .. string.IsNullOrWhiteSpace(by) ? ["Say who weighed: every record carries a name."] : Array.Empty<string>(),
            .. product is null or { PackGrams: 0 } ? [$"There is no product “{sample.Product}” in packs."] : sample.Faults(product.PackGrams),
            .. sample.At > now ? ["The weighing lies in the future."] : Array.Empty<string>(),
        ];
        if (faults.Length == 0)
        {
            mill.Papers(Kind).KeepOnce(product!.Code, JsonSerializer.Serialize(sample with { Product = product.Code, Delivery = sample.Delivery.Trim() }, Options), by!.Trim());
        }

        return faults;
    }
}
