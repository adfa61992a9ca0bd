namespace Evengrist.Laboratory.Samples;

/// <summary>What stands against taking a result as it is.</summary>
/// <param name="Words">In a sentence.</param>
/// <param name="IsQuestion">Whether a person may confirm it with a reason; false where it cannot be taken.</param>
public sealed record Objection(string Words, bool IsQuestion);
