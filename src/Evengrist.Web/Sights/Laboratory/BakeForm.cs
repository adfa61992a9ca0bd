using System.Globalization;
using Evengrist.Laboratory.Bake;
using Evengrist.Laboratory.Samples;
using Evengrist.Records;
using Evengrist.Records.Laboratory;
using Evengrist.Web.Sights.Bins;
using NodaTime;

namespace Evengrist.Web.Sights.Laboratory;

/// <summary>A bake as typed: a line for each loaf, a row for each step.</summary>
public sealed class BakeForm
{
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

    /// <summary>Lines of taster; best flour; next, ties joined by =.</summary>
    public string? Rankings { get; set; }

    /// <summary>The formula it was baked by, as the page showed it.</summary>
    public string? Formula { get; set; }

    /// <summary>Its steps as they were done; null where the formula has none.</summary>
    public List<BakeStepRow>? Steps { get; set; }

    /// <summary>Anything to remember.</summary>
    public string? Remark { get; set; }

    /// <summary>Why what was asked about is right.</summary>
    public string? Reason { get; set; }

    /// <summary>The form of a bake that is to be corrected.</summary>
    /// <param name="session">The bake as it is kept.</param>
    /// <param name="at">When, as a field takes it.</param>
    public static BakeForm Of(BakeSession session, string at)
    {
        ArgumentNullException.ThrowIfNull(session);
        return new()
        {
            Code = session.Code, At = at, Baker = session.Baker, Control = session.Control, Remark = session.Remark, Reason = session.Reason, Formula = session.Formula,
            Loaves = string.Join('\n', session.Loaves.Select(l => string.Create(CultureInfo.InvariantCulture, $"{l.Flour}; {l.Dough}; {l.VolumeMillilitres}; {l.WeightGrams}{(l.Score is { } s ? $"; {s}" : "")}"))),
            Flours = string.Join('\n', session.Flours.Select(f => $"{f.Flour}; {f.Place}")),
            Rankings = string.Join('\n', (session.Rankings ?? []).Select(r => $"{r.Taster}; {string.Join("; ", r.Places.Select(p => string.Join(" = ", p)))}")),
            Steps = [.. (session.Steps ?? []).Select(BakeStepRow.Of)],
        };
    }

    /// <summary>Keeps it; everything against it where it cannot be.</summary>
    /// <param name="mill">The mill.</param>
    /// <param name="at">When, as read; null where it could not be.</param>
    /// <param name="by">Who keeps it; null or empty where nobody is named.</param>
    /// <param name="nameless">What is said then.</param>
    /// <param name="now">The newest moment there is.</param>
    public IReadOnlyList<Objection> Keep(Mill mill, Instant? at, string? by, string nameless, Instant now)
    {
        ArgumentNullException.ThrowIfNull(mill);
        var faults = new List<string>();
        BakedLoaf[] loaves = [.. SemicolonLines.Of(Loaves).Select(l => Loaf(l.Line, l.Cells, faults)).OfType<BakedLoaf>()];
        FlourOrigin[] flours = [.. SemicolonLines.Of(Flours).Where(l => l.Cells.Length == 2 || Wrong($"Where the flours came from, line {l.Line}: write flour; place.", faults)).Select(l => new FlourOrigin(l.Cells[0], l.Cells[1]))];
        TasterRanking[] rankings = [.. SemicolonLines.Of(Rankings).Where(l => l.Cells.Length > 1 || Wrong($"Ranks, line {l.Line}: write taster; best flour; next flour.", faults))
            .Select(l => new TasterRanking(l.Cells[0], [.. l.Cells.Skip(1).Select(c => (IReadOnlyList<string>)c.Split('=', StringSplitOptions.TrimEntries))]))];
        BakedStep[] steps = [.. (Steps ?? []).Where(s => s.IsTyped).Select(s => s.Read(faults))];
        faults.AddRange(EntryFaults.Of("-", at, by, nameless));
        var session = faults.Count > 0 ? null : new BakeSession(
            (Code ?? "").Trim(), at!.Value, (Baker ?? "").Trim(), (Control ?? "").Trim(), loaves, flours, (Remark ?? "").Trim(), steps.Length > 0 ? (Formula ?? "").Trim() : "", steps, rankings, (Reason ?? "").Trim());
        return session is null ? [.. faults.Select(f => new Objection(f, false))] : BakeSessions.Keep(mill, session, by!, now).Objections;
    }

    private static BakedLoaf? Loaf(int line, string[] cells, List<string> faults)
    {
        var where = $"Loaves, line {line}";
        if (cells.Length is not (4 or 5))
        {
            faults.Add($"{where}: write flour; dough; volume in mL; weight in g; and a score where there is one.");
            return null;
        }

        var (volume, weight) = (SemicolonLines.Number(where, "the volume", cells[2], faults), SemicolonLines.Number(where, "the weight", cells[3], faults));
        var score = cells.Length < 5 || cells[4].Length == 0 ? null : SemicolonLines.Number(where, "the score", cells[4], faults);
        return volume is { } millilitres && weight is { } grams ? new BakedLoaf(cells[0], cells[1], millilitres, grams, score) : null;
    }

    private static bool Wrong(string words, List<string> faults)
    {
        faults.Add(words);
        return false;
    }
}

/// <summary>A step as typed beside what the formula asks.</summary>
public sealed class BakeStepRow
{
    /// <summary>What is done.</summary>
    public string? Name { get; set; }

    /// <summary>Minutes the formula asks.</summary>
    public string? AskedMinutes { get; set; }

    /// <summary>°C the formula asks; empty for the room's.</summary>
    public string? AskedCelsius { get; set; }

    /// <summary>Minutes it took.</summary>
    public string? Minutes { get; set; }

    /// <summary>°C that were read.</summary>
    public string? Celsius { get; set; }

    /// <summary>Whether anything was typed.</summary>
    public bool IsTyped => !string.IsNullOrWhiteSpace(Minutes) || !string.IsNullOrWhiteSpace(Celsius);

    /// <summary>The row of a formula's step, nothing typed yet.</summary>
    public static BakeStepRow Of(BakeStep step)
    {
        ArgumentNullException.ThrowIfNull(step);
        return new() { Name = step.Name, AskedMinutes = Text(step.Minutes), AskedCelsius = Text(step.Celsius) };
    }

    /// <summary>The row of a step that was done.</summary>
    public static BakeStepRow Of(BakedStep step)
    {
        ArgumentNullException.ThrowIfNull(step);
        return new() { Name = step.Name, AskedMinutes = Text(step.PlannedMinutes), AskedCelsius = Text(step.PlannedCelsius), Minutes = Text(step.Minutes), Celsius = Text(step.Celsius) };
    }

    /// <summary>The step; what cannot be read is said.</summary>
    public BakedStep Read(ICollection<string> faults) => new(
        (Name ?? "").Trim(), TypedNumber.Read($"{Name}, minutes", Minutes, faults), TypedNumber.Read($"{Name}, °C", Celsius, faults),
        TypedNumber.Read($"{Name}, minutes asked", AskedMinutes, faults), TypedNumber.Read($"{Name}, °C asked", AskedCelsius, faults));

    private static string? Text(double? number) => number?.ToString(CultureInfo.InvariantCulture);
}
