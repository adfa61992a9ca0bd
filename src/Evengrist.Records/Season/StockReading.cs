using Evengrist.Bins;
using Evengrist.Ledger;
using Evengrist.Quantities;
using Evengrist.Season;
using NodaTime;

namespace Evengrist.Records.Season;

/// <summary>Blends what was read on the trucks of some layers into the quality a plan takes.</summary>
internal sealed class StockReading(Book book, MakeupModel makeup, Instant at)
{
    private readonly Dictionary<PlaceId, (LoadTest? Test, LoadQuality Quality)> read = [];

    /// <summary>Moisture and quality; null where no protein was read.</summary>
    public (double? Moisture, SeasonQuality Quality)? Of(IReadOnlyList<Layer> layers)
    {
        var made = makeup.Of(layers);
        if (BlendProtein.Of(made, load => Read(load).Test) is not { } protein)
        {
            return null;
        }

        var other = BinQuality.Of(made, load => Read(load).Quality, band: null);
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

    private (LoadTest? Test, LoadQuality Quality) Read(PlaceId load)
    {
        if (!read.TryGetValue(load, out var known))
        {
            read.Add(load, known = (LoadTest.Of(book, load, at), LoadQuality.Of(book, load, at)));
        }

        return known;
    }
}
