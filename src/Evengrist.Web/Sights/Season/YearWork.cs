using System.Diagnostics;
using System.Globalization;
using Evengrist.Planning.Season;
using Evengrist.Season;

namespace Evengrist.Web.Sights.Season;

/// <summary>Reckoning that goes on while people look at other things; it can be stopped, and what it has found so far then stands.</summary>
public abstract class YearWork
{
    private readonly long began = Stopwatch.GetTimestamp();
    private volatile YearStep step = new("Beginning", null);
    private Task running = Task.CompletedTask;
    private Action? cancel;
    private TimeSpan? took;

    private protected YearWork()
    {
    }

    /// <summary>How far it is.</summary>
    public YearStep Step => step;

    /// <summary>Whether it still goes on.</summary>
    public bool IsRunning => took is null;

    /// <summary>Whether somebody has asked it to stop.</summary>
    public bool IsStopping { get; private set; }

    /// <summary>How long it took, or has taken so far.</summary>
    public TimeSpan Took => took ?? Stopwatch.GetElapsedTime(began);

    /// <summary>Begins some work that tells how far it is.</summary>
    /// <param name="reckon">Reckons, tells how far it is, and stops when asked to.</param>
    /// <param name="failed">What comes of it where it breaks off.</param>
    public static YearWork<T> Begin<T>(Func<Action<YearStep>, CancellationToken, T> reckon, Func<SeasonFailed, T> failed)
        where T : class
    {
        ArgumentNullException.ThrowIfNull(reckon);
        ArgumentNullException.ThrowIfNull(failed);
        var work = new YearWork<T>(reckon, failed);
        var stop = new CancellationTokenSource();
        work.cancel = stop.Cancel;
        work.running = Task.Run(() =>
        {
            using (stop)
            {
                work.Run(stop.Token);
            }
        });
        return work;
    }

    /// <summary>Begins some planning.</summary>
    /// <param name="plan">Plans, tells how far it is, and stops when asked to.</param>
    /// <param name="failed">What comes of it where it breaks off.</param>
    public static YearWork<T> Plan<T>(Func<IProgress<SeasonProgress>, CancellationToken, T> plan, Func<SeasonFailed, T> failed)
        where T : class
    {
        ArgumentNullException.ThrowIfNull(plan);
        return Begin((tell, stop) => plan(new Telling<SeasonProgress>(at => tell(new YearStep(Words(at), null))), stop), failed);
    }

    /// <summary>Waits a little: what is done soon is shown at once.</summary>
    public Task WaitAsync(TimeSpan longest) => Task.WhenAny(running, Task.Delay(longest));

    /// <summary>Asks it to stop.</summary>
    public void Stop()
    {
        if (IsRunning)
        {
            IsStopping = true;
            cancel!();
        }
    }

    private protected abstract void Reckon(Action<YearStep> tell, CancellationToken stop);

    private void Run(CancellationToken stop)
    {
        try
        {
            Reckon(at => step = at, stop);
        }
        finally
        {
            took = Stopwatch.GetElapsedTime(began);
        }
    }

    private static string Words(SeasonProgress at) => double.IsNaN(at.Cost)
        ? at.Doing
        : string.Create(CultureInfo.InvariantCulture, $"{at.Doing}: the best so far costs {at.Cost:N0}, at most {100 * at.Gap:0.000} % above the least");
}

/// <summary>Reckoning in the background that ends with an outcome.</summary>
/// <typeparam name="T">What comes of it.</typeparam>
public sealed class YearWork<T> : YearWork
    where T : class
{
    private readonly Func<Action<YearStep>, CancellationToken, T> reckon;
    private readonly Func<SeasonFailed, T> failed;

    internal YearWork(Func<Action<YearStep>, CancellationToken, T> reckon, Func<SeasonFailed, T> failed) => (this.reckon, this.failed) = (reckon, failed);

    /// <summary>What came of it; null while it goes on.</summary>
    public T? Outcome { get; private set; }

    private protected override void Reckon(Action<YearStep> tell, CancellationToken stop)
    {
        try
        {
            Outcome = reckon(tell, stop);
        }
        catch (Exception fault) when (fault is InvalidOperationException or ArgumentException)
        {
            Outcome = failed(new SeasonFailed(SeasonExit.SolverFailed, fault.Message));
        }
    }
}
