namespace Evengrist.Milling.Solving;

/// <summary>How solving a mill ended.</summary>
public enum MillExit
{
    /// <summary>Not said; never given.</summary>
    None = 0,

    /// <summary>Nothing moves any more and every part closes.</summary>
    Converged = 1,

    /// <summary>The most sweeps were made and stock still moved.</summary>
    SweepsSpent = 2,

    /// <summary>Stock goes round faster than it leaves: a loop hardly leaks.</summary>
    StockPilesUp = 3,

    /// <summary>Nothing moves, yet what leaves is not what entered.</summary>
    DoesNotClose = 4,
}

/// <summary>How solving a mill ended, and how well.</summary>
/// <param name="Exit">Why it ended.</param>
/// <param name="Sweeps">Sweeps over the loops, of the loop that took the most; 1 where there is none.</param>
/// <param name="Change">What moved in the last sweep, as a share of the wheat.</param>
/// <param name="Closure">Most that a part's products differ from its feed, as a share of the wheat.</param>
/// <param name="Where">Code of a passage of the loop that would not settle; null where all did.</param>
public sealed record MillReport(MillExit Exit, int Sweeps, double Change, double Closure, string? Where)
{
    /// <summary>Why there is no answer and what to do, in a sentence; null where it converged.</summary>
    public string? Unsolved => Exit switch
    {
        MillExit.Converged => null,
        MillExit.StockPilesUp => $"Stock goes round faster than it leaves in the loop of {Where}: lead more of an outlet out of it.",
        MillExit.SweepsSpent => $"The loop of {Where} still moved after {Sweeps} sweeps: it hardly leaks. Lead more of an outlet out of it.",
        _ => FormattableString.Invariant($"The mill was solved but does not close: {Closure:0.0e0} of the wheat is missing."),
    };
}
