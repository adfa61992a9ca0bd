using Evengrist.Bins;
using Evengrist.Bins.Shape;
using Evengrist.Bins.Storage;
using Evengrist.Ledger;
using NodaTime;

namespace Evengrist.Records.Bins;

/// <summary>What storage does to the wheat in the bins, from the ledger, the shapes of bins and the equilibrium constants that a mill keeps; bins are supposed to empty first in first out.</summary>
public static class StoredWheat
{
    /// <summary>Every wheat bin in which anything lies, the ones to look at first in front, with the constants used and their version; 0 is the program's own.</summary>
    public static (IReadOnlyList<BinRisk> Bins, EmcTable Table, int Version) Of(Mill mill, Instant at)
    {
        ArgumentNullException.ThrowIfNull(mill);
        var (table, version, _) = KeepEmcConstants.Newest(mill);
        var shape = Shapes(mill);
        return (mill.Ask(view => Survey(view, at, table, shape).All()), table, version);
    }

    /// <summary>One bin, with the constants of its class; null where nothing lies in it.</summary>
    public static (BinRisk? Risk, EmcConstants? Constants) Of(Mill mill, string code, Instant at)
    {
        ArgumentNullException.ThrowIfNull(mill);
        var (table, _, _) = KeepEmcConstants.Newest(mill);
        var shape = Shapes(mill);
        return mill.Ask<(BinRisk?, EmcConstants?)>(view => view.Book.Find(code) is { Kind: PlaceKind.Bin } bin && view.Book.StockOf(bin.Id, at).Grams > 0
            ? (Survey(view, at, table, shape).Of(bin), table.OfClass(bin.Material)) : (null, null));
    }

    private static StorageSurvey Survey(MillView view, Instant at, EmcTable table, Func<Place, BinLevels?> shape)
    {
        var reckoning = view.Reckoning(Outflow.FirstInFirstOut);
        return new StorageSurvey(reckoning.At(at), new MakeupModel(view.Book, reckoning.Parcels), view.Book, table) { Shape = shape };
    }

    private static Func<Place, BinLevels?> Shapes(Mill mill)
    {
        var shapes = Newest(mill, BinPapers.Shape);
        var packs = Newest(mill, BinPapers.Calibration);
        return bin => shapes.TryGetValue(bin.Code, out var json) && BinPapers.TryReadShape(json, out var shape, out _)
            ? BinLevels.Of(shape, packs.TryGetValue(bin.Code, out var kept) && BinPapers.TryReadCalibration(kept, out var pack, out _) ? pack : PackFactor.FromMemory)
            : null;
    }

    private static Dictionary<string, string> Newest(Mill mill, string kind) =>
        mill.Papers(kind).All().GroupBy(p => p.Code, StringComparer.OrdinalIgnoreCase).ToDictionary(g => g.Key, g => g.MaxBy(p => p.Version)!.Json, StringComparer.OrdinalIgnoreCase);
}
