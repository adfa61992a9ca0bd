using System.Globalization;
using Evengrist.Packing.Codes;

namespace Evengrist.Plant.Gs1;

/// <summary>A scanned or typed text of any kind, read: element string, line with brackets, link, EPC URI, a bare number of a pallet or item, or a code of the mill's own.</summary>
/// <param name="Keys">What it names; null where it cannot be read.</param>
/// <param name="Elements">Its elements; null where it is no text of GS1.</param>
/// <param name="Faults">Every fault with its place. Where the text may be a code of the mill's own, why it is none of GS1.</param>
public sealed record ScanReading(ScannedKeys? Keys, ElementString? Elements, IReadOnlyList<Fault> Faults)
{
    private const int LongestOwn = 80;

    private static readonly int[] ItemLengths = [8, 12, 13, 14];

    /// <summary>Reads a text. Never throws for what it reads.</summary>
    /// <param name="text">One scan; blanks and line ends round it do not matter.</param>
    /// <param name="year">This year, for the century of dates.</param>
    public static ScanReading Of(string? text, int year)
    {
        var word = (text ?? "").Trim(' ', '\t', '\r', '\n');
        if (word.Length == 0)
        {
            return new(null, null, [Fault.OfFile("", "a text: scan a label, or type what stands on it")]);
        }

        var isNumber = word.All(char.IsAsciiDigit);
        if (isNumber && word.Length == Sscc.Length)
        {
            return Sscc.TryParse(word, out var unit, out var refusal) ? new(new(word) { Unit = unit }, null, []) : new(null, null, [Fault.AtCharacter(word.Length, "", word[^1..], refusal)]);
        }

        if (isNumber && ItemLengths.Contains(word.Length))
        {
            return Gtin.TryParse(word, out var item, out var refusal) ? new(new(word) { Item = item }, null, []) : new(null, null, [Fault.AtCharacter(word.Length, "", word[^1..], refusal)]);
        }

        var read = ScannedText.Read(word, year, whole: false);
        return read.Ok ? new(KeysOf(word, read.Value, year), read.Value, [])
            : IsOfGs1(word) || word.Length > LongestOwn || word.Any(char.IsControl) ? new(null, null, read.Faults)
            : new(new(word) { Own = word }, null, read.Faults);
    }

    private static bool IsOfGs1(string word) => word[0] is ']' or '(' or ElementString.Separator || word.StartsWith("http", StringComparison.OrdinalIgnoreCase) || word.StartsWith("urn:", StringComparison.OrdinalIgnoreCase);

    // A key that the table's checks let through is read again as our own type: one place tells what a right key is.
    private static ScannedKeys KeysOf(string word, ElementString elements, int year)
    {
        var weight = elements.Elements.FirstOrDefault(e => e.Code.StartsWith("310", StringComparison.Ordinal));
        return new(word)
        {
            Unit = Sscc.TryParse(elements["00"], out var unit, out _) ? unit : null, Item = Gtin.TryParse(elements["01"] ?? elements["02"], out var item, out _) ? item : null, Lot = elements["10"], Serial = elements["21"],
            BestBefore = elements.Elements.FirstOrDefault(e => e.Code == "15") is { } date ? Meaning.Date(date, year) : null,
            Count = int.TryParse(elements["37"], NumberStyles.None, CultureInfo.InvariantCulture, out var count) ? count : null,
            NetKilograms = weight is null ? null : Meaning.Measure(weight),
        };
    }
}
