using System.Text.Json;
using System.Text.RegularExpressions;

namespace Evengrist.Plant.Epcis;

/// <summary>Looks at a value and notes what is wrong with it.</summary>
internal delegate void Shape(Part part, Faults faults);

/// <summary>The shapes of single values, lists and objects of which documents are made.</summary>
internal static partial class Shapes
{
    public static Shape Uri { get; } = Texts("a URI: scheme, colon, and nothing in it that would have to be percent-encoded", UriForm.IsUri);

    public static Shape Time { get; } = Texts("a date and time with its offset, such as 2025-07-09T14:05:00.000-06:00", t => EventTime.Of(t) is not null);

    public static Shape Offset { get; } = Texts("an offset from UTC such as +01:00 or -06:00; Z may not stand here", t => OffsetForm().IsMatch(t));

    public static Shape Text { get; } = Texts("a text", _ => true);

    public static Shape Unit { get; } = Texts("a unit code of UN/ECE Recommendation 20: two or three capital letters or digits, such as KGM", t => UnitForm().IsMatch(t));

    public static Shape Hexadecimal { get; } = Texts("hexadecimal digits", t => t.Length > 0 && t.All(char.IsAsciiHexDigit));

    public static Shape Action { get; } = Texts("OBSERVE, ADD or DELETE", t => t is "OBSERVE" or "ADD" or "DELETE");

    public static Shape Version { get; } = Texts("a version such as 2.0", t => VersionForm().IsMatch(t));

    public static Shape Number { get; } = OfKind("a number, not in quotes", JsonValueKind.Number);

    public static Shape Boolean { get; } = OfKind("true or false", JsonValueKind.True, JsonValueKind.False);

    public static Shape Anything { get; } = (_, _) => { };

    /// <summary>A word of the vocabulary, or a URI of somebody's own that is no older form of one.</summary>
    public static Shape Word(CbvWords words) => (part, faults) =>
    {
        if (part.IsText && part.Text.StartsWith("urn:epcglobal:cbv:", StringComparison.Ordinal))
        {
            faults.Add(part.Wrong($"{words.What}, as the bare word; the form urn:epcglobal:cbv: is of CBV 1"));
        }
        else if (!part.IsText || !(words.Words.Contains(part.Text) || UriForm.IsUri(part.Text)))
        {
            faults.Add(part.Wrong($"{words.What}, or a URI of your own vocabulary"));
        }
    };

    public static Shape Either(Shape one, Shape list) => (part, faults) => (part.Json.ValueKind == JsonValueKind.Array ? list : one)(part, faults);

    public static Shape ListOf(Shape item, int least = 0, bool once = false) => (part, faults) =>
    {
        if (part.Json.ValueKind != JsonValueKind.Array)
        {
            faults.Add(part.Wrong("a list"));
            return;
        }

        if (part.Json.GetArrayLength() < least)
        {
            faults.Add(part.Wrong($"a list of at least {least}"));
        }

        var seen = new HashSet<string>(StringComparer.Ordinal);
        foreach (var each in part.Items())
        {
            item(each, faults);
            if (once && each.IsText && !seen.Add(each.Text))
            {
                faults.Add(each.Wrong("each only once; it stands earlier in the list"));
            }
        }
    };

    private static Shape Texts(string expected, Func<string, bool> holds) => (part, faults) =>
    {
        if (!part.IsText || !holds(part.Text))
        {
            faults.Add(part.Wrong(expected));
        }
    };

    private static Shape OfKind(string expected, params JsonValueKind[] kinds) => (part, faults) =>
    {
        if (!kinds.Contains(part.Json.ValueKind))
        {
            faults.Add(part.Wrong(expected));
        }
    };

    [GeneratedRegex(@"\A[+-](?:(?:0[0-9]|1[0-3]):[0-5][0-9]|14:00)\z", RegexOptions.NonBacktracking)]
    private static partial Regex OffsetForm();

    [GeneratedRegex(@"\A[A-Z0-9]{2,3}\z", RegexOptions.NonBacktracking)]
    private static partial Regex UnitForm();

    [GeneratedRegex(@"\A[0-9]+(?:\.[0-9]+)*\z", RegexOptions.NonBacktracking)]
    private static partial Regex VersionForm();
}
