namespace Evengrist.Packing.Runs;

/// <summary>One flour to be packed in one go; times are minutes from the start of the plan.</summary>
/// <param name="Code">What it is known by, its own in the plan.</param>
/// <param name="Flour">Code of the flour.</param>
/// <param name="Tonnes">How much, above 0.</param>
/// <param name="Due">When it should be done.</param>
/// <param name="Places">Lines that can pack it, and how long each takes.</param>
public sealed record PackingRun(string Code, string Flour, double Tonnes, int Due, IReadOnlyList<RunPlace> Places)
{
    /// <summary>Earliest start.</summary>
    public int Ready { get; init; }

    /// <summary>How much being late counts beside other runs, above 0.</summary>
    public double Weight { get; init; } = 1;

    /// <summary>The flour bin it is fed from; null where flour is always there.</summary>
    public string? Bin { get; init; }

    /// <summary>Where and when it stays whatever else is moved; null where it may be moved.</summary>
    public RunLock? Locked { get; init; }
}

/// <summary>A line that can pack a run.</summary>
/// <param name="Line">Code of the line.</param>
/// <param name="Minutes">How long it takes there, changing over not counted; at least 1.</param>
public sealed record RunPlace(string Line, int Minutes);

/// <summary>Where a run stays.</summary>
/// <param name="Line">Code of the line.</param>
/// <param name="Start">Start, minutes from the start of the plan.</param>
public sealed record RunLock(string Line, int Start);
