namespace Evengrist.Cli.Said;

/// <summary>A table in plain text: words left, numbers right, two spaces between.</summary>
internal sealed class TextTable(params string[] heads)
{
    private readonly List<string[]> rows = [heads];

    public void Add(params string[] cells) => rows.Add(cells);

    public void To(Voice voice)
    {
        var widths = Enumerable.Range(0, heads.Length).Select(c => rows.Max(r => r[c].Length)).ToArray();
        var right = Enumerable.Range(0, heads.Length).Select(c => rows.Count > 1 && rows.Skip(1).All(r => r[c].Length == 0 || char.IsAsciiDigit(r[c][^1]) && (char.IsAsciiDigit(r[c][0]) || r[c][0] is '-' or '<'))).ToArray();
        foreach (var row in rows)
        {
            voice.Say(string.Join("  ", row.Select((cell, c) => right[c] ? cell.PadLeft(widths[c]) : cell.PadRight(widths[c]))).TrimEnd());
        }
    }
}
