namespace Evengrist.Planning.Solving;

/// <summary>One quantity to be chosen.</summary>
/// <param name="Name">A name of its own.</param>
/// <param name="Lower">Least value; may be −∞.</param>
/// <param name="Upper">Greatest value; may be +∞.</param>
/// <param name="Cost">Cost of one.</param>
/// <param name="IsWhole">Whether it has to be whole.</param>
public sealed record LinearColumn(string Name, double Lower, double Upper, double Cost, bool IsWhole);
