namespace Evengrist.Ledger.Reckoned;

/// <summary>What marks have caught: the parcels that left the places during the spans.</summary>
internal sealed class MarkedOut(IReadOnlyList<Mark> marks)
{
    private readonly (int Place, long From, long Until)[] spans = [.. marks.Select(m => (m.Place.Value, m.From.ToMicros(), m.Until.ToMicros()))];

    public List<Layer> Parcels { get; } = [];

    /// <summary>The same marks, with nothing caught yet.</summary>
    public MarkedOut Anew() => new(marks);

    /// <summary>The next edge of a span after a moment, so that no stretch lies across it.</summary>
    public long NextEdge(long now)
    {
        var next = long.MaxValue;
        foreach (var (_, from, until) in spans)
        {
            next = Math.Min(next, now < from ? from : now < until ? until : long.MaxValue);
        }

        return next;
    }

    /// <summary>Whether what leaves the place in a stretch is marked; a stretch of no length is a load taken at once.</summary>
    public bool Holds(int place, long begin, long end)
    {
        foreach (var (marked, from, until) in spans)
        {
            if (place == marked && begin >= from && (begin == end ? begin < until : end <= until))
            {
                return true;
            }
        }

        return false;
    }
}
