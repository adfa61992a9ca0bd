using System.Globalization;
using System.Text;

namespace Evengrist.Plant.Gs1.Links;

/// <summary>Characters written as % and two hexadecimal digits, as links and URIs have them (RFC 3986).</summary>
internal static class PercentText
{
    public const string Expected = "two hexadecimal digits of a plain character (ASCII) behind each %";

    /// <summary>The text meant; null where a % stands before anything but two digits of an ASCII character.</summary>
    public static string? Read(string written)
    {
        var text = new StringBuilder();
        for (var at = 0; at < written.Length; at++)
        {
            if (written[at] != '%')
            {
                text.Append(written[at]);
                continue;
            }

            if (at + 2 >= written.Length || !int.TryParse(written.AsSpan(at + 1, 2), NumberStyles.AllowHexSpecifier, CultureInfo.InvariantCulture, out var code) || code > 0x7e)
            {
                return null;
            }

            text.Append((char)code);
            at += 2;
        }

        return text.ToString();
    }

    /// <summary>All but what RFC 3986 leaves free written with %.</summary>
    public static string Write(string text) => Uri.EscapeDataString(text);

    /// <summary>Only what a URN keeps for itself, and %, written with %.</summary>
    public static string WriteInUrn(string text) => string.Concat(text.Select(c => "\"%&/<>?#".Contains(c, StringComparison.Ordinal) ? string.Create(CultureInfo.InvariantCulture, $"%{(int)c:X2}") : c.ToString()));
}
