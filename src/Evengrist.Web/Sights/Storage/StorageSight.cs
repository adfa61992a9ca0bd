using Evengrist.Bins.Storage;
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
        var (bins, table, version) = StoredWheat.Of(mill, at);
        return new StorageSight(bins, table, version);
    }

    /// <summary>Looks at one bin, with the constants of its class; null where nothing lies in it.</summary>
    public static (BinRisk? Risk, EmcConstants? Constants) Of(Mill mill, string code, Instant at) => StoredWheat.Of(mill, code, at);

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
}
