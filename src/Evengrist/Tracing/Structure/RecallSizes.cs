namespace Evengrist.Tracing.Structure;

/// <summary>How large a recall would be for each raw lot of a plan, and on the whole. Model: docs/model/lot-structure.md.</summary>
/// <param name="Each">RC of each raw lot: kilograms of all finished lots linked with it.</param>
/// <param name="Worst">The largest of them (WCRC), kg; 0 where there are none.</param>
/// <param name="Expected">Their mean when each raw lot is as likely to be the bad one (ARC, equal p), kg.</param>
/// <param name="ExpectedByMass">Their mean when a raw lot is the likelier to be bad the more it weighs (ARC, p in proportion to mass), kg.</param>
/// <param name="Links">Pairs of a raw and a finished lot.</param>
/// <remarks>Source: batch dispersion and recall cost as in "Food traceability systems: performance evaluation and optimization", Computers and Electronics in Agriculture 75 (2011) 139–146 (abstract read; symbols from memory).</remarks>
public sealed record RecallSizes(IReadOnlyList<double> Each, double Worst, double Expected, double ExpectedByMass, long Links)
{
    /// <summary>ΣDD + ΣUD: finished lots of each raw lot and raw lots of each finished one, all added; twice the links in any plan.</summary>
    public long Dispersion => 2 * Links;

    /// <summary>The sizes of a plan.</summary>
    /// <param name="raw">Kilograms of each raw lot; each above 0.</param>
    /// <param name="finished">Kilograms of each finished lot.</param>
    /// <param name="links">Which raw lot is in which finished one, each pair once.</param>
    public static RecallSizes Of(IReadOnlyList<double> raw, IReadOnlyList<double> finished, IEnumerable<(int Raw, int Finished)> links)
    {
        ArgumentNullException.ThrowIfNull(raw);
        ArgumentNullException.ThrowIfNull(finished);
        ArgumentNullException.ThrowIfNull(links);
        var each = new double[raw.Count];
        long count = 0;
        foreach (var (from, to) in links)
        {
            each[from] += finished[to];
            count++;
        }

        return Of(raw, each, count);
    }

    /// <summary>The sizes where those of each raw lot are known.</summary>
    /// <param name="raw">Kilograms of each raw lot; each above 0.</param>
    /// <param name="each">RC of each, kg.</param>
    /// <param name="links">Pairs of a raw and a finished lot.</param>
    public static RecallSizes Of(IReadOnlyList<double> raw, IReadOnlyList<double> each, long links)
    {
        ArgumentNullException.ThrowIfNull(raw);
        ArgumentNullException.ThrowIfNull(each);
        if (raw.Count != each.Count || raw.Any(m => !(m > 0)))
        {
            throw new ArgumentException("Each raw lot has a mass above 0 and one size.", nameof(raw));
        }

        return each.Count == 0 ? new([], 0, 0, 0, 0) : new(each, each.Max(), each.Average(), each.Zip(raw, (size, mass) => size * mass).Sum() / raw.Sum(), links);
    }
}
