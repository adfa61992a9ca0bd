using Evengrist.Bins.BestBin;
using Evengrist.Ledger;
using Evengrist.Quantities;

namespace Evengrist.Bins;

/// <summary>What the loads in a bin say of it besides protein: falling number, test weight, and how much of it is in the bin's band.</summary>
/// <param name="FallingNumber">Of the blend, by the liquefaction numbers of the loads read, weighted by mass; null where none was read.</param>
/// <param name="TestWeight">Of the blend, kg/hL, by <see cref="TestWeightBlend"/>; null where none was read.</param>
/// <param name="Purity">Share, 0 to 1, of the mass with protein read that lies in the band; null without a band or readings.</param>
/// <param name="MoisturePercent">Mean moisture of the loads read, per cent wet basis; null where none was read.</param>
/// <param name="ShareFalling">Share of the mass with a falling number, 0 to 1.</param>
/// <param name="ShareTestWeight">Share of the mass with a test weight, 0 to 1.</param>
/// <param name="ShareProtein">Share of the mass with protein, 0 to 1.</param>
public sealed record BinQuality(
    FallingNumber? FallingNumber, double? TestWeight, double? Purity, double? MoisturePercent, double ShareFalling, double ShareTestWeight, double ShareProtein)
{
    /// <summary>Blends what was read on the loads of a makeup. Sources: mass balance; 6000/(FN − 50) of docs/model/quantities.md. Page: docs/model/bin-protein.md.</summary>
    /// <param name="makeup">What the grain is made up of.</param>
    /// <param name="qualityOf">What was read on a load.</param>
    /// <param name="band">The bin's house band; null where it has none.</param>
    public static BinQuality Of(Makeup makeup, Func<PlaceId, LoadQuality> qualityOf, BinBand? band)
    {
        ArgumentNullException.ThrowIfNull(makeup);
        ArgumentNullException.ThrowIfNull(qualityOf);
        var loads = makeup.Loads.Where(l => l.Grams >= 1).Select(l => (l.Grams, Read: qualityOf(l.Place))).ToArray();
        var falling = loads.Where(l => l.Read.FallingSeconds is >= 60 and <= 1000).ToArray();
        var weighed = loads.Where(l => l.Read.TestWeight is > 0).ToArray();
        var protein = loads.Where(l => l.Read.ProteinPercentAt12 is not null).ToArray();
        var moist = loads.Where(l => l.Read.MoisturePercent is not null).ToArray();
        var inBand = band is null ? 0 : protein.Where(l => band.Holds(l.Read.ProteinPercentAt12!.Value, l.Read.FallingSeconds, l.Read.TestWeight)).Sum(l => l.Grams);
        double Share((double Grams, LoadQuality)[] read) => makeup.Grams > 0 ? Math.Min(1, read.Sum(l => l.Grams) / makeup.Grams) : 0;
        return new BinQuality(
            falling.Length == 0 ? null : FallingNumberBlend.Of([.. falling.Select(l => (Mass.FromGrams((long)l.Grams), Quantities.FallingNumber.FromSeconds((decimal)l.Read.FallingSeconds!.Value)))]).FallingNumber,
            TestWeightBlend.Of(weighed.Select(l => (l.Grams, l.Read.TestWeight!.Value))),
            band is null || protein.Length == 0 ? null : inBand / protein.Sum(l => l.Grams),
            moist.Length == 0 ? null : moist.Sum(l => l.Grams * l.Read.MoisturePercent!.Value) / moist.Sum(l => l.Grams),
            Share(falling), Share(weighed), Share(protein));
    }
}
