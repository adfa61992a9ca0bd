using Evengrist.Packing.Codes;
using Evengrist.Plant.Gs1;
using NodaTime;

namespace Evengrist.Plant.Recalls;

/// <summary>What is suspect, as a person types or scans it: a thing a line, with hours behind it where it needs them.</summary>
public static class RecallLines
{
    /// <summary>Most lines taken.</summary>
    public const int Most = 50;

    /// <summary>How a line is written.</summary>
    public const string Says = "One a line: any code or scan, and hours behind it where only those are suspect: B14 2025-09-17T20:00 2025-09-18T02:00. An instrument in doubt: instrument NIR-1 FROM UNTIL. A lot of bags, film, labels or cases: packaging LOT.";

    /// <summary>Reads the lines.</summary>
    /// <param name="text">The text; line ends or semicolons between things.</param>
    /// <param name="moment">Reads a moment; null where the text is none.</param>
    /// <param name="year">This year, for the century of dates on labels.</param>
    /// <returns>Each thing and each fault, a sentence.</returns>
    public static (IReadOnlyList<SuspectLine> Lines, IReadOnlyList<string> Faults) Read(string? text, Func<string, Instant?> moment, int year)
    {
        ArgumentNullException.ThrowIfNull(moment);
        var (lines, faults) = (new List<SuspectLine>(), new List<string>());
        foreach (var line in (text ?? "").Split(['\n', '\r', ';'], StringSplitOptions.RemoveEmptyEntries | StringSplitOptions.TrimEntries))
        {
            var words = line.Split(' ', StringSplitOptions.RemoveEmptyEntries).ToList();
            var times = new List<Instant>();
            while (words.Count > 1 && times.Count < 2 && moment(words[^1]) is { } at)
            {
                times.Insert(0, at);
                words.RemoveAt(words.Count - 1);
            }

            var (from, until) = (times.Count > 0 ? times[0] : (Instant?)null, times.Count > 1 ? times[1] : (Instant?)null);
            if (words.Count > 1 && words.Skip(1).FirstOrDefault(w => w.Length > 9 && w[4] == '-' && w[7] == '-' && w[..4].All(char.IsAsciiDigit)) is { } mistyped)
            {
                faults.Add($"“{mistyped}” is no date and time. Write it like 2025-09-15T06:00.");
            }
            else if (words[0].Equals("instrument", StringComparison.OrdinalIgnoreCase) && words.Count > 1)
            {
                lines.Add(new SuspectLine(SuspectKind.Instrument, string.Join(' ', words.Skip(1)), null, from, until));
            }
            else if (words[0].Equals("packaging", StringComparison.OrdinalIgnoreCase) && words.Count > 1)
            {
                lines.Add(new SuspectLine(SuspectKind.Packaging, string.Join(' ', words.Skip(1)), null, from, until));
            }
            else if (ScanReading.Of(string.Join(' ', words), year) is { Keys: { IsEmpty: false } keys })
            {
                lines.Add(new SuspectLine(SuspectKind.Code, string.Join(' ', words), keys, from, until));
            }
            else
            {
                faults.Add($"“{Fault.Show(line)}” cannot be read as a code or scan. {string.Join(" ", ScanReading.Of(string.Join(' ', words), year).Faults.Take(1))}".Trim());
            }
        }

        if (lines.Count == 0 && faults.Count == 0)
        {
            faults.Add("Say what is suspect: type or scan at least one code.");
        }

        if (lines.Count > Most)
        {
            faults.Add(FormattableString.Invariant($"At most {Most} things at once; {lines.Count} were given. Name the lot, the field or the hours instead."));
        }

        return (lines, faults);
    }
}
