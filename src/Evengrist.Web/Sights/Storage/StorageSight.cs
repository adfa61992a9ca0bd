using Evengrist.Bins;
using Evengrist.Bins.Shape;
using Evengrist.Bins.Storage;
using Evengrist.Ledger;
using Evengrist.Records;
using Evengrist.Records.Bins;
using NodaTime;

namespace Evengrist.Web.Sights.Storage;

/// <summary>Stored wheat at a moment: every wheat bin judged, the ones to look at first in front.</summary>
/// <param name="Bins">Bins in which wheat lies, ranked.</param>
/// <param name="Table">The equilibrium constants used.</param>
/// <param name="Version">Their version; 0 is the program's own.</param>
public sealed record StorageSight(IReadOnlyList<BinRisk> Bins, EmcTable Table, int Version)
{
    private const int ToldToday = 3;

    /// <summary>Bins with a reason to look or act.</summary>
    public IReadOnlyList<BinRisk> Named => [.. Bins.Where(b => b.Level >= RiskLevel.Look)];

    /// <summary>The others.</summary>
    public IReadOnlyList<BinRisk> Others => [.. Bins.Where(b => b.Level < RiskLevel.Look)];

    /// <summary>Looks at every wheat bin, supposed to empty first in first out.</summary>
    public static StorageSight Of(Mill mill, Instant at)
    {
        var (table, version, _) = KeepEmcConstants.Newest(mill);
        var shape = Shapes(mill);
        return new StorageSight(mill.Ask(view => Survey(view, at, table, shape).All()), table, version);
    }

    /// <summary>Looks at one bin, with the constants of its class; null where nothing lies in it.</summary>
    public static (BinRisk? Risk, EmcConstants? Constants) Of(Mill mill, string code, Instant at)
    {
        var (table, _, _) = KeepEmcConstants.Newest(mill);
        var shape = Shapes(mill);
        return mill.Ask<(BinRisk?, EmcConstants?)>(view => view.Book.Find(code) is { Kind: PlaceKind.Bin } bin && view.Book.StockOf(bin.Id, at).Grams > 0
            ? (Survey(view, at, table, shape).Of(bin), table.OfClass(bin.Material)) : (null, null));
    }

    /// <summary>What waits for a person, with the most pressing bins of the store after the holds and stops.</summary>
    public static IReadOnlyList<Waiting> Told(Mill mill, IReadOnlyList<Waiting> waiting, Instant at)
    {
        ArgumentNullException.ThrowIfNull(waiting);
        var named = Of(mill, at).Bins.Where(b => b.Reasons.Any(r => r.Level == RiskLevel.Act || (r.Level == RiskLevel.Look && r.Kind != RiskKind.NotRead))).ToArray();
        return
        [
            .. waiting.Where(w => w.Kind is Face.StateKind.Hold or Face.StateKind.Stop),
            .. named.Take(ToldToday).Select((b, i) => new Waiting(Face.StateKind.Watch, b.Bin,
                "in store: " + b.Reasons[0].Words + (i == ToldToday - 1 && named.Length > ToldToday ? $" (and {named.Length - ToldToday} more {(named.Length - ToldToday == 1 ? "bin" : "bins")}, see Bins, in store)" : ""), null)),
            .. waiting.Where(w => w.Kind is not (Face.StateKind.Hold or Face.StateKind.Stop)),
        ];
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
