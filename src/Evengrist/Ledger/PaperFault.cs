using System.Globalization;
using System.Text.Json;
using System.Text.RegularExpressions;

namespace Evengrist.Ledger;

/// <summary>What is wrong with JSON that a person or a station wrote, in words: where it stands, what was expected, never a name of the program's own types.</summary>
/// <remarks>The sentences of the JSON reader are matched by their form; one of an unknown form is told by its place alone.</remarks>
public static partial class PaperFault
{
    /// <summary>The fault as a sentence that ends with what to do.</summary>
    /// <param name="fault">As the JSON reader threw it.</param>
    /// <param name="root">What was read into; tells which words a member may have. Null where that is not known.</param>
    public static string Of(JsonException fault, Type? root = null)
    {
        ArgumentNullException.ThrowIfNull(fault);
        var said = fault.Message;
        if (Unknown().Match(said) is { Success: true } unknown)
        {
            return $"{Place(fault)}no member is called \"{unknown.Groups[1].Value}\" here. Look for a typing error, or leave it out.";
        }

        if (Missing().Match(said) is { Success: true } missing)
        {
            return $"{Place(fault)}still needed: {missing.Groups[1].Value.Replace("'", "", StringComparison.Ordinal).TrimEnd('.')}.";
        }

        if (Twice().Match(said) is { Success: true } twice)
        {
            return $"{Place(fault)}\"{twice.Groups[1].Value}\" stands there twice: leave one of the two.";
        }

        if (NoNull().IsMatch(said))
        {
            return $"{Place(fault)}a value is wanted, and null is written. Write one, or leave the member out where it may be.";
        }

        return Wrong().Match(said) is { Success: true } wrong ? $"{Place(fault)}{Wanted(Asked(fault, wrong.Groups[1].Value, root))}."
            : fault.InnerException is JsonException || Syntax().IsMatch(said) ? $"{Line(fault)}this is no JSON. Look for a missing comma, quote or bracket there, or one too many."
            : said.Contains("Path:", StringComparison.Ordinal) || said.Contains("System.", StringComparison.Ordinal) || said.Contains("Evengrist.", StringComparison.Ordinal) ? $"{Place(fault)}what stands there cannot be read. Compare it with an example."
            : $"{Place(fault)}{said}";
    }

    private static string Line(JsonException fault) => string.Create(CultureInfo.InvariantCulture, $"Line {fault.LineNumber.GetValueOrDefault() + 1}: ");

    private static string Place(JsonException fault) =>
        fault.Path is { Length: > 2 } path && path.StartsWith("$.", StringComparison.Ordinal) ? string.Create(CultureInfo.InvariantCulture, $"{path[2..]} (line {fault.LineNumber.GetValueOrDefault() + 1}): ") : "";

    // The reader names the type it was at; where that is the whole object, its member is the last of the path.
    private static Type? Asked(JsonException fault, string name, Type? root)
    {
        var type = Type.GetType(name) ?? root?.Assembly.GetType(name) ?? typeof(PaperFault).Assembly.GetType(name);
        var member = fault.Path?.Split('.')[^1].Split('[')[0];
        var property = type is null || type.IsEnum || type.IsPrimitive || type == typeof(string) || type == typeof(decimal) ? null
            : type.GetProperties().FirstOrDefault(p => p.Name.Equals(member, StringComparison.OrdinalIgnoreCase));
        return property?.PropertyType ?? type;
    }

    private static string Wanted(Type? asked)
    {
        var type = asked is null ? null : Nullable.GetUnderlyingType(asked) ?? asked;
        return type switch
        {
            { IsEnum: true } => $"write one of {string.Join(", ", Enum.GetNames(type).Where(n => n != "None"))}",
            _ when type == typeof(decimal) || type == typeof(double) => "write a number, without quotes",
            _ when type == typeof(int) || type == typeof(long) => "write a whole number, without quotes",
            _ when type == typeof(bool) => "write true or false",
            _ when type == typeof(string) => "write a text in quotes",
            _ when type is not null && type.IsAssignableTo(typeof(System.Collections.IEnumerable)) => "write a list in square brackets",
            _ => "write an object in curly brackets, with its members",
        };
    }

    [GeneratedRegex("^The JSON property '([^']*)' could not be mapped")]
    private static partial Regex Unknown();

    [GeneratedRegex("missing required (?:properties|members) including: (.*)$")]
    private static partial Regex Missing();

    [GeneratedRegex("^Duplicate property '([^']*)'")]
    private static partial Regex Twice();

    [GeneratedRegex("(?:doesn't allow|does not allow|cannot be|allow) null")]
    private static partial Regex NoNull();

    [GeneratedRegex(@"^The JSON value could not be converted to (?:System\.Nullable`1\[)?([^\s\]]+?)[\].]*(?:\s|$)")]
    private static partial Regex Wrong();

    [GeneratedRegex("invalid (?:start|end|escape|after)|is an invalid|Expected|depth|contain any JSON|after the end")]
    private static partial Regex Syntax();
}
