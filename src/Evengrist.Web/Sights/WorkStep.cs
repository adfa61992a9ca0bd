namespace Evengrist.Web.Sights;

/// <summary>How far some work is.</summary>
/// <param name="Words">What is being done.</param>
/// <param name="Share">How much of it is done, 0 to 1; null where that cannot be said.</param>
public sealed record WorkStep(string Words, double? Share);
