using MathNet.Numerics.LinearAlgebra;

namespace Evengrist.Milling.Clock;

/// <summary>Finds dead time and stirred time of a way from readings before and after a change, by weighted least squares.</summary>
/// <remarks>
/// value = before + (after − before) · share of new. For each dead time and stirred time before and after follow by straight least squares, so that only two numbers are searched: over a grid, then ever finer about the best.
/// Covariance from the slopes there. Model: docs/model/arrival-clock.md.
/// </remarks>
public static class StepFit
{
    private const int LeastReadings = 8;
    private const int LeastOnASide = 3;
    private const double LeastStep = 5;
    private const double MostUnsure = 0.25;
    private const int GridPoints = 24;
    private const int Refinements = 60;

    /// <summary>Lays the step, or says why the readings do not tell.</summary>
    /// <param name="points">Readings, in any order.</param>
    /// <param name="tanks">Into how many tanks the stirred time is parted, 1 to 20.</param>
    public static StepOutcome Of(IReadOnlyList<StepPoint> points, int tanks = 1)
    {
        ArgumentNullException.ThrowIfNull(points);
        if (Faults(points, tanks) is { Count: > 0 } faults)
        {
            return new StepNotFitted(faults);
        }

        StepPoint[] sorted = [.. points.OrderBy(p => p.Hours)];
        var (last, spacing) = (sorted[^1].Hours, Spacing(sorted));
        var best = Search(sorted, tanks, last, spacing / 4);
        var (delay, stirred, line) = (best.Delay, best.Stirred, best.Line);
        var curve = Curve(delay, stirred, tanks);
        string[] reasons =
        [
            .. sorted.Count(p => curve.At(p.Hours) < 0.05) < LeastOnASide || sorted.Count(p => curve.At(p.Hours) > 0.95) < LeastOnASide
                ? ["The step is not whole within the readings: at least three before the new arrives and three after all of it has are needed. Take readings for longer, or choose an earlier change."] : Array.Empty<string>(),
            .. Math.Abs(line.Step) < LeastStep * line.StepUncertainty * Math.Max(1, Math.Sqrt(line.Squares / (sorted.Length - 4))) ? ["No step stands out of the scatter: choose a change that altered the wheat more, or another property."] : Array.Empty<string>(),
        ];
        if (reasons.Length > 0)
        {
            return new StepNotFitted(reasons);
        }

        var fitted = Fitted(sorted, tanks, best, spacing);
        return fitted.Stage.DelayUncertainty <= MostUnsure * (delay + stirred)
            ? fitted : new StepNotFitted(["The readings leave the dead time open: the step is too small for how they scatter, or none was read while the new arrived."]);
    }

    private static List<string> Faults(IReadOnlyList<StepPoint> points, int tanks)
    {
        var faults = new List<string>();
        if (points.Count < LeastReadings)
        {
            faults.Add($"There are {points.Count} readings: at least {LeastReadings} about a change are needed.");
        }

        if (points.Any(p => !double.IsFinite(p.Hours) || !double.IsFinite(p.Value) || !(p.StandardUncertainty > 0 && double.IsFinite(p.StandardUncertainty))))
        {
            faults.Add("Each reading needs a time, a value and an uncertainty above 0.");
        }

        if (points.Count > 0 && (points.Max(p => p.Hours) is not (> 0 and <= ClockStage.MostHours) || points.Min(p => p.Hours) < -ClockStage.MostHours))
        {
            faults.Add($"Readings lie within {ClockStage.MostHours} hours about the change, some after it.");
        }

        if (tanks is < 1 or > ClockStage.MostTanks)
        {
            faults.Add($"There are 1 to {ClockStage.MostTanks} tanks.");
        }

        return faults;
    }

    // The usual distance of one reading from the next: what is sharper than that cannot be told.
    private static double Spacing(StepPoint[] sorted)
    {
        double[] gaps = [.. sorted.Zip(sorted.Skip(1), (a, b) => b.Hours - a.Hours).Where(g => g > 0).Order()];
        return gaps.Length == 0 ? 1 : gaps[gaps.Length / 2];
    }

