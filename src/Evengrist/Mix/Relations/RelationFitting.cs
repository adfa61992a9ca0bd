using Evengrist.Ledger;
using Evengrist.Numerics;
using MathNet.Numerics.Distributions;

namespace Evengrist.Mix.Relations;

/// <summary>Lays the line of flour over wheat through a mill's own runs. Page: docs/model/mix.md.</summary>
public static class RelationFitting
{
    /// <summary>Fewer runs than this say nothing [design].</summary>
    public const int LeastRuns = 5;

    /// <summary>One flour and property.</summary>
    /// <param name="flour">Code of the flour.</param>
    /// <param name="what">The property.</param>
    /// <param name="points">Its runs, by time.</param>
    public static RelationFit Of(string flour, Property what, IReadOnlyList<RelationPoint> points)
    {
        ArgumentNullException.ThrowIfNull(points);
        if (points.Count < LeastRuns)
        {
            return new RelationNotFitted(flour, what, points, FormattableString.Invariant($"Too few: {points.Count} of at least {LeastRuns} runs with a sheet that says the wheat's {what.Words()} and readings of the flour's."));
        }

        // Wheat that differs by no more than it is unsure leaves a slope to chance.
        var mean = points.Average(p => p.Wheat);
        var spread = Math.Sqrt(points.Sum(p => (p.Wheat - mean) * (p.Wheat - mean)) / (points.Count - 1));
        var unsure = Math.Sqrt(points.Average(p => p.WheatUncertainty * p.WheatUncertainty));
        if (spread <= Math.Max(unsure, 1e-9))
        {
            return new RelationNotFitted(flour, what, points, FormattableString.Invariant($"The wheat hardly differed: its {what.Words()} spread by {spread:0.###} (one standard deviation) over {points.Count} runs and is itself known to ± {unsure:0.###}. Runs of weaker and stronger wheat are needed."));
        }

        var line = LineFit.Through([.. points.Select(p => new LinePoint(p.Wheat, p.Read, p.WheatUncertainty, p.ReadUncertainty))]);
        var (widening, coverage) = (Math.Max(1, line.Scatter), StudentT.InvCDF(0, 1, points.Count - 2, 0.975));
        var band = coverage * widening * line.SlopeError;
        var residual = Math.Sqrt(points.Sum(p => Math.Pow(p.Read - line.At(p.Wheat), 2)) / (points.Count - 2));
        return !double.IsFinite(line.Slope) || Math.Abs(line.Slope) <= band
            ? new RelationNotFitted(flour, what, points, FormattableString.Invariant($"The flour's {what.Words()} does not follow the wheat's: slope {line.Slope:0.##} ± {band:0.##}. Runs of weaker and stronger wheat, or more of them, may show it."))
            : new RelationFitted(flour, what, points, line, widening, coverage, residual);
    }
}
