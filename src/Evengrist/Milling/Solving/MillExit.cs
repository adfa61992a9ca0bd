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
public sealed record MillReport(MillExit Exit, int Sweeps, double Change, double Closure, string? Where);
