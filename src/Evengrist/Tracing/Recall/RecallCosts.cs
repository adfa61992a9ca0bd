namespace Evengrist.Tracing.Recall;

/// <summary>What a net costs, at prices a person has given; none is invented.</summary>
/// <param name="PricePerKilogram">Price by product, money per kg of package mass as it lies.</param>
/// <param name="DestructionPerTonne">Destroying a tonne; null where none was given.</param>
/// <param name="FreightPerTonne">Fetching a tonne back from a customer; null where none was given.</param>
public sealed record RecallCosts(IReadOnlyDictionary<string, decimal> PricePerKilogram, decimal? DestructionPerTonne = null, decimal? FreightPerTonne = null)
{
    /// <summary>Whether any price was given.</summary>
    public bool AreGiven => PricePerKilogram.Count > 0 || DestructionPerTonne is not null || FreightPerTonne is not null;

    /// <summary>
    /// Cost of a net: Σ made (kg) · price + (made − used) (t) · destruction + shipped (t) · freight. Exact decimals, not rounded. What has no price is named and not in the sum.
    /// </summary>
    /// <returns>The cost, null where no price was given; products without a price.</returns>
    public (decimal? Cost, IReadOnlyList<string> Unpriced) Of(Net net)
    {
        ArgumentNullException.ThrowIfNull(net);
        if (!AreGiven)
        {
            return (null, []);
        }

        decimal cost = 0;
        var unpriced = new SortedSet<string>(StringComparer.Ordinal);
        foreach (var package in net.Packages)
        {
            if (PricePerKilogram.TryGetValue(package.Place.Material, out var price))
            {
                cost += package.Mass.Kilograms * price;
            }
            else
            {
                unpriced.Add(package.Place.Material.Length > 0 ? package.Place.Material : "no product named");
            }
        }

        cost += (net.Balance.Made - net.Balance.Used).Tonnes * (DestructionPerTonne ?? 0) + net.Balance.Shipped.Tonnes * (FreightPerTonne ?? 0);
        return (cost, [.. unpriced]);
    }
}
