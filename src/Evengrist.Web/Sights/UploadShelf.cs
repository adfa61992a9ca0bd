using Evengrist.Plant.Imports;
using NodaTime;

namespace Evengrist.Web.Sights;

/// <summary>Files that passed their dry run and wait for a person to confirm; in memory, a few, for a while.</summary>
public sealed class UploadShelf(IClock clock)
{
    private const int Most = 4;
    private static readonly Duration Keeps = Duration.FromMinutes(30);
    private readonly Lock gate = new();
    private readonly List<(string Key, Batch Batch, Instant Put)> waiting = [];

    /// <summary>Puts a batch by; the oldest makes room. Returns the key it is asked for with.</summary>
    public string Put(Batch batch)
    {
        var key = Guid.NewGuid().ToString("N");
        lock (gate)
        {
            Clear();
            if (waiting.Count == Most)
            {
                waiting.RemoveAt(0);
            }

            waiting.Add((key, batch, clock.GetCurrentInstant()));
        }

        return key;
    }

    /// <summary>Takes a batch back; null where it has gone.</summary>
    public Batch? Take(string? key)
    {
        lock (gate)
        {
            Clear();
            var index = waiting.FindIndex(w => w.Key == key);
            if (index < 0)
            {
                return null;
            }

            var batch = waiting[index].Batch;
            waiting.RemoveAt(index);
            return batch;
        }
    }

    private void Clear() => waiting.RemoveAll(w => clock.GetCurrentInstant() - w.Put > Keeps);
}
