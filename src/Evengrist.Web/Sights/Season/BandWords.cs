using System.Globalization;
using Evengrist.Season.Bands;

namespace Evengrist.Web.Sights.Season;

/// <summary>Bands in words, and the number of them that is advised.</summary>
public static class BandWords
{
    /// <summary>Protein of a band: <c>12.4 to 13.1</c>, <c>below 12.4</c>, <c>13.1 and above</c>, <c>all</c>.</summary>
    public static string Protein(HarvestBand band)
    {
        ArgumentNullException.ThrowIfNull(band);
        return Span(band.From, band.To, double.NegativeInfinity, "0.0#");
    }

    /// <summary>Falling number of a band, s; empty where the harvest is not parted by it.</summary>
    public static string FallingNumber(HarvestBand band)
    {
        ArgumentNullException.ThrowIfNull(band);
        return band.FallingNumberFrom <= 0 && double.IsPositiveInfinity(band.FallingNumberTo) ? "" : Span(band.FallingNumberFrom, band.FallingNumberTo, 0, "0");
    }

    /// <summary>Number of the row that is advised: the fewest bands after which one more saves no more than its trouble.</summary>
    public static int Advised(IReadOnlyList<BandRow> rows, double trouble)
    {
        ArgumentNullException.ThrowIfNull(rows);
        return Enumerable.Range(0, rows.Count).First(i => rows.Skip(i + 1).Index().All(r => rows[i].Cost - r.Item.Cost <= Math.Max(trouble, 1) * (r.Index + 1)));
    }

    private static string Span(double from, double to, double none, string format)
    {
        string N(double value) => value.ToString(format, CultureInfo.InvariantCulture);
        return from <= none && double.IsPositiveInfinity(to) ? "all" : from <= none ? $"below {N(to)}" : double.IsPositiveInfinity(to) ? $"{N(from)} and above" : $"{N(from)} to below {N(to)}";
    }
}
