namespace Evengrist.Planning.Streams;

/// <summary>How the best divide is looked for.</summary>
public sealed record DivideOptions
{
    /// <summary>Longest time of one solve; the best found until then is shown with its gap. What clashes is looked for for three times as long.</summary>
    public TimeSpan Longest { get; init; } = TimeSpan.FromSeconds(10);
}
