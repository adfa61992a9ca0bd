namespace Evengrist.Ledger.Reckoned;

/// <summary>What a mark has caught: the parcels that left the place during the span.</summary>
internal sealed class MarkedOut(Mark mark)
{
    private readonly long from = mark.From.ToMicros();
    private readonly long until = mark.Until.ToMicros();

    public List<Layer> Parcels { get; } = [];

    /// <summary>The next edge of the span after a moment, so that no stretch lies across it.</summary>
    public long NextEdge(long now) => now < from ? from : now < until ? until : long.MaxValue;

    /// <summary>Whether what leaves the place in a stretch is marked; a stretch of no length is a load taken at once.</summary>
    public bool Holds(int place, long begin, long end) => place == mark.Place.Value && begin >= from && (begin == end ? begin < until : end <= until);
}
