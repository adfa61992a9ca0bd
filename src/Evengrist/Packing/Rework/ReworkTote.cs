namespace Evengrist.Packing.Rework;

/// <summary>A tote of flour to be fed back, as it is known.</summary>
/// <param name="Code">Its code.</param>
/// <param name="Flour">Its flour.</param>
/// <param name="Grams">What lies in it, g; 0 or more.</param>
/// <param name="AgeDays">Days since the first of it came in.</param>
public sealed record ReworkTote(string Code, string Flour, long Grams, double AgeDays)
{
    /// <summary>Other flours in it, where it is of more than one.</summary>
    public IReadOnlyList<string> AlsoOf { get; init; } = [];

    /// <summary>Allergens in it beyond wheat: of any part of it, under any hypothesis.</summary>
    public IReadOnlyList<string> Allergens { get; init; } = [];

    /// <summary>What of it is enriched in full, at least, a fraction.</summary>
    public double LeastEnriched { get; init; }

    /// <summary>What of it is enriched in full, at most, a fraction.</summary>
    public double MostEnriched { get; init; }

    /// <summary>Why it is rework; empty where nobody said.</summary>
    public string Reason { get; init; } = "";

    /// <summary>Why it is on hold; empty where it is not.</summary>
    public string Hold { get; init; } = "";

    /// <summary>What is wrong with it as a question, each a sentence.</summary>
    public IReadOnlyList<string> Faults() =>
    [
        .. string.IsNullOrWhiteSpace(Code) || string.IsNullOrWhiteSpace(Flour) ? ["A tote has a code and a flour."] : Array.Empty<string>(), .. Grams is >= 0 and <= 100_000_000 ? Array.Empty<string>() : [$"{Code}: a tote holds 0 to 100 t."],
        .. AgeDays is >= 0 and <= 36_500 ? Array.Empty<string>() : [$"{Code}: an age is 0 days or more."], .. LeastEnriched >= 0 && MostEnriched <= 1 && LeastEnriched <= MostEnriched ? Array.Empty<string>() : [$"{Code}: what is enriched of it is a fraction, the least no more than the most."],
    ];
}
