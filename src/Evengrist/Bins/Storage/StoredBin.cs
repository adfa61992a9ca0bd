using Evengrist.Ledger;
using NodaTime;

namespace Evengrist.Bins.Storage;

/// <summary>What is known of a bin's content, as far as storage goes.</summary>
/// <param name="Bin">The bin.</param>
/// <param name="Layers">What lies in it, bottom first.</param>
/// <param name="Cables">What its cables show.</param>
public sealed record StoredBin(Place Bin, IReadOnlyList<StoredLayer> Layers, IReadOnlyList<CableState> Cables)
{
    /// <summary>The trend of CO₂ in its air; null where that was never read.</summary>
    public CarbonDioxideTrend? CarbonDioxide { get; init; }

    /// <summary>The newest look for live insects; null where nobody looked.</summary>
    public InsectCheck? Insects { get; init; }

    /// <summary>When air was last blown through it, dated at its end; null where that was never recorded.</summary>
    public Happening? LastAerated { get; init; }

    /// <summary>How the heights of its layers were found, in words.</summary>
    public string LevelsBy { get; init; } = "";

    /// <summary>Tonnes in all.</summary>
    public double Tonnes => Layers.Sum(l => l.Tonnes);
}

/// <summary>A look for live insects in a sample.</summary>
/// <param name="At">When.</param>
/// <param name="Weevils">Live weevils in the sample.</param>
/// <param name="Others">Other live insects of stored grain in the sample.</param>
public sealed record InsectCheck(Instant At, int Weevils, int Others)
{
    /// <summary>The newest look on a bin up to a moment; null where nobody looked.</summary>
    public static InsectCheck? Of(Book book, PlaceId bin, Instant at)
    {
        ArgumentNullException.ThrowIfNull(book);
        Reading[] read = [.. book.ReadingsOn(bin).Where(r => r.What is Property.LiveWeevils or Property.OtherLiveInsects && r.At <= at)];
        return read.Length == 0 ? null : new InsectCheck(read[^1].At, Count(read, Property.LiveWeevils), Count(read, Property.OtherLiveInsects));
    }

    private static int Count(Reading[] read, Property what) => (int?)read.LastOrDefault(r => r.What == what && r.At == read[^1].At)?.Value ?? 0;
}
