using System.Diagnostics;

namespace Evengrist.Web.Sights.Season;

/// <summary>Reckoning that goes on while people look at other things; it can be stopped, and what it has found so far then stands.</summary>
/// <typeparam name="T">What comes of it.</typeparam>
public sealed class YearWork<T>
    where T : class
{
    private readonly long began = Stopwatch.GetTimestamp();
    private volatile YearStep step = new("Beginning", null);
    private readonly Action cancel;
    private TimeSpan? took;

    internal YearWork(Func<Action<YearStep>, CancellationToken, T> reckon)
    {
        var stop = new CancellationTokenSource();
        cancel = stop.Cancel;
        _ = Task.Run(() =>
        {
            using (stop)
            {
                Run(reckon, stop.Token);
            }
        });
    }

    /// <summary>How far it is.</summary>
    public YearStep Step => step;

    /// <summary>Whether it still goes on.</summary>
    public bool IsRunning => took is null;

    /// <summary>Whether somebody has asked it to stop.</summary>
    public bool IsStopping { get; private set; }

    /// <summary>How long it took, or has taken so far.</summary>
    public TimeSpan Took => took ?? Stopwatch.GetElapsedTime(began);

    /// <summary>What came of it; null while it goes on, and where it failed.</summary>
    public T? Outcome { get; private set; }

    /// <summary>Why it failed; empty where it did not.</summary>
    public string Failure { get; private set; } = "";

    /// <summary>Asks it to stop.</summary>
    public void Stop()
    {
        if (IsRunning)
        {
            IsStopping = true;
            cancel();
        }
    }

    private void Run(Func<Action<YearStep>, CancellationToken, T> reckon, CancellationToken stop)
    {
        try
        {
            Outcome = reckon(at => step = at, stop);
        }
        catch (Exception fault) when (fault is InvalidOperationException or ArgumentException)
        {
            Failure = fault.Message;
        }
        finally
        {
            took = Stopwatch.GetElapsedTime(began);
        }
    }
}

/// <summary>Begins work that goes on by itself.</summary>
public static class YearWork
{
    /// <summary>Begins some.</summary>
    /// <param name="reckon">Reckons, tells how far it is, and stops when asked to.</param>
    public static YearWork<T> Begin<T>(Func<Action<YearStep>, CancellationToken, T> reckon)
        where T : class
    {
        ArgumentNullException.ThrowIfNull(reckon);
        return new YearWork<T>(reckon);
    }
}

/// <summary>How far some work is.</summary>
/// <param name="Words">What is being done.</param>
/// <param name="Share">How much of it is done, 0 to 1; null where that cannot be said.</param>
public sealed record YearStep(string Words, double? Share);
