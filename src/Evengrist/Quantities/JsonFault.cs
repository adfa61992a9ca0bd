using System.Text.Json;
using System.Text.RegularExpressions;

namespace Evengrist.Quantities;

/// <summary>What is wrong with JSON that a person wrote, in words a person can act on: where it stands and what to look for.</summary>
public static partial class JsonFault
{
    /// <summary>One sentence, on one line, for what the reader refused.</summary>
    /// <param name="fault">What it threw.</param>
    public static string Words(JsonException fault)
    {
        ArgumentNullException.ThrowIfNull(fault);
        var where = fault.LineNumber is { } line ? $"line {line + 1}, column {(fault.BytePositionInLine ?? 0) + 1}" : "";
        var path = fault.Path is { Length: > 1 } found ? found[2..] : "";

        // The reader throws a kind of its own where the text is no JSON at all, bare or wrapped.
        if (fault.GetType() != typeof(JsonException) || fault.InnerException is JsonException)
        {
            return $"It is no JSON at {where}: look for a comma, a quote, a colon or a bracket that is missing or too many there.";
        }

        if (Missing().Match(fault.Message) is { Success: true } missing)
        {
            return $"{(path.Length > 0 ? path + ": " : "")}{missing.Groups[1].Value.Replace("'", "", StringComparison.Ordinal)} must be there and is missing.";
        }

        if (Unknown().Match(fault.Message) is { Success: true } unknown)
        {
            return $"\"{unknown.Groups[1].Value}\"{(where.Length > 0 ? $" ({where})" : "")} is not known there. Is it spelt right?";
        }

        if (Twice().Match(fault.Message) is { Success: true } twice)
        {
            return $"\"{twice.Groups[1].Value}\"{(where.Length > 0 ? $" ({where})" : "")} stands twice. Keep one.";
        }

        if (Kind().Match(fault.Message) is { Success: true } kind)
        {
            return $"{(path.Length > 0 ? path : "What stands there")}{(where.Length > 0 ? $" ({where})" : "")}: \"{kind.Groups[1].Value}\" is no kind that is known there.";
        }

        if (Null().Match(fault.Message) is { Success: true } none)
        {
            return $"\"{JsonNamingPolicy.CamelCase.ConvertName(none.Groups[1].Value)}\"{(where.Length > 0 ? $" ({where})" : "")} is null and has to be something: give its value.";
        }

        return fault.Message.StartsWith("The JSON value could not be converted", StringComparison.Ordinal)
            ? $"{(path.Length > 0 ? path : "What stands there")} ({where}): what was read is not of the kind that belongs there. A number stands without quotes, a word is one of those named."
            : Tail().Replace(fault.Message.ReplaceLineEndings(" "), "");
    }

    [GeneratedRegex("missing required properties including: (.+?)\\.(?: Path:|$)", RegexOptions.CultureInvariant)]
    private static partial Regex Missing();

    [GeneratedRegex("The JSON property '([^']*)' could not be mapped", RegexOptions.CultureInvariant)]
    private static partial Regex Unknown();

    [GeneratedRegex("Duplicate property '([^']*)'", RegexOptions.CultureInvariant)]
    private static partial Regex Twice();

    [GeneratedRegex("'([^']*)' on type '[^']*' doesn't allow (?:setting )?null values", RegexOptions.CultureInvariant)]
    private static partial Regex Null();

    [GeneratedRegex("unrecognized type discriminator id '([^']*)'", RegexOptions.CultureInvariant)]
    private static partial Regex Kind();

    [GeneratedRegex(" Path: .*$", RegexOptions.CultureInvariant)]
    private static partial Regex Tail();
}
