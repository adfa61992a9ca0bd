using System.Diagnostics;
using System.Globalization;
using Evengrist.Planning.Season;
using Evengrist.Season;

namespace Evengrist.Web.Sights.Season;

/// <summary>Planning that goes on while people look at other things; it can be stopped, and what it has found so far then stands.</summary>
public sealed class YearWork
{
    private readonly long began = Stopwatch.GetTimestamp();
    private volatile string stage = "Beginning";
    private TimeSpan? took;
    private Action? cancel;

    private YearWork()
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

    /// <summary>What came of it; null while it goes on.</summary>
    public SeasonOutcome? Outcome { get; private set; }

    /// <summary>Begins some work.</summary>
    /// <param name="plan">Plans, tells how far it is, and stops when asked to.</param>
    public static YearWork Begin(Func<IProgress<SeasonProgress>, CancellationToken, SeasonOutcome> plan)
    {
        ArgumentNullException.ThrowIfNull(plan);
        var stop = new CancellationTokenSource();
        var work = new YearWork { cancel = stop.Cancel };
        _ = Task.Run(() =>
        {
            using (stop)
            {
                work.Run(plan, stop.Token);
            }
        });
        return work;
    }

    /// <summary>Asks it to stop.</summary>
    public void Stop()
    {
        if (IsRunning)
        {
            IsStopping = true;
            cancel!();
        }
    }

    private void Run(Func<IProgress<SeasonProgress>, CancellationToken, SeasonOutcome> plan, CancellationToken stop)
    {
        try
        {
            Outcome = plan(new Telling(this), stop);
        }
        catch (Exception fault) when (fault is InvalidOperationException or ArgumentException)
        {
            Outcome = new SeasonFailed(SeasonExit.SolverFailed, fault.Message);
        }
        finally
        {
            took = Stopwatch.GetElapsedTime(began);
        }
    }

    private sealed class Telling(YearWork work) : IProgress<SeasonProgress>
    {
        public void Report(SeasonProgress value) => work.stage = double.IsNaN(value.Cost)
            ? value.Doing
            : string.Create(CultureInfo.InvariantCulture, $"{value.Doing}: the best so far costs {value.Cost:N0}, at most {100 * value.Gap:0.000} % above the least");
    }
}
