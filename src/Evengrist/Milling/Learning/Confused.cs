using Evengrist.Milling.Sheet;
using Evengrist.Milling.Stock;
using MathNet.Numerics.LinearAlgebra;

namespace Evengrist.Milling.Learning;

/// <summary>Two things the data so far cannot tell apart: one may be more and the other less with the same figures.</summary>
/// <param name="One">The one.</param>
/// <param name="Other">The other.</param>
/// <param name="Correlation">Correlation of what is thought of them, −1 to 1.</param>
/// <param name="Tells">Code of the passage whose release test would tell them apart best; null where none would by a tenth.</param>
public sealed record Confused(TuneKey One, TuneKey Other, double Correlation, string? Tells)
{
    // Below it the data do tell them apart in some measure [ours].
    private const double Least = 0.6;

    /// <summary>The pairs confused most, the strongest first; only what data moved at all, and nothing that was as much alike before any.</summary>
    /// <param name="sheet">The flow sheet.</param>
    /// <param name="wheat">The wheat.</param>
    /// <param name="tuning">What is known of the mill.</param>
    /// <param name="most">Most pairs.</param>
    public static IReadOnlyList<Confused> Of(FlowSheet sheet, MillWheat wheat, MillTuning tuning, int most = 3)
    {
        ArgumentNullException.ThrowIfNull(sheet);
        ArgumentNullException.ThrowIfNull(tuning);
        if (!tuning.IsTuned || most < 1)
        {
            return [];
        }

        var (after, before) = (tuning.Covariance, tuning.Prior);
        var figures = MillFigures.Of(sheet, wheat, tuning.Keys, tuning.Values, TestErrors.Usual);
        (string Passage, Figure Figure)[] releases = [.. NextTest.Releases(sheet, figures)];
        static double Alike(Matrix<double> of, int i, int j) => of[i, j] / Math.Sqrt(of[i, i] * of[j, j]);
        List<(int I, int J, double Alike)> pairs = [];
        for (var i = 0; i < tuning.Keys.Count; i++)
        {
            for (var j = i + 1; j < tuning.Keys.Count; j++)
            {
                var alike = Alike(after, i, j);
                if (Math.Abs(alike) >= Least && Math.Abs(alike - Alike(before, i, j)) > 0.3)
                {
                    pairs.Add((i, j, alike));
                }
            }
        }

        return [.. pairs.OrderByDescending(p => Math.Abs(p.Alike)).Take(most).Select(p => new Confused(tuning.Keys[p.I], tuning.Keys[p.J], p.Alike, Teller(p.I, p.J, p.Alike)))];

        // What the data leave open is the way in which the two make up for each other.
        string? Teller(int i, int j, double alike)
        {
            var open = Vector<double>.Build.Dense(tuning.Keys.Count, k => k == i ? 1 : k == j ? Math.Sign(alike) : 0);
            var spread = after * open;
            var (best, of) = releases.Select(r => (Told: Math.Pow(spread * r.Figure.Gradient, 2) / NextTest.Told(r.Figure, tuning), r.Passage)).DefaultIfEmpty((0, "")).Max();
            return best > 0.1 * (open * spread) ? of : null;
        }
    }
}
