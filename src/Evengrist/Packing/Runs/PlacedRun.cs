namespace Evengrist.Packing.Runs;

/// <summary>A run in its place; times are minutes from the start of the plan.</summary>
/// <param name="Run">The run.</param>
/// <param name="Line">Code of the line.</param>
/// <param name="Start">Start, changing over done.</param>
/// <param name="End">End.</param>
/// <param name="Before">What lies before it on the line.</param>
public sealed record PlacedRun(PackingRun Run, string Line, int Start, int End, Change Before)
{
    /// <summary>Minutes after its due time; 0 where it is in time.</summary>
    public int Late => Math.Max(0, End - Run.Due);

    /// <summary>What it has drawn from its bin by a time, tonnes: evenly while it runs.</summary>
    /// <param name="minute">Minutes from the start of the plan.</param>
    public double DrawnBy(int minute) => Run.Tonnes * Math.Clamp(minute - Start, 0, End - Start) / (End - Start);
}
