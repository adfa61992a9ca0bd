using System.Globalization;
using System.Text.Json;
using System.Text.RegularExpressions;

namespace Evengrist.Quantities;

/// <content>What belongs where something of the wrong kind was read, told by the type that is read into.</content>
public static partial class JsonFault
{
    /// <summary>One sentence, on one line, for what the reader refused; where a word or a number belongs, it says which.</summary>
    /// <param name="fault">What it threw.</param>
    /// <param name="root">What was read into.</param>
    public static string Words(JsonException fault, Type root)
    {
        ArgumentNullException.ThrowIfNull(fault);
        ArgumentNullException.ThrowIfNull(root);
        return Wrong().Match(fault.Message) is { Success: true } wrong && fault.Path is { Length: > 2 } path && Wanted(Asked(path, wrong.Groups[1].Value, root)) is { } wanted
            ? string.Create(CultureInfo.InvariantCulture, $"{path[2..]} (line {fault.LineNumber.GetValueOrDefault() + 1}): {wanted}.")
            : Words(fault);
    }

    // The reader names the type it was at; where that is a whole object, its member is the last of the path.
    private static Type? Asked(string path, string name, Type root)
    {
        if (name.StartsWith("System.Collections.", StringComparison.Ordinal))
        {
            return typeof(System.Collections.IEnumerable);
        }

        var type = Type.GetType(name) ?? root.Assembly.GetType(name);
        return type?.GetProperties().FirstOrDefault(p => p.Name.Equals(path.Split('.')[^1].Split('[')[0], StringComparison.OrdinalIgnoreCase))?.PropertyType ?? type;
    }

    private static string? Wanted(Type? asked)
    {
        var type = asked is null ? null : Nullable.GetUnderlyingType(asked) ?? asked;
        return type switch
        {
            null => null,
            { IsEnum: true } => $"write one of {string.Join(", ", Enum.GetNames(type).Where(n => n != "None"))}",
            _ when type == typeof(decimal) || type == typeof(double) => "write a number, without quotes",
            _ when type == typeof(int) || type == typeof(long) => "write a whole number, without quotes",
            _ when type == typeof(bool) => "write true or false",
            _ when type == typeof(string) => "write a text in quotes",
            _ when type.IsAssignableTo(typeof(System.Collections.IEnumerable)) => "write a list in square brackets",
            _ => "write an object in curly brackets",
        };
    }

    [GeneratedRegex(@"^The JSON value could not be converted to (?:System\.Nullable`1\[)?([^\s\]]+?)[\].]*(?:\s|$)", RegexOptions.CultureInvariant)]
    private static partial Regex Wrong();
}
