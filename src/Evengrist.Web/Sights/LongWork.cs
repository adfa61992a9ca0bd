using System.Diagnostics;

namespace Evengrist.Web.Sights;

/// <summary>Reckoning that goes on while people look at other things; it can be stopped, and what it has found so far then stands.</summary>
public abstract class LongWork
{
    private readonly long began = Stopwatch.GetTimestamp();
    private volatile WorkStep step = new("Beginning", null);
    private Task running = Task.CompletedTask;
    private Action? cancel;
    private TimeSpan? took;

    private protected LongWork()
    {
    }

    /// <summary>How far it is.</summary>
    public WorkStep Step => step;

    /// <summary>Whether it still goes on.</summary>
    public bool IsRunning => took is null;

    /// <summary>Whether somebody has asked it to stop.</summary>
    public bool IsStopping { get; private set; }

    /// <summary>How long it took, or has taken so far.</summary>
    public TimeSpan Took => took ?? Stopwatch.GetElapsedTime(began);

    /// <summary>Begins some work that tells how far it is.</summary>
    /// <param name="reckon">Reckons, tells how far it is, and stops when asked to.</param>
    /// <param name="failed">What comes of it where it breaks off, from why.</param>
    public static LongWork<T> Begin<T>(Func<Action<WorkStep>, CancellationToken, T> reckon, Func<string, T> failed)
        where T : class
    {
        ArgumentNullException.ThrowIfNull(reckon);
        ArgumentNullException.ThrowIfNull(failed);
        var work = new LongWork<T>(reckon, failed);
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

    private protected abstract void Reckon(Action<WorkStep> tell, CancellationToken stop);

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
}

/// <summary>Reckoning in the background that ends with an outcome.</summary>
/// <typeparam name="T">What comes of it.</typeparam>
public sealed class LongWork<T> : LongWork
    where T : class
{
    private readonly Func<Action<WorkStep>, CancellationToken, T> reckon;
    private readonly Func<string, T> failed;

    internal LongWork(Func<Action<WorkStep>, CancellationToken, T> reckon, Func<string, T> failed) => (this.reckon, this.failed) = (reckon, failed);

    /// <summary>What came of it; null while it goes on.</summary>
    public T? Outcome { get; private set; }

    private protected override void Reckon(Action<WorkStep> tell, CancellationToken stop)
    {
        try
        {
            Outcome = reckon(tell, stop);
        }
        catch (Exception fault) when (fault is InvalidOperationException or ArgumentException)
        {
            Outcome = failed(fault.Message);
        }
    }
}
