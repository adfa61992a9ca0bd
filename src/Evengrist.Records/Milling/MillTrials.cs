using Evengrist.Ledger;
using Evengrist.Milling.OnPaper;

namespace Evengrist.Records.Milling;

/// <summary>The trials on paper that a mill keeps by name: papers by version, nothing lost. A change is the next version, and so is striking.</summary>
public static class MillTrials
{
    /// <summary>Keeps a trial, or a change of one; every fault where it cannot be, and then nothing is kept. One that says the same as what is kept changes nothing and gives that back.</summary>
    /// <param name="mill">The mill.</param>
    /// <param name="paper">The trial; of a unit whose flow sheet is kept.</param>
    /// <param name="by">Who keeps it.</param>
    /// <param name="after">The version it was made from, so that nobody's is overwritten unseen; 0 for a new name. A struck name may be given anew.</param>
    public static (KeptTrial? Kept, IReadOnlyList<string> Faults) Keep(Mill mill, MillTrialPaper paper, string by, int after)
    {
        ArgumentNullException.ThrowIfNull(mill);
        ArgumentNullException.ThrowIfNull(paper);
        var (shelf, json) = (mill.Papers(MillTrialPaper.Kind), paper.ToJson());
        var newest = shelf.Newest(paper.Code) is { } last ? Read(last) : null;
        string[] faults =
        [
            .. string.IsNullOrWhiteSpace(by) ? ["Say who you are first: every record carries a name."] : Array.Empty<string>(),
            .. FlowSheets.Newest(mill, paper.Unit) is null ? [$"No flow sheet of a unit {paper.Unit} is kept: keep one under Milling first."] : Array.Empty<string>(), .. paper.Faults(),
        ];
        if (faults.Length > 0)
        {
            return (null, faults);
        }

        if (newest is not null && newest.Paper.ToJson() == json)
        {
            return (newest, []);
        }

        var from = newest is { Stands: false } && after == 0 ? newest.Version : after;
        if (from != (newest?.Version ?? 0))
        {
            return (null, [newest is null ? $"There is no trial “{paper.Name}” of {paper.Unit} to be changed: keep it as a new one." : $"A trial “{paper.Name}” of {paper.Unit} stands already in version {newest.Version}, kept by {newest.By}: give another name, or open that one and change it."]);
        }

        try
        {
            shelf.Keep(paper.Code, from + 1, json, by.Trim());
            return (Read(shelf.Find(paper.Code, from + 1)!), []);
        }
        catch (LedgerRefusal taken) when (taken.Rule == LedgerRule.KeyTaken)
        {
            return (null, [$"“{paper.Name}” was kept meanwhile by another. Look at it, and change that one."]);
        }
    }

    /// <summary>Strikes a trial: it stays to be read and is listed no longer.</summary>
    /// <param name="mill">The mill.</param>
    /// <param name="unit">Code of the unit.</param>
    /// <param name="name">Its name.</param>
    /// <param name="reason">Why.</param>
    /// <param name="by">Who strikes it.</param>
    /// <param name="after">The version that is struck.</param>
    public static (KeptTrial? Kept, IReadOnlyList<string> Faults) Strike(Mill mill, string unit, string name, string reason, string by, int after)
    {
        ArgumentNullException.ThrowIfNull(reason);
        return Versions(mill, unit, name) switch
        {
            [] => (null, [$"No trial “{name}” of {unit} is kept."]),
            [.., { Stands: false } struck] => (null, [$"“{name}” is struck already, by {struck.By}: {struck.Paper.Struck}"]),
            [.., var kept] => Keep(mill, kept.Paper with { Struck = reason.Trim() }, by, after),
        };
    }

    /// <summary>The trials of a unit that stand, each in its newest version, the newest first.</summary>
    public static IReadOnlyList<KeptTrial> Of(Mill mill, string unit)
    {
        ArgumentNullException.ThrowIfNull(mill);
        return [.. mill.Papers(MillTrialPaper.Kind).NewestOfEach().Select(Read).OfType<KeptTrial>().Where(t => t.Stands && t.Paper.Unit == unit).OrderByDescending(t => t.Recorded).ThenBy(t => t.Paper.Name, StringComparer.Ordinal)];
    }

    /// <summary>All versions of a trial, the first first; empty where none is kept.</summary>
    public static IReadOnlyList<KeptTrial> Versions(Mill mill, string unit, string name)
    {
        ArgumentNullException.ThrowIfNull(mill);
        return [.. mill.Papers(MillTrialPaper.Kind).All().Select(Read).OfType<KeptTrial>().Where(t => t.Paper.Unit == unit && t.Paper.Name == name)];
    }

    private static KeptTrial? Read(Paper paper) => MillTrialPaper.TryRead(paper.Json, out var kept, out _) ? new KeptTrial(paper.Version, paper.By, paper.Recorded, kept) : null;
}
