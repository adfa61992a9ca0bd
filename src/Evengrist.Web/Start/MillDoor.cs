using Evengrist.Ledger;
using Evengrist.Records;

namespace Evengrist.Web.Start;

/// <summary>How far the opening of the mill has come.</summary>
/// <param name="Step">What is being done, in words.</param>
/// <param name="Share">How much of it is done, 0 to 1; null where nobody can say.</param>
public sealed record Opening(string Step, double? Share = null);

/// <summary>The mill behind its door: opened in the background, so that the first answer does not wait for it.</summary>
/// <param name="open">Opens the mill; runs once, on a thread of its own.</param>
public sealed class MillDoor(Func<Action<Opening>, Mill> open) : IHostedService, IDisposable
{
    // The first page comes before anything that it does not need.
    private static readonly TimeSpan FirstPage = TimeSpan.FromSeconds(2);

    private volatile Opening opening = new("Reading the records.");
    private volatile string? fault;
    private volatile Mill? mill;
    private volatile bool closing;

    /// <summary>How far it has come.</summary>
    public Opening Opening => opening;

    /// <summary>Why it could not be opened, and what to do; null where nothing is wrong.</summary>
    public string? Fault => fault;

    /// <summary>The open mill; null while it is being opened.</summary>
    public Mill? Mill => mill;

    // On a thread of its own, which dies with the program: a first start may be broken off at any moment, since facts are taken whole or not at all.
    public Task StartAsync(CancellationToken cancellationToken)
    {
        new Thread(Open) { IsBackground = true, Name = "opening the mill" }.Start();
        return Task.CompletedTask;
    }

    public Task StopAsync(CancellationToken cancellationToken)
    {
        closing = true;
        return Task.CompletedTask;
    }

    public void Dispose()
    {
        closing = true;
        mill?.Dispose();
    }

    // Whatever keeps the mill from opening is told on the page: the program stays up to say it.
    private void Open()
    {
        try
        {
            mill = open(now => opening = now);
        }
        catch (Exception trouble)
        {
            fault = trouble.Message;
            Console.Error.WriteLine($"The mill could not be opened: {trouble.Message}");
            return;
        }

        Warm(mill);
    }

    // What lies where and what came from what, reckoned before anybody asks: a piece at a time, so that whoever asks meanwhile waits for one piece only.
    private void Warm(Mill opened)
    {
        try
        {
            Thread.Sleep(FirstPage);
            foreach (var outflow in Enum.GetValues<Outflow>().Where(_ => !closing))
            {
                opened.Ask(view => view.Reckoning(outflow));
            }

            _ = closing || opened.Ask(view =>
            {
                view.Tracer().Warm(Parallel.Invoke);
                return true;
            });
        }
        catch (Exception trouble)
        {
            if (!closing)
            {
                Console.Error.WriteLine($"Nothing was reckoned ahead, so that the first question takes longer: {trouble.Message}");
            }
        }
    }
}
