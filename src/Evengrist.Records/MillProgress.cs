namespace Evengrist.Records;

/// <summary>How far opening has come.</summary>
/// <param name="Step">What is being done, in words.</param>
/// <param name="Done">How many are done.</param>
/// <param name="Total">Of how many; 0 where there is nothing to count.</param>
public readonly record struct MillProgress(string Step, long Done, long Total);
