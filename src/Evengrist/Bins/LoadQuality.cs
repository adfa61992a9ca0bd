using Evengrist.Ledger;
using NodaTime;

namespace Evengrist.Bins;

/// <summary>The newest of what was read on a load up to a moment, in plain numbers.</summary>
/// <param name="ProteinPercentAt12">Protein, per cent at 12 % moisture; null where not read.</param>
/// <param name="ProteinUncertainty">One standard uncertainty of it, same basis; null where none is known.</param>
/// <param name="MoisturePercent">Moisture, per cent wet basis; null where not read.</param>
/// <param name="FallingSeconds">Falling number, s; null where not read.</param>
/// <param name="TestWeight">Test weight, kg/hL; null where not read.</param>
public sealed record LoadQuality(double? ProteinPercentAt12, double? ProteinUncertainty, double? MoisturePercent, double? FallingSeconds, double? TestWeight)
{
    /// <summary>Looks at the readings on a load.</summary>
    public static LoadQuality Of(Book book, PlaceId load, Instant at)
    {
        ArgumentNullException.ThrowIfNull(book);
        Reading? protein = null, moisture = null, falling = null, weight = null;
        foreach (var reading in book.ReadingsOn(load))
        {
            if (reading.At <= at)
            {
                protein = reading.What == Property.Protein ? reading : protein;
                moisture = reading.What == Property.Moisture ? reading : moisture;
                falling = reading.What == Property.FallingNumber ? reading : falling;
                weight = reading.What == Property.TestWeight ? reading : weight;
            }
        }

        var scale = protein is null ? 1 : 88 / (100 - protein.Basis.MoisturePercent);
        return new LoadQuality(
            (double?)(protein?.Value * scale), (double?)(protein?.StandardUncertainty * scale), (double?)moisture?.Value, (double?)falling?.Value,
            weight is null ? null : (double)Quantities.TestWeight.Read(weight.Value, weight.Unit, durum: false).KilogramsPerHectolitre);
    }
}
