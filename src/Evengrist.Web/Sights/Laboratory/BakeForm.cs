using System.Globalization;
using Evengrist.Laboratory.Bake;
using Evengrist.Records;
using Evengrist.Records.Laboratory;
using NodaTime;

namespace Evengrist.Web.Sights.Laboratory;

/// <summary>A bake as typed: a line for each loaf.</summary>
public sealed class BakeForm
{
    private const NumberStyles Plain = NumberStyles.AllowDecimalPoint | NumberStyles.AllowLeadingSign;

    /// <summary>Its own code.</summary>
    public string? Code { get; set; }

    /// <summary>When, by the mill's clock.</summary>
    public string? At { get; set; }

    /// <summary>Who baked.</summary>
    public string? Baker { get; set; }

    /// <summary>The control flour.</summary>
    public string? Control { get; set; }

    /// <summary>Lines of flour; dough; mL; g; score.</summary>
    public string? Loaves { get; set; }

    /// <summary>Lines of flour; place.</summary>
    public string? Flours { get; set; }

    /// <summary>Anything to remember.</summary>
    public string? Remark { get; set; }

    /// <summary>Keeps it; every fault where it cannot be.</summary>
    /// <param name="mill">The mill.</param>
    /// <param name="at">When, as read; null where it could not be.</param>
    /// <param name="by">Who keeps it; null or empty where nobody is named.</param>
    /// <param name="nameless">What is said then.</param>
    /// <param name="now">The newest moment there is.</param>
    public IReadOnlyList<string> Keep(Mill mill, Instant? at, string? by, string nameless, Instant now)
    {
        ArgumentNullException.ThrowIfNull(mill);
        var faults = new List<string>();
        BakedLoaf[] loaves = [.. Lines(Loaves).Select(l => Loaf(l.Line, l.Cells, faults)).OfType<BakedLoaf>()];
        FlourOrigin[] flours = [.. Lines(Flours).Where(l => l.Cells.Length == 2 || Wrong($"Where the flours came from, line {l.Line}: write flour; place.", faults)).Select(l => new FlourOrigin(l.Cells[0], l.Cells[1]))];
        faults.AddRange(EntryFaults.Of("-", at, by, nameless));
        return faults.Count > 0 ? faults : BakeSessions.Keep(mill, new BakeSession((Code ?? "").Trim(), at!.Value, (Baker ?? "").Trim(), (Control ?? "").Trim(), loaves, flours, (Remark ?? "").Trim()), by!, now).Faults;
    }

    private static BakedLoaf? Loaf(int line, string[] cells, List<string> faults)
    {
        if (cells.Length is not (4 or 5))
        {
            faults.Add($"Loaves, line {line}: write flour; dough; volume in mL; weight in g; and a score where there is one.");
            return null;
        }

        double? Number(int cell, string what) => cell >= cells.Length || (cell == 4 && cells[cell].Length == 0) ? null
            : double.TryParse(cells[cell], Plain, CultureInfo.InvariantCulture, out var value) ? value
            : Wrong($"Loaves, line {line}: {what} is a number; read \"{cells[cell]}\".", faults) ? 0 : null;
        var (volume, weight, score) = (Number(2, "the volume"), Number(3, "the weight"), Number(4, "the score"));
        return volume is { } millilitres && weight is { } grams ? new BakedLoaf(cells[0], cells[1], millilitres, grams, score) : null;
    }

    private static bool Wrong(string words, List<string> faults)
    {
        faults.Add(words);
        return false;
    }

    private static IEnumerable<(int Line, string[] Cells)> Lines(string? text) => (text ?? "").ReplaceLineEndings("\n").Split('\n').Index()
        .Where(l => !string.IsNullOrWhiteSpace(l.Item)).Select(l => (l.Index + 1, l.Item.Split(';', StringSplitOptions.TrimEntries)));
}
