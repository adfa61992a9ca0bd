namespace Evengrist.Mix;

/// <summary>A bin that was not offered to the solver, with why.</summary>
/// <param name="Bin">Code.</param>
/// <param name="Reason">Why, in a sentence.</param>
public sealed record LeftOut(string Bin, string Reason);
