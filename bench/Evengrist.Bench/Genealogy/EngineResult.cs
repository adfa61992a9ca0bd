namespace Evengrist.Bench.Genealogy;

/// <summary>One line of the table.</summary>
/// <param name="Engine">Name and version.</param>
/// <param name="Load">Seconds from edges in memory to ready for questions, or why not.</param>
/// <param name="Megabytes">Held in memory by the rows, or on disk by a database; 10⁶ bytes.</param>
/// <param name="Back">From the packs of the query set back to all trucks.</param>
/// <param name="Forward">From the trucks of the query set forward to all packs.</param>
/// <param name="Answers">Whether the answers agree with ours.</param>
internal sealed record EngineResult(string Engine, string Load, double Megabytes, Part Back, Part Forward, string Answers);
