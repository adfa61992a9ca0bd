using System.Diagnostics.CodeAnalysis;

namespace Evengrist.Packing.Codes;

/// <summary>The number of a trade item (a bag, a bale, a case), as 14 digits with its check digit.</summary>
/// <remarks>Numbers of 8, 12 and 13 digits are the same number with noughts before it. Source: GS1 General Specifications, from memory.</remarks>
public sealed record Gtin
{
    /// <summary>How many digits the full form has.</summary>
    public const int Length = 14;

    private Gtin(string digits) => Digits = digits;

    /// <summary>The 14 digits.</summary>
    public string Digits { get; }

    /// <summary>Reads a number of 8, 12, 13 or 14 digits; spaces round it do not matter.</summary>
    /// <param name="text">What was typed or scanned.</param>
    /// <param name="gtin">The number.</param>
    /// <param name="refusal">What is wrong and what to do.</param>
    public static bool TryParse(string? text, [NotNullWhen(true)] out Gtin? gtin, [NotNullWhen(false)] out string? refusal)
    {
        var word = (text ?? "").Trim();
        refusal = CheckDigit.Refusal(word, "trade item number (GTIN)", 8, 12, 13, 14);
        gtin = refusal is null ? new Gtin(word.PadLeft(Length, '0')) : null;
        return gtin is not null;
    }

    /// <summary>The number of a packing of the same item: the same digits under another indicator.</summary>
    /// <param name="indicator">1 to 9.</param>
    /// <exception cref="ArgumentOutOfRangeException">The indicator is not 1 to 9.</exception>
    public Gtin Packed(int indicator)
    {
        ArgumentOutOfRangeException.ThrowIfLessThan(indicator, 1);
        ArgumentOutOfRangeException.ThrowIfGreaterThan(indicator, 9);
        return OfBody((char)('0' + indicator) + Digits[1..^1]);
    }

    /// <summary>The 14 digits.</summary>
    public override string ToString() => Digits;

    internal static Gtin OfBody(string body) => new(CheckDigit.Complete(body));
}
