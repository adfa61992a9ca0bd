using System.Text;
using Evengrist.Plant.Gs1.Table;

namespace Evengrist.Plant.Gs1;

/// <summary>Brackets round identifiers in the line for people. A value may hold brackets of its own.</summary>
internal static class Brackets
{
    private const char Guard = '\\';

    /// <summary>The identifier in brackets at a place; null where none stands there.</summary>
    public static ApplicationIdentifier? At(string text, int at)
    {
        if (at >= text.Length || text[at] != '(')
        {
            return null;
        }

        var end = text.IndexOf(')', at, Math.Min(text.Length - at, 6));
        return end > at && Identifiers.TryFind(text[(at + 1)..end], out var identifier) ? identifier : null;
    }

    /// <summary>The value from a place to the next identifier in brackets or the end, with the guards taken away.</summary>
    public static (string Value, int End) Value(string text, int at)
    {
        var value = new StringBuilder();
        for (; at < text.Length && At(text, at) is null; at++)
        {
            if (text[at] == Guard && at + 1 < text.Length && text[at + 1] == '(')
            {
                at++;
            }

            value.Append(text[at]);
        }

        return (value.ToString(), at);
    }

    /// <summary>A value with a guard before each bracket that would read as an identifier.</summary>
    public static string Guarded(string value) => value.Contains('(', StringComparison.Ordinal) ? string.Concat(value.Select((c, at) => At(value, at) is null ? $"{c}" : $"{Guard}{c}")) : value;
}
