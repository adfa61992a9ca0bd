using System.Diagnostics.CodeAnalysis;

namespace Evengrist.Packing.Codes;

/// <summary>The number of one logistic unit, such as a pallet or a tanker load: 18 digits with its check digit, never two units alike.</summary>
/// <remarks>Carries no meaning besides who gave it. Not given again within a year of the unit's shipment. Source: GS1 General Specifications, from memory.</remarks>
public sealed record Sscc
{
    /// <summary>How many digits it has.</summary>
    public const int Length = 18;

    private Sscc(string digits) => Digits = digits;

    /// <summary>The 18 digits.</summary>
    public string Digits { get; }

    /// <summary>Reads 18 digits; spaces round them do not matter.</summary>
    /// <param name="text">What was typed or scanned.</param>
    /// <param name="sscc">The number.</param>
    /// <param name="refusal">What is wrong and what to do.</param>
    public static bool TryParse(string? text, [NotNullWhen(true)] out Sscc? sscc, [NotNullWhen(false)] out string? refusal)
    {
        var word = (text ?? "").Trim();
        refusal = CheckDigit.Refusal(word, "pallet number (SSCC)", Length);
        sscc = refusal is null ? new Sscc(word) : null;
        return sscc is not null;
    }

    /// <summary>The 18 digits.</summary>
    public override string ToString() => Digits;

    internal static Sscc OfBody(string body) => new(CheckDigit.Complete(body));
}
