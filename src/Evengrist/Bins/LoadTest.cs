using Evengrist.Ledger;
using NodaTime;

namespace Evengrist.Bins;

/// <summary>What was read on a load, as far as a blend needs it.</summary>
/// <param name="ProteinPercentDry">Protein, per cent of dry matter.</param>
/// <param name="DryShare">Dry matter over mass as it lies, 0 to 1, from the load's own moisture.</param>
/// <param name="StandardUncertaintyPercentDry">One standard uncertainty of the protein, per cent of dry matter; null where none was recorded.</param>
public sealed record LoadTest(double ProteinPercentDry, double DryShare, double? StandardUncertaintyPercentDry)
{
    /// <summary>The newest protein and moisture read on a load up to a moment; null where one of the two is missing.</summary>
    public static LoadTest? Of(Book book, PlaceId load, Instant at)
    {
        ArgumentNullException.ThrowIfNull(book);
        Reading? protein = null, moisture = null;
        foreach (var reading in book.ReadingsOn(load))
        {
            if (reading.At <= at)
            {
                protein = reading.What == Property.Protein ? reading : protein;
                moisture = reading.What == Property.Moisture ? reading : moisture;
            }
        }

        if (protein is null || moisture is null)
        {
            return null;
        }

        var toDry = protein.Basis.ToDry;
        return new LoadTest((double)protein.Value * toDry, 1 - (double)moisture.Value / 100, (double?)protein.StandardUncertainty * toDry);
    }
}
