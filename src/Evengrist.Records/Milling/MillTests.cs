using Evengrist.Ledger;
using Evengrist.Milling.Learning;
using NodaTime;

namespace Evengrist.Records.Milling;

/// <summary>The tests of its units that a mill keeps: papers by test and version, nothing lost. A correction is the next version, and so is striking.</summary>
public static class MillTests
{
    /// <summary>Keeps a test, or a correction of one; every fault where it cannot be, and then nothing is kept. One that says the same as what is kept changes nothing and gives that back.</summary>
    /// <param name="mill">The mill.</param>
    /// <param name="paper">The test.</param>
    /// <param name="by">Who keeps it.</param>
    /// <param name="after">The version it corrects, so that nobody's is overwritten unseen; 0 for a new test.</param>
    /// <param name="now">The newest moment there is: no test was taken later.</param>
    public static (KeptMillTest? Kept, IReadOnlyList<string> Faults) Keep(Mill mill, MillTestPaper paper, string by, int after, Instant now)
    {
        if (Faults(mill, paper, by, after, now) is { Count: > 0 } faults)
        {
            return (null, faults);
        }

        var (shelf, code, json) = (mill.Papers(MillTestPaper.Kind), paper.CodeIn(mill.Settings.Zone), paper.ToJson());
        if (shelf.Newest(code) is { } newest && newest.Json == json)
        {
            return (Read(newest), []);
        }

        try
        {
            shelf.Keep(code, after + 1, json, by.Trim());
            return (Read(shelf.Find(code, after + 1)!), []);
        }
        catch (LedgerRefusal taken) when (taken.Rule == LedgerRule.KeyTaken)
        {
            return (null, [$"{code} was kept meanwhile by another. Look at it, and correct that one."]);
        }
    }

    /// <summary>What keeps a test from being kept, each a sentence that says what to do; empty where nothing does.</summary>
    /// <param name="mill">The mill.</param>
    /// <param name="paper">The test.</param>
    /// <param name="by">Who would keep it.</param>
    /// <param name="after">The version it corrects; 0 for a new test.</param>
    /// <param name="now">The newest moment there is.</param>
    public static IReadOnlyList<string> Faults(Mill mill, MillTestPaper paper, string by, int after, Instant now)
    {
        ArgumentNullException.ThrowIfNull(mill);
        ArgumentNullException.ThrowIfNull(paper);
        string[] nobody = string.IsNullOrWhiteSpace(by) ? ["Say who you are first: every record carries a name."] : [];
        var sheets = FlowSheets.Versions(mill, paper.Unit);
        if (sheets.Count == 0)
        {
            var units = FlowSheets.Newest(mill);
            return [.. nobody, $"No flow sheet of a unit {paper.Unit} is kept: {(units.Count == 0 ? "keep one under Milling first." : $"there are {string.Join(", ", units.Select(u => u.Unit))}.")}"];
        }

        if (sheets.FirstOrDefault(s => s.Version == paper.SheetVersion) is not { } sheet)
        {
            return [.. nobody, $"{paper.Unit} has no flow sheet of version {paper.SheetVersion}: it has 1 to {sheets[^1].Version}. Give the one in force when the test was taken."];
        }

        var code = paper.CodeIn(mill.Settings.Zone);
        var newest = mill.Papers(MillTestPaper.Kind).Newest(code);
        var isNew = newest is null ? after == 0 : newest.Version == after || newest.Json == paper.ToJson();
        return
        [
            .. nobody,
            .. isNew ? Array.Empty<string>() : [newest is null ? $"There is no {code} to be corrected: unit and time of a test stay what they are. Strike it and enter another." : $"{code} stands already in version {newest.Version}, kept by {newest.By}: a test is entered once. Correct or strike that one."],
            .. paper.TakenAt > now ? [$"{code} is said to have been taken after {now.InZone(mill.Settings.Zone).LocalDateTime:uuuu-MM-dd HH:mm}, in the future. Check day and time."] : Array.Empty<string>(),
            .. paper.Faults(code, sheet.Sheet),
        ];
    }

    /// <summary>Keeps new tests, all of them or none.</summary>
    /// <param name="mill">The mill.</param>
    /// <param name="papers">The tests, each with the words that its faults begin with.</param>
    /// <param name="by">Who keeps them.</param>
    /// <param name="now">The newest moment there is.</param>
    public static (IReadOnlyList<KeptMillTest> Kept, IReadOnlyList<string> Faults) KeepAll(Mill mill, IReadOnlyList<(string Where, MillTestPaper Paper)> papers, string by, Instant now)
    {
        string[] faults = [.. papers.SelectMany(p => Faults(mill, p.Paper, by, 0, now).Select(f => p.Where + f))];
        if (faults.Length > 0)
        {
            return ([], faults);
        }

        var came = papers.Select(p => Keep(mill, p.Paper, by, 0, now)).ToArray();
        return ([.. came.Select(c => c.Kept).OfType<KeptMillTest>()], [.. came.SelectMany(c => c.Faults)]);
    }

    /// <summary>Strikes a test: it stays to be read and counts no longer.</summary>
    /// <param name="mill">The mill.</param>
    /// <param name="code">What it is called.</param>
    /// <param name="reason">Why.</param>
    /// <param name="by">Who strikes it.</param>
    /// <param name="after">The version that is struck.</param>
    /// <param name="now">The newest moment there is.</param>
    public static (KeptMillTest? Kept, IReadOnlyList<string> Faults) Strike(Mill mill, string code, string reason, string by, int after, Instant now)
    {
        ArgumentNullException.ThrowIfNull(mill);
        ArgumentNullException.ThrowIfNull(reason);
        return (Versions(mill, code) is [.., var last] ? last : null) switch
        {
            null => (null, [$"No mill test {code} is kept."]),
            { Stands: false } struck => (null, [$"{code} is struck already, by {struck.By}: {struck.Paper.Struck}"]),
            var kept => Keep(mill, kept.Paper with { Struck = reason.Trim() }, by, after, now),
        };
    }

    /// <summary>Every test in its newest version, by code and so by unit and time.</summary>
    public static IReadOnlyList<KeptMillTest> Newest(Mill mill)
    {
        ArgumentNullException.ThrowIfNull(mill);
        return [.. mill.Papers(MillTestPaper.Kind).NewestOfEach().Select(Read).OfType<KeptMillTest>()];
    }

    /// <summary>All versions of a test, the first first; empty where none is kept.</summary>
    public static IReadOnlyList<KeptMillTest> Versions(Mill mill, string code)
    {
        ArgumentNullException.ThrowIfNull(mill);
        return [.. mill.Papers(MillTestPaper.Kind).All().Where(p => p.Code == code).Select(Read).OfType<KeptMillTest>()];
    }

    private static KeptMillTest? Read(Paper paper) => MillTestPaper.TryRead(paper.Json, out var kept, out _) ? new KeptMillTest(paper.Code, paper.Version, paper.By, paper.Recorded, kept) : null;
}
