using Evengrist.Ledger;

namespace Evengrist.Bins;

/// <summary>Ash, gluten or a toxin of grain from several loads, from the readings on the loads.</summary>
/// <param name="What">The property; not protein, which <see cref="BlendProtein"/> blends.</param>
/// <param name="ValueDry">Mean over the loads that were read, on dry matter, unit of the property.</param>
/// <param name="StandardUncertaintyDry">One standard uncertainty of the mean from the readings alone, on dry matter; null where no reading carries one. How unevenly a toxin lies in a load is not in it.</param>
/// <param name="ShareRead">Share of the grams that those loads make up, 0 to 1; they stand for the rest.</param>
public sealed record BlendSolids(Property What, double ValueDry, double? StandardUncertaintyDry, double ShareRead)
{
    private const double UsualMoisture = 12;

    /// <summary>Blends every such property that was read, by dry matter: Σ gᵢdᵢvᵢ / Σ gᵢdᵢ. A load without a moisture counts as one of 12 % [design]. Source: mass balance.</summary>
    /// <param name="makeup">What the grain is made up of.</param>
    /// <param name="readingsOf">What was read on a load, by time.</param>
    public static IReadOnlyList<BlendSolids> Of(Makeup makeup, Func<PlaceId, IEnumerable<Reading>> readingsOf)
    {
        ArgumentNullException.ThrowIfNull(makeup);
        ArgumentNullException.ThrowIfNull(readingsOf);
        return
        [
            .. makeup.Loads.Where(l => l.Grams > 0).SelectMany(l => Newest([.. readingsOf(l.Place)], l.Grams)).GroupBy(r => r.Reading.What).OrderBy(g => g.Key).Select(g => Of(g.Key, [.. g], makeup.Grams)),
        ];
    }

    private static IEnumerable<(Reading Reading, double Grams, double Dry)> Newest(Reading[] readings, double grams)
    {
        var moisture = (double?)readings.LastOrDefault(r => r.What == Property.Moisture)?.Value ?? UsualMoisture;
        return readings.Where(r => r.What.NeedsBasis() && r.What != Property.Protein).GroupBy(r => r.What).Select(g => (g.Last(), grams, grams * (1 - (moisture / 100))));
    }

    private static BlendSolids Of(Property what, (Reading Reading, double Grams, double Dry)[] loads, double all)
    {
        var dry = loads.Sum(l => l.Dry);
        return new BlendSolids(
            what, loads.Sum(l => l.Dry * (double)l.Reading.Value * l.Reading.Basis.ToDry) / dry, BlendProtein.Uncertainty([.. loads.Select(l => (l.Dry / dry, (double?)l.Reading.StandardUncertainty * l.Reading.Basis.ToDry))]),
            Math.Min(1, loads.Sum(l => l.Grams) / all));
    }
}
