namespace Evengrist.Planning.Solving;

/// <summary>Demands that clash.</summary>
/// <param name="Demands">They clash; in the order they were given.</param>
/// <param name="IsSmallest">Whether none of them can be spared; false where time ran out before each was tried.</param>
internal sealed record Clashing<T>(IReadOnlyList<T> Demands, bool IsSmallest);
