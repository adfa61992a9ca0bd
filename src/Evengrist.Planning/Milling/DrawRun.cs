using System.Collections.Concurrent;
using System.Diagnostics;
using Evengrist.Milling.Draws;

namespace Evengrist.Planning.Milling;

/// <summary>Draws mills on all cores, with progress, until done or stopped. Model: docs/model/mill-tuning.md.</summary>
public static class DrawRun
{
    /// <summary>Draws.</summary>
    /// <param name="spec">What is asked.</param>
    /// <param name="cores">How many at once; all there are where null. The answer does not depend on it.</param>
    /// <param name="progress">Is told how many are drawn, now and then.</param>
    /// <param name="stop">Ends it; what is drawn by then counts if there is enough of it.</param>
    /// <exception cref="ArgumentException">A sheet or wheat has faults, or the tuning is of another flow sheet.</exception>
    public static DrawsOutcome Draw(DrawsSpec spec, int? cores = null, IProgress<int>? progress = null, CancellationToken stop = default)
    {
        ArgumentNullException.ThrowIfNull(spec);
        if (cores is < 1)
        {
            throw new ArgumentOutOfRangeException(nameof(cores), cores, "At least one core is needed.");
        }

        if (DrawsSpec.FaultOf(spec.Draws) is { } fault)
        {
            return new MillsNotDrawn([fault]);
        }

        var (began, frame) = (Stopwatch.GetTimestamp(), new DrawFrame(spec));
        if (frame.Unsolved.Count > 0)
        {
            return new MillsNotDrawn(frame.Unsolved);
        }

        var on = new ParallelOptions { MaxDegreeOfParallelism = cores ?? Environment.ProcessorCount, CancellationToken = stop };
        var (rows, drawn, done, tell) = (new double[]?[spec.Draws], new bool[spec.Draws], 0, Math.Max(1, spec.Draws / 50));
        try
        {
            // Handed out in small runs in order, so that little is lost where it is stopped.
            Parallel.ForEach(Partitioner.Create(0, spec.Draws, 8), on, frame.Room, (run, _, room) =>
            {
                for (var i = run.Item1; i < run.Item2; i++)
                {
                    (rows[i], drawn[i]) = (room.Draw(i), true);
                    var count = Interlocked.Increment(ref done);
                    if (count % tell == 0 || count == spec.Draws)
                    {
                        progress?.Report(count);
                    }
                }

                return room;
            }, _ => { });
        }
        catch (OperationCanceledException)
        {
            // Only an unbroken run from the first draw on counts: which ones were quick must not choose.
        }

        var whole = Array.IndexOf(drawn, false) is var first and >= 0 ? first : spec.Draws;
        double[][] solved = [.. rows.Take(whole).OfType<double[]>()];
        if (whole < spec.Draws && whole < DrawsSpec.Fewest)
        {
            return new DrawsStopped(whole);
        }

        if (solved.Length < DrawsSpec.Fewest)
        {
            return new MillsNotDrawn([$"Of {whole} mills drawn only {solved.Length} could be solved: a loop of the flow sheet hardly leaks. Lead more of an outlet out of it."]);
        }

        var figures = new DrawnFigure?[frame.Columns];
        Parallel.For(0, frame.Columns, new ParallelOptions { MaxDegreeOfParallelism = on.MaxDegreeOfParallelism }, k => figures[k] = DrawnFigure.Of(solved.Select(row => row[k])));
        return new MillsDrawn(frame.Of(figures, solved.Length, whole - solved.Length), Stopwatch.GetElapsedTime(began), whole == spec.Draws);
    }
}
