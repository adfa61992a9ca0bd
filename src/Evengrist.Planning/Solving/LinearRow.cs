namespace Evengrist.Planning.Solving;

/// <summary>One limit on a sum of columns.</summary>
/// <param name="Name">A name of its own.</param>
/// <param name="Lower">Least value; may be −∞.</param>
/// <param name="Upper">Greatest value; may be +∞.</param>
public sealed record LinearRow(string Name, double Lower, double Upper);
