using Evengrist.Records.Engines;

namespace Evengrist.Records.Opening;

/// <summary>The way into either database; whatever goes wrong on it is told in words that say what to do.</summary>
internal static class Doors
{
    public static T Open<T>(MillOptions options, Action<MillProgress>? progress, Func<Engine, T> open)
    {
        Engine? engine = null;
        try
        {
            engine = options.Path is { } path ? SqliteDoor.Open(path, progress) : PostgresDoor.Open(options.Postgres!, progress);
            return open(engine);
        }
        catch (Exception fault)
        {
            engine?.Dispose();
            if (fault is MillCannotOpen || Words(options, fault) is not { } words)
            {
                throw;
            }

            throw new MillCannotOpen(words, fault);
        }
    }

    private static string? Words(MillOptions options, Exception fault) =>
        options.Path is { } path ? SqliteDoor.Words(path, fault) : PostgresDoor.Words(options.Postgres!, fault);
}
