using Evengrist.Bins;
using Evengrist.Ledger;
using Evengrist.Quantities;
using Evengrist.Season;
using NodaTime;

namespace Evengrist.Records.Season;

/// <summary>Blends what was read on the trucks of some layers into the quality a plan takes.</summary>
internal sealed class StockReading(Book book, MakeupModel makeup, Instant at)
{
    private readonly LoadReadings read = new(book, at);

    /// <summary>Moisture and quality; null where no protein was read.</summary>
    public (double? Moisture, SeasonQuality Quality)? Of(IReadOnlyList<Layer> layers)
    {
        var made = makeup.Of(layers);
        if (BlendProtein.Of(made, read.Test) is not { } protein)
        {
            return null;
        }

        var other = BinQuality.Of(made, read.Quality, band: null);
        var values = new Dictionary<Property, SeasonValue>
        {
            [Property.Protein] = new(protein.PercentDry * 0.88, (protein.StandardUncertaintyPercentDry ?? 0) * 0.88, Basis.At12),
        };
        if (other.FallingNumber is { } falling)
        {
            values[Property.FallingNumber] = new((double)falling.Seconds);
        }

        if (other.TestWeight is { } weight)
        {
            values[Property.TestWeight] = new(weight);
        }

        return (other.MoisturePercent, new SeasonQuality(values));
    }
}
