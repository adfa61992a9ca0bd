namespace Evengrist.Milling.Suggesting;

/// <summary>What a miller wishes the mill did otherwise.</summary>
/// <param name="Figure">The figure to be moved.</param>
/// <param name="Raise">Whether it is to rise; else to fall.</param>
/// <param name="By">By how much, above 0, in the figure's unit; null for as much as possible.</param>
public sealed record Wish(WishFigure Figure, bool Raise, double? By)
{
    /// <summary>+1 where it is to rise, else −1.</summary>
    public int Sign => Raise ? 1 : -1;
}

/// <summary>A figure that has to stay within bounds while another is moved: bounds on its change, or on itself.</summary>
/// <param name="Figure">The figure.</param>
public sealed record KeptFigure(WishFigure Figure)
{
    /// <summary>Least change against now; null for none.</summary>
    public double? LeastChange { get; init; }

    /// <summary>Most change against now; null for none.</summary>
    public double? MostChange { get; init; }

    /// <summary>Least value; null for none.</summary>
    public double? Least { get; init; }

    /// <summary>Most value; null for none.</summary>
    public double? Most { get; init; }

    /// <summary>Whether the bounds are on the change against now.</summary>
    public bool IsOfChange => LeastChange is not null || MostChange is not null;

    internal IEnumerable<string> Faults()
    {
        var own = Least is not null || Most is not null;
        double?[] all = [LeastChange, MostChange, Least, Most];
        if (all.Any(x => x is { } n && !double.IsFinite(n)))
        {
            yield return $"The bounds of {Figure.Words} are finite numbers.";
        }
        else if (IsOfChange == own)
        {
            yield return own ? $"Bound either the change of {Figure.Words} or itself, not both at once." : $"Give {Figure.Words} a bound, or leave it out.";
        }
        else if (LeastChange > MostChange || Least > Most)
        {
            yield return $"The least of {Figure.Words} lies above its most: turn them round.";
        }
        else if (Least < 0 || Most < 0)
        {
            yield return $"{Figure.Words} cannot lie below 0: bound it at 0 or above.";
        }
    }
}
