using Evengrist.Packing.Dispatch;

namespace Evengrist.Packing.Rework;

/// <summary>Which tote to feed into a run, how much of it, how long that lasts, and why another is passed over. Model: docs/model/rework.md.</summary>
public static class ReworkModel
{
    /// <summary>Totes for a run, the oldest first; the first that nothing stops and nothing is asked of is the next to feed.</summary>
    /// <param name="totes">Totes with something in them; others are left out.</param>
    /// <param name="run">The run.</param>
    /// <param name="rules">The mill's rules.</param>
    public static IReadOnlyList<ReworkChoice> Of(IEnumerable<ReworkTote> totes, ReworkRun run, ReworkRules rules)
    {
        ArgumentNullException.ThrowIfNull(totes);
        ReworkChoice[] all = [.. totes.Where(t => t.Grams > 0).OrderByDescending(t => t.AgeDays).ThenBy(t => t.Code, StringComparer.Ordinal).Select(t => Of(t, run, rules))];
        var next = Array.FindIndex(all, c => c.Findings.All(f => f.Weight == FindingWeight.Caution));
        return [.. all.Select((c, i) => c with { IsNext = i == next })];
    }

    /// <summary>A tote for a run.</summary>
    public static ReworkChoice Of(ReworkTote tote, ReworkRun run, ReworkRules rules)
    {
        ArgumentNullException.ThrowIfNull(tote);
        ArgumentNullException.ThrowIfNull(run);
        ArgumentNullException.ThrowIfNull(rules);
        var most = Math.Max(0, run.Values.Select(v => v.MostPercent()).Append(rules.MostOf(run.Flour)).Min());
        double? rate = run.TonnesPerHour is { } flow && most > 0 ? flow * 1e6 * most / (100 - most) : null;
        return new(tote, [.. Findings(tote, run, rules, most)], most, rate, rate is { } grams ? tote.Grams / grams : null, run.IsEnriched ? most * tote.MostEnriched : 0);
    }

    private static IEnumerable<LoadFinding> Findings(ReworkTote tote, ReworkRun run, ReworkRules rules, double most)
    {
        string[] foreign = [.. tote.Allergens.Except(run.Allergens, StringComparer.OrdinalIgnoreCase)];
        if (foreign.Length > 0)
        {
            yield return LoadFinding.Stop($"{tote.Code} has {string.Join(", ", foreign)}, which the label of {run.Flour} does not name. It never goes into {run.Flour}.");
        }

        if (tote.Hold.Length > 0)
        {
            yield return LoadFinding.Stop($"{tote.Code} is on HOLD: {tote.Hold}. A named person releases it first.");
        }

        if (most <= 0)
        {
            yield return LoadFinding.Stop($"Not even a little of it keeps every end of {run.Flour}.");
        }

        foreach (var other in tote.AlsoOf.Prepend(tote.Flour).Where(f => !rules.Fits(f, run.Flour)))
        {
            yield return LoadFinding.Ask($"Like goes into like: {other} in {tote.Code} is not {run.Flour}. Say why it goes all the same.");
        }

        if (tote.AgeDays > rules.MostDays)
        {
            yield return LoadFinding.Ask(FormattableString.Invariant($"{tote.Code} is {tote.AgeDays:0} days old, more than {rules.MostDays}. Look at it, smell it, and say why it goes all the same."));
        }

        if (tote.MostEnriched > 0 && !run.IsEnriched)
        {
            yield return LoadFinding.Ask(FormattableString.Invariant($"Up to {100 * tote.MostEnriched:0} % of {tote.Code} is enriched, and {run.Flour} is not: its label does not name what was added. Say why it goes all the same."));
        }
        else if (tote.MostEnriched > 0)
        {
            yield return LoadFinding.Caution(FormattableString.Invariant($"Up to {100 * tote.MostEnriched:0} % of {tote.Code} is enriched already. Where the premix is dosed on all of the flour, {most:0.##} % of it gives up to {most * tote.MostEnriched:0.##} % of the dose too much."));
        }
        else if (run.IsEnriched)
        {
            yield return LoadFinding.Caution($"{tote.Code} is not enriched: the premix has to be dosed on all of the flour, rework included.");
        }

        if (tote.Reason.Length == 0)
        {
            yield return LoadFinding.Ask($"Nobody has said why {tote.Code} is rework. Enter it first, or say it now.");
        }
    }
}

/// <summary>A tote beside a run.</summary>
/// <param name="Tote">The tote.</param>
/// <param name="Findings">What stops it, is asked of it, is cautioned.</param>
/// <param name="MostPercent">Most of the run it may be, per cent of both together; 0 where not even a little keeps every end.</param>
/// <param name="GramsPerHour">What that is, g/h; null where the run's flow is not known.</param>
/// <param name="Hours">How long it lasts at that, h; null likewise.</param>
/// <param name="OverEnrichedPercent">Of the premix's dose too much, at most, per cent, where it is dosed on all; 0 where the run is not enriched.</param>
public sealed record ReworkChoice(ReworkTote Tote, IReadOnlyList<LoadFinding> Findings, double MostPercent, double? GramsPerHour, double? Hours, double OverEnrichedPercent)
{
    /// <summary>Whether it is the next to feed: first in, first out.</summary>
    public bool IsNext { get; init; }
}