    private static (double Delay, double Stirred, Line Line) Search(StepPoint[] points, int tanks, double last, double leastStirred)
    {
        (double Delay, double Stirred, Line Line) At(double delay, double stirred) => (delay, stirred, Lay(points, Curve(delay, stirred, tanks)));
        var mostStirred = Math.Max(2 * leastStirred, last);
        double[] delays = [.. Enumerable.Range(0, GridPoints + 1).Select(i => last * i / GridPoints)];
        double[] times = [.. Enumerable.Range(0, GridPoints + 1).Select(i => leastStirred * Math.Pow(mostStirred / leastStirred, (double)i / GridPoints))];
        var best = delays.SelectMany(d => times.Select(t => At(d, t))).MinBy(f => f.Line.Squares);
        var (stepDelay, factor) = (last / GridPoints, Math.Pow(mostStirred / leastStirred, 1.0 / GridPoints));
        for (var i = 0; i < Refinements && stepDelay > 1e-6 * last; i++)
        {
            var (d, t) = (best.Delay, best.Stirred);
            var around = new[] { (d - stepDelay, t), (d + stepDelay, t), (d, t / factor), (d, t * factor), (d - stepDelay, t * factor), (d + stepDelay, t / factor) }
                .Where(p => p.Item1 >= 0 && p.Item1 <= last && p.Item2 >= leastStirred && p.Item2 <= mostStirred).Select(p => At(p.Item1, p.Item2)).MinBy(f => f.Line.Squares);
            if (around.Line is not null && around.Line.Squares < best.Line.Squares)
            {
                best = around;
            }
            else
            {
                (stepDelay, factor) = (stepDelay / 2, Math.Sqrt(factor));
            }
        }

        return best;
    }

    private static StepFitted Fitted(StepPoint[] points, int tanks, (double Delay, double Stirred, Line Line) best, double spacing)
    {
        var (delay, stirred, line) = best;
        var curve = Curve(delay, stirred, tanks);
        var (longer, wider, step) = (Curve(delay + (0.2 * spacing), stirred, tanks), Curve(delay, stirred + (0.2 * spacing), tanks), 0.2 * spacing);
        var slopes = Matrix<double>.Build.Dense(points.Length, 4, (r, c) => c switch
        {
            0 => 1 - curve.At(points[r].Hours), 1 => curve.At(points[r].Hours),
            2 => line.Step * (longer.At(points[r].Hours) - curve.At(points[r].Hours)) / step,
            _ => line.Step * (wider.At(points[r].Hours) - curve.At(points[r].Hours)) / step,
        } / points[r].StandardUncertainty);
        var covariance = slopes.TransposeThisAndMultiply(slopes).PseudoInverse();
        var scatter = Math.Sqrt(line.Squares / (points.Length - 4));
        var widened = Math.Max(1, scatter * scatter);

        // Where the step lies between one reading and the next, any time between them fits as well; the one found may lie at an end.
        var blur = stirred < spacing ? spacing * spacing / 3 : 0;
        return new StepFitted(
            new ClockStage("change to readings", delay, stirred) { DelayUncertainty = Math.Sqrt((widened * covariance[2, 2]) + blur), StirredUncertainty = Math.Sqrt((widened * covariance[3, 3]) + blur), Tanks = tanks },
            line.Before, line.Before + line.Step, Math.Sqrt(widened) * line.StepUncertainty, widened * covariance[2, 3], scatter, points.Length, stirred < spacing);
    }

    private static ArrivalCurve Curve(double delay, double stirred, int tanks) => new([new ClockStage("way", Math.Min(delay, ClockStage.MostHours), Math.Min(stirred, ClockStage.MostHours)) { Tanks = tanks }]);

    // Before and step by weighted straight least squares in the share of new.
    private static Line Lay(StepPoint[] points, ArrivalCurve curve)
    {
        var (sum, x, y, xx, xy) = (0.0, 0.0, 0.0, 0.0, 0.0);
        double[] shares = [.. points.Select(p => curve.At(p.Hours))];
        foreach (var (p, share) in points.Zip(shares))
        {
            var w = 1 / (p.StandardUncertainty * p.StandardUncertainty);
            (sum, x, y, xx, xy) = (sum + w, x + (w * share), y + (w * p.Value), xx + (w * share * share), xy + (w * share * p.Value));
        }

        var spread = (sum * xx) - (x * x);
        var step = spread > 1e-9 * sum * sum ? ((sum * xy) - (x * y)) / spread : 0;
        var before = (y - (step * x)) / sum;
        var squares = points.Zip(shares).Sum(p => Math.Pow((p.First.Value - before - (step * p.Second)) / p.First.StandardUncertainty, 2));
        return new Line(before, step, spread > 1e-9 * sum * sum ? Math.Sqrt(sum / spread) : double.PositiveInfinity, squares);
    }

    private sealed record Line(double Before, double Step, double StepUncertainty, double Squares);
}
