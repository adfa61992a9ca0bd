using System.Globalization;
using System.Text.RegularExpressions;

namespace Evengrist.Edge.Tests.Plant.Gs1;

/// <summary>GS1's own table as it lies beside the project (gs1-syntax-dictionary.txt, Apache-2.0), read by its own description of its form.</summary>
internal static partial class SyntaxDictionary
{
    /// <summary>One row: parts as written, flags, and what belongs together.</summary>
    public sealed record Entry(string Code, bool Predefined, bool InLink, string[] Parts, string[] Needs, string[] Excludes, string? LinkKey);

    public static IReadOnlyList<Entry> Read(string file) =>
        [.. File.ReadLines(file).Where(l => l.Length > 0 && l[0] != '#').SelectMany(l => Entries(l.Split('#')[0].Split((char[]?)null, StringSplitOptions.RemoveEmptyEntries)))];

    private static IEnumerable<Entry> Entries(string[] words)
    {
        var flags = Flags().IsMatch(words[1]) ? words[1] : "";
        var parts = words.Skip(flags.Length > 0 ? 2 : 1).TakeWhile(w => Part().IsMatch(w)).ToArray();
        var attributes = words.Skip((flags.Length > 0 ? 2 : 1) + parts.Length).ToArray();
        Assert.All(attributes, a => Assert.Matches("^(req|ex)=|^dlpkey(=|$)", a));
        Assert.True(attributes.Select(a => a.Split('=')[0]).Distinct().Count() == attributes.Length, "An attribute stands twice; this reader does not know what that means.");
        string[] Values(string name) => attributes.Where(a => a.StartsWith(name + "=", StringComparison.Ordinal)).SelectMany(a => a[(name.Length + 1)..].Split(',')).ToArray();
        var key = attributes.FirstOrDefault(a => a.StartsWith("dlpkey", StringComparison.Ordinal));
        foreach (var code in Codes(words[0]))
        {
            yield return new Entry(code, flags.Contains('*', StringComparison.Ordinal), flags.Contains('?', StringComparison.Ordinal), parts, Values("req"), Values("ex"), key is null ? null : key.Length > 7 ? key[7..] : "");
        }
    }

    private static IEnumerable<string> Codes(string written)
    {
        var ends = written.Split('-');
        var (from, until) = (int.Parse(ends[0], CultureInfo.InvariantCulture), int.Parse(ends[^1], CultureInfo.InvariantCulture));
        return Enumerable.Range(from, until - from + 1).Select(n => n.ToString(CultureInfo.InvariantCulture).PadLeft(ends[0].Length, '0'));
    }

    [GeneratedRegex("^[*?]+$")]
    private static partial Regex Flags();

    [GeneratedRegex(@"^\[?[NXYZ](\.\.)?[0-9]+\]?(,[a-z0-9,]+)?$")]
    private static partial Regex Part();
}
