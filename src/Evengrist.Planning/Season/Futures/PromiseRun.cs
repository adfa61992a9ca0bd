using System.Diagnostics;
using Evengrist.Season.Futures;

namespace Evengrist.Planning.Season.Futures;

/// <summary>Reckons the futures of a plan on all cores, with progress, until done or stopped. Model: docs/model/season-promise.md.</summary>
public static class PromiseRun
{
    /// <summary>Fewest futures that a promise is made of when somebody stops it [design].</summary>
    public const int FewestFutures = 100;

    /// <summary>Reckons.</summary>
    /// <param name="spec">What is asked.</param>
    /// <param name="cores">How many at once; all there are where null. The answer does not depend on it.</param>
    /// <param name="progress">Is told how many futures are done, now and then.</param>
    /// <param name="stop">Ends it; what is done by then is counted if there is enough of it.</param>
    public static PromiseOutcome Reckon(FuturesSpec spec, int? cores = null, IProgress<int>? progress = null, CancellationToken stop = default)
    {
        ArgumentNullException.ThrowIfNull(spec);
        if (cores is < 1)
        {
            throw new ArgumentOutOfRangeException(nameof(cores), cores, "At least one core is needed.");
        }

        if (FuturesFaults.Of(spec) is { Count: > 0 } faults)
        {
            return new NotPromised(faults);
        }

        var (began, frame, years, done) = (Stopwatch.GetTimestamp(), new FutureFrame(spec), new FutureYear?[spec.Futures], 0);
        var tell = Math.Max(1, spec.Futures / 50);
        try
        {
            Parallel.For(0, spec.Futures, new ParallelOptions { MaxDegreeOfParallelism = cores ?? Environment.ProcessorCount, CancellationToken = stop }, i =>
            {
                years[i] = FutureMill.Run(frame, FutureModel.Draw(frame, i));
                var count = Interlocked.Increment(ref done);
                if (count % tell == 0 || count == spec.Futures)
                {
                    progress?.Report(count);
                }
            });
        }
        catch (OperationCanceledException)
        {
            // Only an unbroken run from the first future on is counted: which ones were quick must not choose.
        }

        FutureYear[] whole = [.. years.TakeWhile(y => y is not null).Select(y => y!)];
        return whole.Length == spec.Futures || whole.Length >= FewestFutures
            ? new Promised(PromiseModel.Of(spec, whole), Stopwatch.GetElapsedTime(began), whole.Length == spec.Futures)
            : new PromiseStopped(whole.Length);
    }
}
