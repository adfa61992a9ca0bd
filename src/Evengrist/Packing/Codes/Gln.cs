using System.Diagnostics.CodeAnalysis;

namespace Evengrist.Packing.Codes;

/// <summary>The number of a party or a location, such as the mill, a dock or a bin: 13 digits with its check digit.</summary>
/// <remarks>Source: GS1 General Specifications, from memory.</remarks>
public sealed record Gln
{
    /// <summary>How many digits it has.</summary>
    public const int Length = 13;

    private Gln(string digits) => Digits = digits;

    /// <summary>The 13 digits.</summary>
    public string Digits { get; }

    /// <summary>Reads 13 digits; spaces round them do not matter.</summary>
    /// <param name="text">What was typed or scanned.</param>
    /// <param name="gln">The number.</param>
    /// <param name="refusal">What is wrong and what to do.</param>
    public static bool TryParse(string? text, [NotNullWhen(true)] out Gln? gln, [NotNullWhen(false)] out string? refusal)
    {
        var word = (text ?? "").Trim();
        refusal = CheckDigit.Refusal(word, "location number (GLN)", Length);
        gln = refusal is null ? new Gln(word) : null;
        return gln is not null;
    }

    /// <summary>The 13 digits.</summary>
    public override string ToString() => Digits;

    internal static Gln OfBody(string body) => new(CheckDigit.Complete(body));
}
