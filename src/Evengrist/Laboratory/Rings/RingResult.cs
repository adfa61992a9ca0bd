namespace Evengrist.Laboratory.Rings;

/// <summary>One result of a ring test, in one unit and on one basis with all others.</summary>
/// <param name="Laboratory">Who read it.</param>
/// <param name="Sample">Of which sample: a mill's flour, a level.</param>
/// <param name="Value">What was read.</param>
public sealed record RingResult(string Laboratory, string Sample, double Value);
