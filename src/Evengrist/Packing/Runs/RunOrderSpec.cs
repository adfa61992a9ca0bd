namespace Evengrist.Packing.Runs;

/// <summary>Runs to be put in order over lines. Model: docs/model/run-order.md.</summary>
/// <param name="Runs">The runs, in the order in which they were asked for.</param>
/// <param name="Lines">The lines.</param>
/// <param name="Rules">Rules for changing over, the first that fits holds.</param>
public sealed record RunOrderSpec(IReadOnlyList<PackingRun> Runs, IReadOnlyList<PackingLine> Lines, IReadOnlyList<ChangeRule> Rules)
{
    /// <summary>Most runs and lines of one plan, and its longest stretch in minutes [ours].</summary>
    public const int MostRuns = 60, MostLines = 12, MostMinutes = 60 * 24 * 28;

    /// <summary>Allergens of flours beyond what every flour here has (wheat), by flour; a flour not named has none.</summary>
    public IReadOnlyDictionary<string, IReadOnlyList<string>> Allergens { get; init; } = new Dictionary<string, IReadOnlyList<string>>();

    /// <summary>Whether a clean-down may stand in the plan, to be signed by a named person; else a flour with an allergen comes after all without it.</summary>
    public bool MayCleanDown { get; init; } = true;

    /// <summary>Flour bins that feed runs.</summary>
    public IReadOnlyList<FlourBin> Bins { get; init; } = [];

    /// <summary>People there; empty where there are always enough. Outside all shifts nobody is there.</summary>
    public IReadOnlyList<CrewShift> Crew { get; init; } = [];

    /// <summary>What an order is judged by.</summary>
    public RunCosts Costs { get; init; } = new();

    /// <summary>What lies between two flours on a line.</summary>
    /// <param name="after">The flour before; null where the line stands clean.</param>
    /// <param name="into">The flour after.</param>
    public Change Between(string? after, string into)
    {
        if (after is null)
        {
            return Change.None;
        }

        // The same flour again needs nothing, but for a rule that names it on both sides.
        var rule = Rules.FirstOrDefault(r => r.Fits(after, into) && (after != into || (r.After == after && r.Into == into)));
        string[] left = [.. Of(after).Except(Of(into)).Order(StringComparer.Ordinal)];
        return rule is null ? Change.None with { Allergens = left } : new(rule.Minutes, rule.FlushTonnes, rule.FlushTo, left, rule.IsCleanDown);
    }

    /// <summary>Whether one flour may follow another on a line.</summary>
    /// <param name="after">The flour before; null where the line stands clean.</param>
    /// <param name="into">The flour after.</param>
    public bool MayFollow(string? after, string into) => Between(after, into) is var change && change.MayBe && (MayCleanDown || !change.NeedsSign);

    private IReadOnlyList<string> Of(string flour) => Allergens.GetValueOrDefault(flour) ?? [];
}
