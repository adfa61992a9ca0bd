using System.Globalization;
using System.Text.RegularExpressions;
using Evengrist.Bins.Storage;
using Evengrist.Ledger;
using Evengrist.Records;
using Evengrist.Records.Bins;
using Evengrist.Web.Visiting;

namespace Evengrist.Web.Sights.Storage;

/// <summary>A round of a bin's cables as a person fills it in: a temperature for each known point, and lines for further points.</summary>
public sealed partial class CableRound
{
    /// <summary>When it was read, by the mill's clock.</summary>
    public string? At { get; set; }

    /// <summary>The known points, in the order of the form; null where the form had none.</summary>
    public List<string>? Points { get; set; }

    /// <summary>What was typed beside each; empty where not read.</summary>
    public List<string?>? Values { get; set; }

    /// <summary>Further points, one a line: <c>C3 at 2.0 m: 14.5</c>.</summary>
    public string? More { get; set; }

    /// <summary>Records the round under the visitor's name; every fault where it cannot be read.</summary>
    public IReadOnlyList<string> Record(string bin, Visit visit, out Receipt? receipt)
    {
        ArgumentNullException.ThrowIfNull(visit);
        receipt = null;
        var faults = new List<string>();
        (CablePoint, decimal)[] read = [.. (Points ?? []).Zip(Values ?? [], (point, value) => Read(point, value, faults)).OfType<(CablePoint, decimal)>(), .. Lines(faults)];
        if (visit.Read(At) is not { } at)
        {
            faults.Add("When: give the date and time, such as 14 January 2026 08:00.");
        }
        else if (read.Length == 0 && faults.Count == 0)
        {
            faults.Add("No temperature was given: fill in at least one point.");
        }
        else if (visit.Name is null)
        {
            faults.Add(Visit.Nameless);
        }
        else if (faults.Count == 0)
        {
            try
            {
                receipt = new RecordCables(bin, at, read).In(visit.Mill, visit.Name);
            }
            catch (LedgerRefusal refusal)
            {
                faults.Add(visit.InMillTime(refusal.Message));
            }
        }

        return faults;
    }

    private IEnumerable<(CablePoint, decimal)> Lines(List<string> faults)
    {
        foreach (var line in (More ?? "").Split('\n', StringSplitOptions.RemoveEmptyEntries | StringSplitOptions.TrimEntries))
        {
            if (Line().Match(line) is { Success: true } found && Read(found.Groups[1].Value, found.Groups[2].Value, faults) is { } read)
            {
                yield return read;
            }
            else if (!Line().IsMatch(line))
            {
                faults.Add($"\"{line}\": write {CablePoint.Form}, then a colon and the temperature.");
            }
        }
    }

    private static (CablePoint, decimal)? Read(string point, string? value, List<string> faults)
    {
        if (string.IsNullOrWhiteSpace(value))
        {
            return null;
        }

        if (CablePoint.Parse(point) is not { } where)
        {
            faults.Add($"\"{point}\" is no point: write {CablePoint.Form}.");
        }
        else if (!decimal.TryParse(value, NumberStyles.AllowLeadingSign | NumberStyles.AllowDecimalPoint | NumberStyles.AllowLeadingWhite | NumberStyles.AllowTrailingWhite, CultureInfo.InvariantCulture, out var celsius) || celsius is < -60m or > 120m)
        {
            faults.Add($"{where}: \"{value}\" is no temperature in °C. Write it like 14.5.");
        }
        else
        {
            return (where, celsius);
        }

        return null;
    }

    [GeneratedRegex(@"^([^:]+):\s*(.+)$")]
    private static partial Regex Line();
}
