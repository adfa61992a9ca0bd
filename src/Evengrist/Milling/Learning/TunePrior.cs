using Evengrist.Milling.Sheet;
using Evengrist.Milling.Stock;
using MathNet.Numerics.LinearAlgebra;

namespace Evengrist.Milling.Learning;

/// <summary>What is thought of a mill before anything was measured in it: every factor 1, its spread in part its own, in part shared with its like. The spreads are ours.</summary>
internal static class TunePrior
{
    /// <summary>Everything tuning can find of a flow sheet, in a fixed order.</summary>
    public static IReadOnlyList<TuneKey> Keys(FlowSheet sheet)
    {
        string[] parts = [.. Enum.GetNames<KernelPart>()];
        return
        [
            new TuneKey(TuneKind.FirstBreak, sheet.FirstBreak),
            .. sheet.Passages.Where(p => Grinds(p) && p.Code != sheet.FirstBreak).Select(p => new TuneKey(TuneKind.Nip, p.Code)),
            .. sheet.Passages.Where(p => Grinds(p) && p.Code != sheet.FirstBreak).Select(p => new TuneKey(TuneKind.Bran, p.Code)),
            .. sheet.Passages.SelectMany(p => p.Cloths.Select((_, i) => new TuneKey(TuneKind.Cut, p.Code, i + (p.Lifted.Count > 0 ? 1 : 0)))),
            .. sheet.Passages.Where(p => p.AirMetresPerSecond is not null).Select(p => new TuneKey(TuneKind.Air, p.Code)),
            .. parts.Select(p => new TuneKey(TuneKind.Ash, p)), .. parts.Select(p => new TuneKey(TuneKind.Protein, p)),
        ];
    }

    /// <summary>Covariance of the logarithms before data.</summary>
    public static Matrix<double> Covariance(FlowSheet sheet, IReadOnlyList<TuneKey> keys)
    {
        var kinds = sheet.Passages.ToDictionary(p => p.Code, p => p.Rolls switch { null => 0, { IsFluted: true } => 1, _ => 2 }, StringComparer.Ordinal);
        return Matrix<double>.Build.Dense(keys.Count, keys.Count, (i, j) => Of(keys[i], keys[j], i == j, kinds));
    }

    private static bool Grinds(Passage passage) => passage.Rolls is not null || passage.Kind is PassageKind.Finishing;

    private static double Of(TuneKey one, TuneKey other, bool same, Dictionary<string, int> kinds)
    {
        var (own, shared) = one.Kind switch
        {
            TuneKind.Nip => (0.20, 0.20), TuneKind.Bran => (0.30, 0.40), TuneKind.Cut => (0.05, 0.02), TuneKind.Air => (0.12, 0.08), TuneKind.FirstBreak => (0.20, 0),
            TuneKind.Ash => one.Where == nameof(KernelPart.Bran) ? (0.08, 0) : (0.15, 0), _ => one.Where == nameof(KernelPart.OuterEndosperm) ? (0.20, 0) : (0.08, 0.0),
        };
        var alike = one.Kind == other.Kind && (one.Kind is not (TuneKind.Nip or TuneKind.Bran) || kinds[one.Where] == kinds[other.Where]);
        return (same ? own * own : 0) + (alike ? shared * shared : 0);
    }
}
