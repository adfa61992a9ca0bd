using Evengrist.Ledger;
using NodaTime;

namespace Evengrist.Bins;

/// <summary>What was read of loads up to a moment; each load is looked up once.</summary>
/// <param name="book">The ledger.</param>
/// <param name="at">The moment.</param>
public sealed class LoadReadings(Book book, Instant at)
{
    private readonly Dictionary<PlaceId, LoadTest?> tests = [];
    private readonly Dictionary<PlaceId, LoadQuality> qualities = [];

    /// <summary>The test of a load's protein; null where there is none.</summary>
    public LoadTest? Test(PlaceId load)
    {
        if (!tests.TryGetValue(load, out var test))
        {
            tests.Add(load, test = LoadTest.Of(book, load, at));
        }

        return test;
    }

    /// <summary>What else was read of it.</summary>
    public LoadQuality Quality(PlaceId load)
    {
        if (!qualities.TryGetValue(load, out var quality))
        {
            qualities.Add(load, quality = LoadQuality.Of(book, load, at));
        }

        return quality;
    }
}
