using System.Text.RegularExpressions;

namespace Evengrist.Plant.Imports;

/// <summary>A column's heading taken apart: <c>protein [% 12mb]</c> is the name <c>protein</c> and the unit <c>% 12mb</c>.</summary>
internal sealed partial record Heading(string Name, string? Unit)
{
    public static Heading? Of(string text)
    {
        var match = Shape().Match(text);
        return match.Success
            ? new Heading(OneSpace(match.Groups["name"].Value).ToLowerInvariant(), match.Groups["unit"].Success ? OneSpace(match.Groups["unit"].Value) : null)
            : null;
    }

    private static string OneSpace(string text) => string.Join(' ', text.Split((char[]?)null, StringSplitOptions.RemoveEmptyEntries));

    [GeneratedRegex(@"^(?<name>[^\[\]]+)(\[(?<unit>[^\[\]]+)\]\s*)?$", RegexOptions.ExplicitCapture | RegexOptions.NonBacktracking)]
    private static partial Regex Shape();
}
