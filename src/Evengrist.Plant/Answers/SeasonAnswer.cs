using Evengrist.Season;

namespace Evengrist.Plant.Answers;

/// <summary>A plan of a crop year.</summary>
/// <param name="Exit">Why planning stopped.</param>
/// <param name="IsOnSpec">Whether every flour is made in full and keeps every limit, with no relief.</param>
/// <param name="IsMillable">Whether it keeps most gates, least shares and campaigns.</param>
/// <param name="Costs">What it costs by kind, money.</param>
/// <param name="Total">What it costs.</param>
/// <param name="Bound">No plan can cost less; where wheats have layers, none that draws them alike.</param>
/// <param name="GapPercent">(cost − bound)/cost, per cent.</param>
/// <param name="Seconds">Time it took.</param>
/// <param name="LayerDifference">What the layers of bins leave open, units of a property.</param>
/// <param name="Covers">How long each flour lasts.</param>
/// <param name="Misses">Limits that are not kept.</param>
/// <param name="Reliefs">Relaxations made use of.</param>
/// <param name="Flours">Flour by period.</param>
/// <param name="Uses">Wheat into flour by period.</param>
/// <param name="Purchases">Wheat bought.</param>
/// <param name="Stocks">Wheat in store.</param>
/// <param name="Budget">By wheat and month.</param>
/// <param name="Buy">What to buy, until when, up to which price.</param>
public sealed record SeasonAnswer(
    string Exit, bool IsOnSpec, bool IsMillable, SeasonCosts Costs, double Total, double Bound, double GapPercent, double Seconds, double LayerDifference,
    IReadOnlyList<SeasonCoverAnswer> Covers, IReadOnlyList<SeasonMissAnswer> Misses, IReadOnlyList<SeasonReliefAnswer> Reliefs, IReadOnlyList<PlannedFlour> Flours, IReadOnlyList<PlannedUse> Uses,
    IReadOnlyList<PlannedPurchase> Purchases, IReadOnlyList<PlannedStock> Stocks, IReadOnlyList<SeasonBudgetAnswer> Budget, IReadOnlyList<SeasonBuyAnswer> Buy)
{
    /// <summary>The plan, or why there is none.</summary>
    public static Reply<SeasonAnswer> Of(SeasonOutcome outcome) => outcome switch
    {
        SeasonPlanned planned => new Reply<SeasonAnswer>(Of(planned.Plan), []),
        SeasonInfeasible clash => new Reply<SeasonAnswer>(null, [$"These cannot all be kept: {string.Join("; ", clash.Clash)}.", .. clash.Ways.Select(w => $"What would have to yield: {w}.")]),
        SeasonFailed failed => new Reply<SeasonAnswer>(null, [failed.Reason]),
        SeasonBadInput bad => new Reply<SeasonAnswer>(null, [.. bad.Faults.Select(f => f.ToString())]),
        _ => throw new ArgumentException($"A season ended as {outcome?.GetType().Name}.", nameof(outcome)),
    };

    internal static string From(SeasonPlan plan, int period) => plan.Spec.Periods[period].Start.ToString("uuuu-MM-dd", null);

    private static SeasonAnswer Of(SeasonPlan plan) => new(
        plan.Exit.ToString(), plan.IsOnSpec, plan.IsMillable, plan.Costs, plan.Costs.Total, plan.Bound, 100 * plan.Gap, plan.Took.TotalSeconds, plan.LayerDifference,
        [.. SeasonCoverModel.Of(plan).Select(c => new SeasonCoverAnswer(c.Flour, c.StarveDate?.ToString("uuuu-MM-dd", null), c.Weeks, c.Limiting?.ToString(), c.MissedTonnes, c.UnmetTonnes))],
        [.. plan.Misses.Select(m => new SeasonMissAnswer(m.Flour, m.Period, From(plan, m.Period), m.What.ToString(), m.IsBelow, m.Amount, m.Tonnes, m.Cost))],
        [.. plan.Reliefs.Select(r => new SeasonReliefAnswer(r.Flour, r.Period, From(plan, r.Period), r.What.ToString(), r.IsBelow, r.Step, r.Share, r.Tonnes, r.Cost))], plan.Flours, plan.Uses, plan.Purchases, plan.Stocks,
        [.. SeasonBudget.Of(plan).Select(b => new SeasonBudgetAnswer(b.Wheat, b.Home, b.Month.ToString("uuuu-MM", null), b.DrawnTonnes, b.BoughtTonnes))],
        plan.Duals is null ? [] : [.. BuyAdvice.Of(plan).Select(b => new SeasonBuyAnswer(b.Offer, b.Tonnes, b.Money, b.First?.ToString("uuuu-MM-dd", null), b.Latest?.ToString("uuuu-MM-dd", null), b.WorthPerTonne, b.WorthOn.ToString("uuuu-MM-dd", null)))]);
}

/// <summary>How long a flour lasts; no starve date where it lasts to the end.</summary>
public sealed record SeasonCoverAnswer(string Flour, string? StarveDate, double Weeks, string? Limiting, double MissedTonnes, double UnmetTonnes);

/// <summary>What of a wheat is drawn and bought in a month.</summary>
public sealed record SeasonBudgetAnswer(string Wheat, string Home, string Month, double DrawnTonnes, double BoughtTonnes);

/// <summary>What to buy of an offer; above the worth, buy no more of it.</summary>
public sealed record SeasonBuyAnswer(string Offer, double Tonnes, double Money, string? First, string? Latest, double WorthPerTonne, string WorthOn);

/// <summary>A limit that is not kept: in which period and from which day on, by how much, on how many t of wheat mix.</summary>
public sealed record SeasonMissAnswer(string Flour, int Period, string From, string What, bool IsBelow, double Amount, double Tonnes, double Cost);

/// <summary>A relaxation made use of, in which period and from which day on.</summary>
public sealed record SeasonReliefAnswer(string Flour, int Period, string From, string What, bool IsBelow, int Step, double Share, double Tonnes, double Cost);
