using System.Diagnostics.CodeAnalysis;
using System.Security.Cryptography;

namespace Evengrist.Laboratory.Bake;

/// <summary>What is known of a photograph of a bake; the picture itself is kept once by its hash. Kept as a paper.</summary>
/// <param name="Bake">Code of the bake.</param>
/// <param name="Hash">SHA-256 of the picture's bytes, 64 hexadecimal digits.</param>
/// <param name="MediaType">Its type, found in its bytes.</param>
/// <param name="Bytes">How many bytes it has.</param>
/// <param name="Shows">What it shows, for those who do not see it.</param>
/// <param name="Withdrawn">Why it is no longer shown; empty while it is.</param>
public sealed record BakePhotograph(string Bake, string Hash, string MediaType, int Bytes, string Shows, string Withdrawn = "")
{
    /// <summary>The kind of paper it is kept as.</summary>
    public const string PaperKind = "bake-photograph";

    /// <summary>Longest text of what it shows.</summary>
    public const int LongestText = 300;

    /// <summary>The code it is kept under: one picture may be of several bakes.</summary>
    public string Code => $"{Bake} {Hash}";

    /// <summary>The hash of a picture.</summary>
    public static string HashOf(ReadOnlySpan<byte> bytes) => Convert.ToHexStringLower(SHA256.HashData(bytes));

    /// <summary>What is wrong, each a sentence; empty where nothing is.</summary>
    public IReadOnlyList<string> Faults() =>
    [
        .. Hash.Length == 64 && Hash.All(char.IsAsciiHexDigitLower) ? Array.Empty<string>() : ["A hash has 64 hexadecimal digits."],
        .. Shows.Trim().Length is >= 1 and <= LongestText ? Array.Empty<string>() : [$"Say what the photograph shows, in up to {LongestText} characters: those who do not see it read that."],
        .. Withdrawn.Length <= LongestText ? Array.Empty<string>() : [$"A reason has up to {LongestText} characters."],
    ];

    /// <summary>As JSON.</summary>
    public string ToJson() => LabJson.WriteShort(this);

    /// <summary>Reads a photograph's paper and checks it.</summary>
    /// <param name="json">The text.</param>
    /// <param name="photograph">The photograph; null where there is a fault.</param>
    /// <param name="faults">Each fault a sentence; empty where there is none.</param>
    public static bool TryRead(string json, [NotNullWhen(true)] out BakePhotograph? photograph, out IReadOnlyList<string> faults) => LabJson.TryRead(json, p => p.Faults(), out photograph, out faults);
}
