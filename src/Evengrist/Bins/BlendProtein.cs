namespace Evengrist.Bins;

/// <summary>Protein of grain from several loads, from the readings on the loads.</summary>
/// <param name="PercentDry">Mean protein, per cent of dry matter, over the loads that were read.</param>
/// <param name="StandardUncertaintyPercentDry">One standard uncertainty of the mean; null where no load's reading carries one.</param>
/// <param name="LeastPercentDry">The least of the loads.</param>
/// <param name="MostPercentDry">The greatest of the loads.</param>
/// <param name="LoadsRead">Loads with both protein and moisture read.</param>
/// <param name="ShareRead">Share of the grams that those loads make up, 0 to 1.</param>
public sealed record BlendProtein(
    double PercentDry, double? StandardUncertaintyPercentDry, double LeastPercentDry, double MostPercentDry, int LoadsRead, double ShareRead)
{
    /// <summary>Blends by dry matter: P = Σ gᵢdᵢpᵢ / Σ gᵢdᵢ with grams g, dry share d and protein on dry matter p of each load read.</summary>
    /// <remarks>
    /// u² = Σ (gᵢdᵢ/Σ)² uᵢ²: errors of different loads are taken as independent, so a bias that an instrument shares over all of them is
    /// not in it. A load whose reading carries no uncertainty counts with the mean square of the others. Source: mass balance of protein, by definition.
    /// </remarks>
    /// <param name="makeup">What the grain is made up of.</param>
    /// <param name="testOf">What was read on a load; null where nothing was.</param>
    /// <returns>The blend; null where no load was read.</returns>
    public static BlendProtein? Of(Makeup makeup, Func<Ledger.PlaceId, LoadTest?> testOf)
    {
        ArgumentNullException.ThrowIfNull(makeup);
        ArgumentNullException.ThrowIfNull(testOf);
        var read = makeup.Loads.Where(l => l.Grams > 0).Select(l => (l.Grams, Test: testOf(l.Place))).Where(l => l.Test is not null)
            .Select(l => (l.Grams, Dry: l.Grams * l.Test!.DryShare, Test: l.Test!)).ToArray();
        var dry = read.Sum(r => r.Dry);
        if (dry <= 0)
        {
            return null;
        }

        return new BlendProtein(
            read.Sum(r => r.Dry * r.Test.ProteinPercentDry) / dry, Uncertainty([.. read.Select(r => (r.Dry / dry, r.Test.StandardUncertaintyPercentDry))]),
            read.Min(r => r.Test.ProteinPercentDry), read.Max(r => r.Test.ProteinPercentDry),
            read.Length, Math.Min(1, read.Sum(r => r.Grams) / makeup.Grams));
    }

    internal static double? Uncertainty((double Weight, double? Own)[] loads)
    {
        var known = loads.Where(l => l.Own is not null).Select(l => l.Own!.Value * l.Own.Value).ToArray();
        if (known.Length == 0)
        {
            return null;
        }

        var usual = known.Average();
        return Math.Sqrt(loads.Sum(l => l.Weight * l.Weight * (l.Own is { } own ? own * own : usual)));
    }
}
