namespace Evengrist.Tracing.Bounds;

/// <summary>Grams of what was traced that lie in something for certain, and grams that can lie in it at most, however grain leaves its stores.</summary>
/// <param name="Least">At least so much; grams as it lay when it was first suspect, at least 0.</param>
/// <param name="Most">At most so much; grams, at least <paramref name="Least"/>.</param>
public sealed record Bound(double Least, double Most)
{
    /// <summary>Nothing at all.</summary>
    public static Bound None { get; } = new(0, 0);

    /// <summary>Whether as much as a gram can be in it.</summary>
    public bool IsPossible => Most >= 1;

    /// <summary>Bounds of both together.</summary>
    public static Bound operator +(Bound left, Bound right)
    {
        ArgumentNullException.ThrowIfNull(left);
        ArgumentNullException.ThrowIfNull(right);
        return new(left.Least + right.Least, left.Most + right.Most);
    }

    /// <summary>Bounds of both together.</summary>
    public static Bound Add(Bound left, Bound right) => left + right;

    /// <summary>Whether a figure lies within, give or take.</summary>
    /// <param name="grams">The figure.</param>
    /// <param name="slack">How far outside it may lie; grams.</param>
    public bool Holds(double grams, double slack = 0) => grams >= Least - slack && grams <= Most + slack;
}
