using Evengrist.Ledger;
using Evengrist.Milling.Sheet;

namespace Evengrist.Records.Milling;

/// <summary>The flow sheets a mill keeps: papers by unit and version, nothing lost.</summary>
public static class FlowSheets
{
    /// <summary>Most characters of the code of a unit [ours].</summary>
    public const int LongestUnit = 12;

    /// <summary>Keeps a sheet as the next version of a unit's; every fault where it cannot be, and then nothing is kept. One that says the same as the newest changes nothing and gives that back.</summary>
    /// <param name="mill">The mill.</param>
    /// <param name="unit">Code of the mill unit; letters, figures and hyphens.</param>
    /// <param name="paper">The sheet and why.</param>
    /// <param name="by">Who keeps it.</param>
    /// <param name="after">The version it was made from, so that nobody's is overwritten unseen; 0 for the first.</param>
    public static (KeptFlowSheet? Kept, IReadOnlyList<string> Faults) Keep(Mill mill, string unit, FlowSheetPaper paper, string by, int after)
    {
        ArgumentNullException.ThrowIfNull(mill);
        ArgumentNullException.ThrowIfNull(unit);
        ArgumentNullException.ThrowIfNull(paper);
        var newest = Newest(mill, unit);
        string[] faults =
        [
            .. string.IsNullOrWhiteSpace(by) ? ["Say who you are first: every record carries a name."] : Array.Empty<string>(),
            .. unit.Length is > 0 and <= LongestUnit && unit.All(c => char.IsAsciiLetterOrDigit(c) || c == '-') ? Array.Empty<string>() : [$"A unit has a code of 1 to {LongestUnit} letters, figures or hyphens, as A or MILL-2; read “{unit}”."],
            .. paper.Faults(),
        ];
        if (faults.Length > 0)
        {
            return (null, faults);
        }

        if (newest is not null && FlowSheetJson.Write(newest.Sheet) == FlowSheetJson.Write(paper.Sheet))
        {
            return (newest, []);
        }

        var version = Math.Clamp(after, 0, newest?.Version ?? 0) + 1;
        try
        {
            var shelf = mill.Papers(FlowSheetJson.PaperKind);
            shelf.Keep(unit, version, FlowSheetJson.Write(paper with { Reason = paper.Reason.Trim() }), by);
            return (Read(shelf.Find(unit, version)!), []);
        }
        catch (LedgerRefusal taken) when (taken.Rule == LedgerRule.KeyTaken)
        {
            return (null, [$"Version {newest!.Version} of {unit} was kept meanwhile by {newest.By}. Look at it, and make the change to that one."]);
        }
    }

    /// <summary>The newest version of every unit, by code.</summary>
    public static IReadOnlyList<KeptFlowSheet> Newest(Mill mill)
    {
        ArgumentNullException.ThrowIfNull(mill);
        return [.. mill.Papers(FlowSheetJson.PaperKind).NewestOfEach().Select(Read).OfType<KeptFlowSheet>().OrderBy(k => k.Unit, StringComparer.Ordinal)];
    }

    /// <summary>The newest version of a unit; null where none is kept.</summary>
    public static KeptFlowSheet? Newest(Mill mill, string unit)
    {
        ArgumentNullException.ThrowIfNull(mill);
        return mill.Papers(FlowSheetJson.PaperKind).Newest(unit) is { } paper ? Read(paper) : null;
    }

    /// <summary>The newest sheet of the unit a person asked for, large and small letters alike; of the first where there is none such, null where no sheet is kept.</summary>
    public static KeptFlowSheet? Asked(Mill mill, string? unit)
    {
        var units = Newest(mill);
        return units.FirstOrDefault(u => u.Unit.Equals(unit?.Trim(), StringComparison.OrdinalIgnoreCase)) ?? (units.Count > 0 ? units[0] : null);
    }

    /// <summary>All versions of a unit, the first first; empty where none is kept.</summary>
    public static IReadOnlyList<KeptFlowSheet> Versions(Mill mill, string unit)
    {
        ArgumentNullException.ThrowIfNull(mill);
        return [.. mill.Papers(FlowSheetJson.PaperKind).All().Where(p => p.Code == unit).Select(Read).OfType<KeptFlowSheet>()];
    }

    private static KeptFlowSheet? Read(Paper paper) => FlowSheetJson.TryReadPaper(paper.Json, out var kept, out _) ? new KeptFlowSheet(paper.Code, paper.Version, paper.By, paper.Recorded, kept.Reason, kept.Sheet) : null;
}
