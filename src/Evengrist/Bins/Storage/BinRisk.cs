using Evengrist.Ledger;
using NodaTime;

namespace Evengrist.Bins.Storage;

/// <summary>What storage does to a bin, with the reasons to look at it, the most pressing first. Advice.</summary>
/// <param name="Stored">What is known of its content.</param>
/// <param name="Layers">Its layers judged, bottom first.</param>
/// <param name="Reasons">The reasons; empty where these rules found none, which proves nothing.</param>
public sealed record BinRisk(StoredBin Stored, IReadOnlyList<LayerRisk> Layers, IReadOnlyList<RiskReason> Reasons)
{
    /// <summary>The bin.</summary>
    public Place Bin => Stored.Bin;

    /// <summary>The most pressing level.</summary>
    public RiskLevel Level => Reasons.Count == 0 ? RiskLevel.Nothing : Reasons.Max(r => r.Level);

    /// <summary>The greatest share of its time that any layer has used; 0 where none is known or all are drier than the equation reaches.</summary>
    public double MostUsed => Layers.Select(l => l.Life is { IsAtMost: false } life ? life.Used : 0).DefaultIfEmpty(0).Max();

    /// <summary>Judges a bin up to a moment.</summary>
    /// <param name="stored">What is known of its content.</param>
    /// <param name="constants">Equilibrium constants of its wheat; null where there are none.</param>
    /// <param name="at">The moment.</param>
    public static BinRisk Of(StoredBin stored, EmcConstants? constants, Instant at)
    {
        ArgumentNullException.ThrowIfNull(stored);
        LayerRisk[] layers = [.. stored.Layers.Select(l => LayerRisk.Of(l, constants, at))];
        return new BinRisk(stored, layers, [.. RiskRules.Of(stored, layers, constants, at).OrderByDescending(r => r.Level).ThenBy(r => r.Kind)]);
    }

    /// <summary>Bins in the order in which to look at them: by the most pressing level, by what presses, by how many reasons press so, by the life used, by code.</summary>
    public static IReadOnlyList<BinRisk> Ranked(IEnumerable<BinRisk> bins) =>
    [
        .. bins.OrderByDescending(b => b.Level).ThenBy(b => b.Reasons.Select(r => r.Kind).FirstOrDefault()).ThenByDescending(b => b.Reasons.Count(r => r.Level == b.Level)).ThenByDescending(b => b.MostUsed)
            .ThenBy(b => b.Bin.Code, StringComparer.OrdinalIgnoreCase),
    ];
}
