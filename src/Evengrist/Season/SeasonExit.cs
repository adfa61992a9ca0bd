namespace Evengrist.Season;

/// <summary>Why planning stopped.</summary>
public enum SeasonExit
{
    /// <summary>No better plan exists, to the solver's tolerance.</summary>
    Optimal,

    /// <summary>The plan is proven to lie within the gap asked for.</summary>
    GapReached,

    /// <summary>Time ran out; the plan holds, but a better one may exist.</summary>
    TimeReached,

    /// <summary>Somebody stopped it; the plan holds, but a better one may exist.</summary>
    Cancelled,

    /// <summary>The limits clash.</summary>
    Infeasible,

    /// <summary>The cost could fall without end.</summary>
    Unbounded,

    /// <summary>The solver gave up, or its answer did not pass our own check.</summary>
    SolverFailed,
}
