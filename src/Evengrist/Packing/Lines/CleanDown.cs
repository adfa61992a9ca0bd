using System.Diagnostics.CodeAnalysis;
using NodaTime;

namespace Evengrist.Packing.Lines;

/// <summary>A line cleaned down after an allergen, signed by a named person who may.</summary>
/// <param name="Line">Code of the line.</param>
/// <param name="After">Code of the product packed before.</param>
/// <param name="Allergens">What it was cleaned of.</param>
/// <param name="At">When it was clean.</param>
/// <param name="By">Who looked at it and signed.</param>
/// <param name="Method">How it was cleaned, in words.</param>
/// <param name="Minutes">How long it took.</param>
public sealed record CleanDown(string Line, string After, IReadOnlyList<string> Allergens, Instant At, string By, string Method, int Minutes)
{
    /// <summary>Kind of its paper.</summary>
    public const string PaperKind = "clean-down";

    /// <summary>What was found when it was verified, as swab or first flush; null while it waits.</summary>
    public CleanDownFinding? Verified { get; init; }

    /// <summary>Whether a verification found the allergen: the line is not clean.</summary>
    public bool IsRefuted => Verified is { IsClean: false };

    /// <summary>What is wrong with it, each a sentence that says what to do; empty where nothing is.</summary>
    public IReadOnlyList<string> Faults() =>
    [
        .. string.IsNullOrWhiteSpace(Line) ? ["Say which line was cleaned."] : Array.Empty<string>(),
        .. Allergens.Count == 0 ? ["Say what it was cleaned of."] : Array.Empty<string>(),
        .. string.IsNullOrWhiteSpace(By) ? ["A clean-down is signed by a named person."] : Array.Empty<string>(),
        .. string.IsNullOrWhiteSpace(Method) || Method.Length > 300 ? ["Say how it was cleaned, in at most 300 characters."] : Array.Empty<string>(),
        .. Minutes is >= 1 and <= 24 * 60 ? Array.Empty<string>() : [$"A clean-down takes 1 to 1440 minutes; read {Minutes}."],
        .. Verified is { } v && (string.IsNullOrWhiteSpace(v.By) || string.IsNullOrWhiteSpace(v.Words)) ? ["A verification says what was found, and by whom."] : Array.Empty<string>(),
    ];

    /// <summary>It as JSON.</summary>
    public string ToJson() => PackingJson.Write(this);

    /// <summary>Reads one and checks it; each fault a sentence.</summary>
    public static bool TryRead(string json, [NotNullWhen(true)] out CleanDown? clean, out IReadOnlyList<string> faults) => PackingJson.TryRead(json, c => c.Faults(), out clean, out faults);
}

/// <summary>What the laboratory found of a clean-down.</summary>
/// <param name="IsClean">Whether nothing of the allergen was found by the method used. No proof that there is none.</param>
/// <param name="Words">Method and result: <c>swab, soy strip, below 5 ppm</c>.</param>
/// <param name="By">Who recorded it.</param>
/// <param name="At">When it was found.</param>
public sealed record CleanDownFinding(bool IsClean, string Words, string By, Instant At);
