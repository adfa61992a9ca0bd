namespace Evengrist.Plant.Answers;

/// <summary>An answer, or why there is none though the case could be read.</summary>
/// <param name="Answer">The answer; null where there is none.</param>
/// <param name="Reasons">Each a sentence that says what to do; empty where there is an answer.</param>
public sealed record Reply<T>(T? Answer, IReadOnlyList<string> Reasons)
    where T : class;
