namespace Evengrist.Planning.Solving;

/// <summary>Why a solver stopped.</summary>
public enum ExitReason
{
    /// <summary>No better answer exists, to the solver's tolerance.</summary>
    Optimal,

    /// <summary>The answer is proven to lie within the gap asked for.</summary>
    GapReached,

    /// <summary>Time ran out; the answer, if there is one, holds but may not be the best.</summary>
    TimeReached,

    /// <summary>Somebody stopped it; the answer, if there is one, holds but may not be the best.</summary>
    Cancelled,

    /// <summary>The limits clash: no answer exists.</summary>
    Infeasible,

    /// <summary>The cost can fall without end: a price or a limit is missing.</summary>
    Unbounded,

    /// <summary>The solver gave up or answered nonsense.</summary>
    SolverFailed,
}
