using NodaTime;

namespace Evengrist.Web.Sights;

/// <summary>Values that were looked at and wait for a person to confirm; in memory, a few, for half an hour.</summary>
/// <param name="clock">The time.</param>
public abstract class PutBy<T>(IClock clock)
    where T : class
{
    private const int Most = 4;
    private static readonly Duration Keeps = Duration.FromMinutes(30);
    private readonly Lock gate = new();
    private readonly List<(string Key, T Value, Instant Put)> waiting = [];

    /// <summary>Puts a value by; the oldest makes room. Returns the key it is asked for with.</summary>
    public string Put(T value)
    {
        var key = Guid.NewGuid().ToString("N");
        lock (gate)
        {
            Clear();
            if (waiting.Count == Most)
            {
                waiting.RemoveAt(0);
            }

            waiting.Add((key, value, clock.GetCurrentInstant()));
        }

        return key;
    }

    /// <summary>Takes a value back; null where it has gone.</summary>
    public T? Take(string? key)
    {
        lock (gate)
        {
            Clear();
            var index = waiting.FindIndex(w => w.Key == key);
            if (index < 0)
            {
                return null;
            }

            var value = waiting[index].Value;
            waiting.RemoveAt(index);
            return value;
        }
    }

    private void Clear() => waiting.RemoveAll(w => clock.GetCurrentInstant() - w.Put > Keeps);
}
