using System.Text.RegularExpressions;

namespace Evengrist.Plant.Epcis;

/// <summary>Whether a text has the form of a URI: a scheme, a colon, and only characters that may stand there, the others percent-encoded (RFC 3986).</summary>
internal static partial class UriForm
{
    public static bool IsUri(string text) => Form().IsMatch(text);

    [GeneratedRegex(@"\A[A-Za-z][A-Za-z0-9+.\-]*:(?:[A-Za-z0-9\-._~:/?#\[\]@!$&'()*+,;=]|%[0-9A-Fa-f]{2})*\z", RegexOptions.NonBacktracking)]
    private static partial Regex Form();
}
