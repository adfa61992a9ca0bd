using Evengrist.Bins;
using Evengrist.Ledger;
using Evengrist.Season;
using NodaTime;

namespace Evengrist.Records.Season;

/// <summary>What lies in the wheat bins at a moment, as a plan of the year takes it: first in first out, quality from the readings on the trucks.</summary>
/// <param name="Wheats">One for each bin that can be planned with.</param>
/// <param name="Homes">The bins and how much they hold.</param>
/// <param name="Flours">Flour in bins and on pallets that nobody has been sent, t by material.</param>
/// <param name="Remarks">What was left out or supposed, each a sentence.</param>
public sealed record SeasonStocks(
    IReadOnlyList<SeasonWheat> Wheats, IReadOnlyList<SeasonHome> Homes, IReadOnlyDictionary<string, double> Flours, IReadOnlyList<string> Remarks)
{
    private const int LayersAtMost = 4;
    private const double DefaultMoisture = 12;

    /// <summary>Reads them.</summary>
    public static SeasonStocks Of(MillView view, Instant at)
    {
        ArgumentNullException.ThrowIfNull(view);
        var reckoning = view.Reckoning(Outflow.FirstInFirstOut);
        var reading = new StockReading(view.Book, new MakeupModel(view.Book, reckoning.Parcels), at);
        var (snapshot, remarks, wheats, homes) = (reckoning.At(at), new List<string>(), new List<SeasonWheat>(), new List<SeasonHome>());
        foreach (var bin in view.Book.OfKind(PlaceKind.Bin).OrderBy(b => b.Code, StringComparer.OrdinalIgnoreCase))
        {
            if (bin.Capacity is { } capacity)
            {
                homes.Add(new SeasonHome(bin.Code, (double)capacity.Tonnes));
            }

            var layers = snapshot.ContentOf(bin.Id).Where(l => l.Grams > 0).ToArray();
            if (layers.Sum(l => l.Grams) < 1_000_000)
            {
                continue;
            }

            if (view.Book.BarsOn(bin.Id, at).AgainstOut is { } bar)
            {
                remarks.Add($"{bin.Code} is left out: {bar.Words}");
            }
            else if (reading.Of(layers) is { } whole)
            {
                wheats.Add(Wheat(bin, layers, whole, reading));
            }
            else
            {
                remarks.Add($"{bin.Code} is left out: no protein was read on what lies in it.");
            }
        }

        return new SeasonStocks(wheats, homes, FlourOf(view.Book, at), remarks);
    }

    // What is on hold cannot be sent, and so does not serve the demand.
    private static Dictionary<string, double> FlourOf(Book book, Instant at) => book.OfKind(PlaceKind.FlourBin).Concat(book.OfKind(PlaceKind.Pallet))
        .Where(p => p.Material.Length > 0 && book.BarsOn(p.Id, at).AgainstOut is null)
        .GroupBy(p => p.Material, StringComparer.OrdinalIgnoreCase)
        .ToDictionary(g => g.Key, g => g.Sum(p => Math.Max(0, (double)book.StockOf(p.Id, at).Tonnes)), StringComparer.OrdinalIgnoreCase);

    private static SeasonWheat Wheat(Place bin, Layer[] layers, (double? Moisture, SeasonQuality Quality) whole, StockReading reading)
    {
        var moisture = whole.Moisture ?? DefaultMoisture;
        var parts = Parts(layers).Select(p => (Tonnes: p.Sum(l => (double)l.Grams) / 1e6, Read: reading.Of(p))).ToArray();
        return new SeasonWheat(bin.Code, bin.Material, layers.Sum(l => l.Grams) / 1e6, moisture, whole.Quality)
        {
            Home = bin.Capacity is null ? "" : bin.Code,
            Layers = parts.Length < 2 ? [] : [.. parts.Select(p => new SeasonLayer(p.Tonnes, p.Read?.Moisture ?? moisture, p.Read?.Quality ?? SeasonQuality.Unknown))],
        };
    }

    // Layers by the truck are too many for a plan: equal parts of them, in the order in which they leave.
    internal static IEnumerable<Layer[]> Parts(Layer[] layers)
    {
        var (size, part, filled) = (layers.Sum(l => (double)l.Grams) / LayersAtMost, new List<Layer>(), 0.0);
        foreach (var layer in layers)
        {
            part.Add(layer);
            filled += layer.Grams;
            if (filled >= size)
            {
                yield return [.. part];
                part.Clear();
                filled = 0;
            }
        }

        if (part.Count > 0)
        {
            yield return [.. part];
        }
    }
}
