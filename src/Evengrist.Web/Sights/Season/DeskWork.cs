using System.Diagnostics;
using System.Globalization;
using Evengrist.Planning.Season;
using Evengrist.Season;

namespace Evengrist.Web.Sights.Season;

/// <summary>Planning that goes on while people look at other things; it can be stopped, and what it has found so far then stands.</summary>
public abstract class DeskWork
{
    private readonly long began = Stopwatch.GetTimestamp();
    private volatile string stage = "Beginning";
    private Task running = Task.CompletedTask;
    private Action? cancel;
    private TimeSpan? took;

    private protected DeskWork()
    {
    }

    /// <summary>What is being done, in words.</summary>
    public string Stage => stage;

    /// <summary>Whether it still goes on.</summary>
    public bool IsRunning => took is null;

    /// <summary>Whether somebody has asked it to stop.</summary>
    public bool IsStopping { get; private set; }

    /// <summary>How long it took, or has taken so far.</summary>
    public TimeSpan Took => took ?? Stopwatch.GetElapsedTime(began);

    /// <summary>Begins some work.</summary>
    /// <param name="plan">Plans, tells how far it is, and stops when asked to.</param>
    /// <param name="failed">What comes of it where it breaks off.</param>
    public static DeskWork<TOutcome> Begin<TOutcome>(Func<IProgress<SeasonProgress>, CancellationToken, TOutcome> plan, Func<SeasonFailed, TOutcome> failed)
        where TOutcome : class
    {
        ArgumentNullException.ThrowIfNull(plan);
        ArgumentNullException.ThrowIfNull(failed);
        var work = new DeskWork<TOutcome>(plan, failed);
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

    private protected abstract void Work(IProgress<SeasonProgress> progress, CancellationToken stop);

    private void Run(CancellationToken stop)
    {
        try
        {
            Work(new Telling(this), stop);
        }
        finally
        {
            took = Stopwatch.GetElapsedTime(began);
        }
    }

    private sealed class Telling(DeskWork work) : IProgress<SeasonProgress>
    {
        public void Report(SeasonProgress value) => work.stage = double.IsNaN(value.Cost)
            ? value.Doing
            : string.Create(CultureInfo.InvariantCulture, $"{value.Doing}: the best so far costs {value.Cost:N0}, at most {100 * value.Gap:0.000} % above the least");
    }
}

/// <summary>Planning in the background that ends with an outcome.</summary>
/// <typeparam name="TOutcome">What comes of it.</typeparam>
public sealed class DeskWork<TOutcome> : DeskWork
    where TOutcome : class
{
    private readonly Func<IProgress<SeasonProgress>, CancellationToken, TOutcome> plan;
    private readonly Func<SeasonFailed, TOutcome> failed;

    internal DeskWork(Func<IProgress<SeasonProgress>, CancellationToken, TOutcome> plan, Func<SeasonFailed, TOutcome> failed) => (this.plan, this.failed) = (plan, failed);

    /// <summary>What came of it; null while it goes on.</summary>
    public TOutcome? Outcome { get; private set; }

    private protected override void Work(IProgress<SeasonProgress> progress, CancellationToken stop)
    {
        try
        {
            Outcome = plan(progress, stop);
        }
        catch (Exception fault) when (fault is InvalidOperationException or ArgumentException)
        {
            Outcome = failed(new SeasonFailed(SeasonExit.SolverFailed, fault.Message));
        }
    }
}
