using System.Globalization;
using System.Text.Json;
using System.Text.RegularExpressions;

namespace Evengrist.Plant.Epcis;

/// <summary>Single values in the one form that the event hash takes.</summary>
internal static partial class HashValue
{
    /// <summary>A value whose member has no form of its own: trimmed; numbers without zeros that say nothing; identifiers canonical.</summary>
    public static string Of(JsonElement value) => value.ValueKind switch
    {
        JsonValueKind.String => OfText(value.GetString()!.Trim()),
        JsonValueKind.Number => OfNumber(value.GetRawText()),
        JsonValueKind.True => "true",
        JsonValueKind.False => "false",
        _ => "",
    };

    /// <summary>A time in UTC to the millisecond; what is none stays as it is.</summary>
    public static string OfTime(JsonElement value) => value.ValueKind == JsonValueKind.String && EventTime.Of(value.GetString()!.Trim()) is { } at ? EventTime.ToMilliseconds(at) : Of(value);

    /// <summary>A word of the vocabulary in its web form.</summary>
    public static string OfWord(JsonElement value, CbvWords words) => value.ValueKind == JsonValueKind.String ? CanonicalId.Of(words.Long(value.GetString()!.Trim())) : Of(value);

    // A number in quotes is a number too: in the XML binding of the standard nothing tells them apart.
    private static string OfText(string text) => PlainNumber().IsMatch(text) ? OfNumber(text) : CanonicalId.Of(text);

    private static string OfNumber(string text) =>
        decimal.TryParse(text, NumberStyles.Float, CultureInfo.InvariantCulture, out var exact) && (exact != 0 || !text.AsSpan().ContainsAnyInRange('1', '9')) ? exact.ToString("0.############################", CultureInfo.InvariantCulture)
        : double.TryParse(text, NumberStyles.Float, CultureInfo.InvariantCulture, out var near) ? near.ToString("R", CultureInfo.InvariantCulture) : text;

    [GeneratedRegex(@"\A[+-]?[0-9]+(?:\.[0-9]*)?\z", RegexOptions.NonBacktracking)]
    private static partial Regex PlainNumber();
}
