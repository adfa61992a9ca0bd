namespace Evengrist.Plant.Prints;

/// <summary>Breaks text into lines.</summary>
internal static class Wrapping
{
    /// <summary>The lines of a text. A word wider than the room is broken where the room ends, so that nothing runs off the paper.</summary>
    public static List<string> Lines(string text, double room, Func<string, double> width)
    {
        var lines = new List<string>();
        var line = "";
        foreach (var word in text.ReplaceLineEndings(" ").Split(' ', StringSplitOptions.RemoveEmptyEntries))
        {
            var longer = line.Length == 0 ? word : line + " " + word;
            if (width(longer) <= room)
            {
                line = longer;
                continue;
            }

            if (line.Length > 0)
            {
                lines.Add(line);
            }

            line = word;
            while (line.Length > 1 && width(line) > room)
            {
                var fits = Enumerable.Range(1, line.Length - 1).Last(n => n == 1 || width(line[..n]) <= room);
                lines.Add(line[..fits]);
                line = line[fits..];
            }
        }

        lines.Add(line);
        return lines;
    }
}
