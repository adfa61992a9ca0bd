using System.Diagnostics.CodeAnalysis;
using System.Globalization;

namespace Evengrist.Packing.Codes;

/// <summary>The digits GS1 lent to a company: every number the mill gives begins with them. See docs/model/codes.md.</summary>
/// <remarks>
/// 4 to 12 digits. The shorter the prefix, the more numbers are left: 12 − n digits for trade items and locations, 16 − n for logistic units. Source: GS1 General Specifications,
/// from memory. 952 is GS1's demonstration prefix, used by the invented mill.
/// </remarks>
public sealed record CompanyPrefix
{
    private const int Shortest = 4, Longest = 12, ItemDigits = 12, UnitDigits = 16;

    private CompanyPrefix(string digits) => Digits = digits;

    /// <summary>The digits.</summary>
    public string Digits { get; }

    /// <summary>How many trade items it can number under one indicator.</summary>
    public long TradeItems => Power(ItemDigits - Digits.Length);

    /// <summary>How many locations it can number.</summary>
    public long Locations => Power(ItemDigits - Digits.Length);

    /// <summary>How many logistic units it can number under one extension digit; ten times as many in all.</summary>
    public long LogisticUnits => Power(UnitDigits - Digits.Length);

    /// <summary>Reads 4 to 12 digits; spaces round them do not matter.</summary>
    /// <param name="text">What was typed.</param>
    /// <param name="prefix">The prefix.</param>
    /// <param name="refusal">What is wrong and what to do.</param>
    public static bool TryParse(string? text, [NotNullWhen(true)] out CompanyPrefix? prefix, [NotNullWhen(false)] out string? refusal)
    {
        var word = (text ?? "").Trim();
        refusal = word.AsSpan().ContainsAnyExceptInRange('0', '9') || word.Length is < Shortest or > Longest
            ? FormattableString.Invariant($"A company prefix has {Shortest} to {Longest} digits and nothing else. It stands on the letter by which GS1 lent it.")
            : null;
        prefix = refusal is null ? new CompanyPrefix(word) : null;
        return prefix is not null;
    }

    /// <summary>The number of a trade item.</summary>
    /// <param name="reference">Which item of this prefix, from 0 below <see cref="TradeItems"/>.</param>
    /// <param name="indicator">0 for the item itself, 1 to 9 for packings.</param>
    /// <exception cref="ArgumentOutOfRangeException">The reference does not fit behind this prefix, or the indicator is not one digit.</exception>
    public Gtin TradeItem(long reference, int indicator = 0) => Gtin.OfBody(Digit(indicator, nameof(indicator)) + Digits + Behind(reference, ItemDigits, nameof(reference)));

    /// <summary>The number of a location or party.</summary>
    /// <param name="reference">Which of this prefix, from 0 below <see cref="Locations"/>.</param>
    /// <exception cref="ArgumentOutOfRangeException">The reference does not fit behind this prefix.</exception>
    public Gln Location(long reference) => Gln.OfBody(Digits + Behind(reference, ItemDigits, nameof(reference)));

    /// <summary>The number of a logistic unit.</summary>
    /// <param name="serial">Which unit, from 0 below <see cref="LogisticUnits"/>.</param>
    /// <param name="extension">One digit, free to choose.</param>
    /// <exception cref="ArgumentOutOfRangeException">The serial does not fit behind this prefix, or the extension is not one digit.</exception>
    public Sscc LogisticUnit(long serial, int extension = 0) => Sscc.OfBody(Digit(extension, nameof(extension)) + Digits + Behind(serial, UnitDigits, nameof(serial)));

    /// <summary>The digits.</summary>
    public override string ToString() => Digits;

    private static string Digit(int value, string name) => value is >= 0 and <= 9 ? value.ToString(CultureInfo.InvariantCulture) : throw new ArgumentOutOfRangeException(name, value, "One digit, 0 to 9.");

    private static long Power(int digits) => digits == 0 ? 1 : 10 * Power(digits - 1);

    private string Behind(long reference, int all, string name)
    {
        var room = all - Digits.Length;
        return reference >= 0 && reference < Power(room)
            ? room == 0 ? "" : reference.ToString(CultureInfo.InvariantCulture).PadLeft(room, '0')
            : throw new ArgumentOutOfRangeException(name, reference, $"Behind the prefix {Digits} there is room for {Power(room)} numbers, 0 to {Power(room) - 1}.");
    }
}
