using System.Diagnostics.CodeAnalysis;
using Evengrist.Laboratory.Lots;

namespace Evengrist.Packing.Codes;

/// <summary>A lot's code as it can be printed and scanned: at most 20 of the 82 characters (application identifier 10).</summary>
/// <remarks>
/// The mill's own design: flour, milling day and part of the day, <c>WB-251007-3</c>. A person reads it off a torn bag and the day is in it, so that a call at night finds the lot without
/// the computer. The design is by choice; the limit is GS1's.
/// </remarks>
public sealed record LotCode
{
    /// <summary>The most characters it may have.</summary>
    public const int Longest = 20;

    private LotCode(string text) => Text = text;

    /// <summary>The code.</summary>
    public string Text { get; }

    /// <summary>Takes the code of a lot of flour, if it can be printed.</summary>
    /// <param name="lot">The lot.</param>
    /// <param name="code">The code.</param>
    /// <param name="refusal">Why a symbol cannot hold it, and what to do.</param>
    public static bool TryOf(FlourLot lot, [NotNullWhen(true)] out LotCode? code, [NotNullWhen(false)] out string? refusal)
    {
        ArgumentNullException.ThrowIfNull(lot);
        return TryParse(lot.Code, out code, out refusal);
    }

    /// <summary>Takes a code as it stands in the ledger or was typed: not trimmed or changed, for what is printed must be what was meant.</summary>
    /// <param name="text">The code.</param>
    /// <param name="code">The code.</param>
    /// <param name="refusal">Why a symbol cannot hold it, and what to do.</param>
    public static bool TryParse(string? text, [NotNullWhen(true)] out LotCode? code, [NotNullWhen(false)] out string? refusal)
    {
        var word = text ?? "";
        refusal = Refusal(word);
        code = refusal is null ? new LotCode(word) : null;
        return code is not null;
    }

    /// <summary>The code.</summary>
    public override string ToString() => Text;

    private static string? Refusal(string word) => word.Length switch
    {
        0 => "There is no lot code. Without one a bag cannot be traced.",
        > Longest => FormattableString.Invariant($"The lot code has {word.Length} characters; a symbol holds {Longest}. Shorten the flour's code."),
        _ when LabelCharacters.FirstOther(word) is >= 0 and var at => FormattableString.Invariant(
            $"The lot code has a character at position {at + 1} that no symbol can hold. Use letters without accents, digits, and ! \" % & ' ( ) * + , - . / : ; < = > ? _ ; no space."),
        _ => null,
    };
}
