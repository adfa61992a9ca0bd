using System.Diagnostics.CodeAnalysis;
using NodaTime;

namespace Evengrist.Packing.Rework;

/// <summary>Why a tote is rework, said by a named person. Kept as a paper by the code of the tote; what is said anew is the next version.</summary>
/// <param name="Tote">Code of the tote in the ledger.</param>
/// <param name="Reason">Why its flour was not sold.</param>
/// <param name="At">When that was said.</param>
/// <param name="By">The named person.</param>
public sealed record ToteRecord(string Tote, string Reason, Instant At, string By)
{
    /// <summary>Kind of its paper.</summary>
    public const string Kind = "rework-tote";

    private const int Longest = 300;

    /// <summary>Allergens beyond wheat that a person knows to be in it, besides those the ledger tells.</summary>
    public IReadOnlyList<string> Allergens { get; init; } = [];

    /// <summary>Whether this record is struck: it was wrong, and the one before does not count either.</summary>
    public bool IsStruck { get; init; }

    /// <summary>What is wrong, each a sentence; empty where nothing is.</summary>
    public IReadOnlyList<string> Faults() =>
    [
        .. string.IsNullOrWhiteSpace(Tote) ? ["Say which tote."] : Array.Empty<string>(), .. string.IsNullOrWhiteSpace(Reason) ? ["Say why."] : Array.Empty<string>(), .. string.IsNullOrWhiteSpace(By) ? ["Say who you are first: every record carries a name."] : Array.Empty<string>(),
        .. Reason is { Length: > Longest } || Reason?.Any(char.IsControl) == true ? [$"A reason is one line of at most {Longest} characters."] : Array.Empty<string>(), .. Allergens.Any(string.IsNullOrWhiteSpace) ? ["An allergen is a word: leave no empty one."] : Array.Empty<string>(),
    ];

    /// <summary>It as JSON.</summary>
    public string ToJson() => PackingJson.Write(this);

    /// <summary>Reads one; each fault a sentence.</summary>
    public static bool TryRead(string json, [NotNullWhen(true)] out ToteRecord? record, out IReadOnlyList<string> faults) => PackingJson.TryRead(json, r => r.Faults(), out record, out faults);
}
