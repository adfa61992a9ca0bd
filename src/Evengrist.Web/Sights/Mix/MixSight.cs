using Evengrist.Bins;
using Evengrist.Bins.BestBin;
using Evengrist.Intake.Deciding;
using Evengrist.Ledger;
using Evengrist.Mix;
using Evengrist.Planning.Mix;
using Evengrist.Quantities;
using Evengrist.Season;

namespace Evengrist.Web.Sights.Mix;

/// <summary>Today's mix from what leaves the bins next, at today's cost and at what a tonne costs the year.</summary>
/// <param name="Ask">What was asked.</param>
/// <param name="Spec">What was put to the solver.</param>
/// <param name="Outcome">What came of it.</param>
/// <param name="Remarks">What was left out or supposed.</param>
/// <param name="Habit">The old habit that stands beside it; null where there is none or it cannot be kept up.</param>
/// <param name="NoHabit">Why there is none; empty where there is one.</param>
/// <param name="Market">Limits of the mill's markets on wheat, with their switches as the mill keeps them.</param>
public sealed record MixSight(MixAsk Ask, MixSpec Spec, MixOutcome Outcome, IReadOnlyList<string> Remarks, MixHabit? Habit, string NoHabit, IReadOnlyList<MarketLimit> Market)
{
    /// <summary>Solves what was asked.</summary>
    /// <param name="ask">What was asked.</param>
    /// <param name="wheats">What lies in the bins, first in first out.</param>
    /// <param name="values">What a tonne is worth today; null where nothing is kept.</param>
    /// <param name="worth">What a tonne is worth to the year; null before there is a plan.</param>
    /// <param name="currency">Currency of both.</param>
    /// <param name="habit">The old habit; null for none.</param>
    /// <param name="market">Limits of the mill's markets on wheat.</param>
    /// <param name="solids">Ash, gluten and toxins of what leaves each bin next.</param>
    public static MixSight Of(MixAsk ask, IReadOnlyList<SeasonWheat> wheats, BandValues? values, SeasonWorth? worth, string currency, MixHabit? habit, IReadOnlyList<MarketLimit> market,
        IReadOnlyDictionary<string, IReadOnlyList<BlendSolids>> solids)
    {
        ArgumentNullException.ThrowIfNull(ask);
        ArgumentNullException.ThrowIfNull(wheats);
        ArgumentNullException.ThrowIfNull(market);
        ArgumentNullException.ThrowIfNull(solids);
        var remarks = new List<string>();
        var bins = new List<MixBin>();
        foreach (var wheat in wheats.Where(w => ask.Flour.Classes.Count == 0 || ask.Flour.Classes.Contains(w.WheatClass)))
        {
            if (Cost(wheat, values) is { } cost)
            {
                bins.Add(Bin(wheat, cost, worth is null ? null : worth.Of(wheat.Code) - cost, ask, solids.GetValueOrDefault(wheat.Code, [])));
            }
            else
            {
                remarks.Add($"{wheat.Code} is left out: no value of a tonne of {wheat.WheatClass} is kept.");
            }
        }

        remarks.Add(worth is null ? "There is no plan of the year: the cost of today alone is kept least." : "The cost of the year is kept least: what a tonne is worth to the rest of it, by the linear plan.");
        remarks.Add("± is from the trucks' readings alone: an error that an instrument shares over all of them is not in it.");
        remarks.AddRange(PartlyRead(bins, solids));
        remarks.AddRange(ask.OfFlour.Where(f => f.Kept is not null && !f.IsLimited && bins.Any(b => b.Values.ContainsKey(f.What))).Select(f => $"The flour is expected by the relation kept: {f.Relation.Words}."));
        if (ask.MixDown && market.Any(l => !l.BlendDown))
        {
            remarks.Add("Asked as if mixing down were allowed: by the mill's own limits it is off, and no sheet can be written for a bin above one.");
        }

        var gone = habit?.Shares.Keys.Where(b => bins.All(o => o.Code != b)).ToArray() ?? [];
        var spec = new MixSpec
        {
            Bins = bins, Limits = ask.Limits, Relations = ask.Relations, RateTonnesPerHour = ask.Rate, Hours = ask.Hours, Currency = currency,
            Gates = new GateRules { StepPercent = ask.Step, MostGates = ask.Flour.MostGates, LeastOpenShare = ask.Flour.LeastShare > 0 ? ask.Flour.LeastShare : null },
            Habit = gone.Length == 0 ? habit?.Shares : null, Market = ask.MixDown ? [.. market.Select(l => l with { BlendDown = true })] : market,
        };
        var none = habit is null ? "No sheet of this flour is kept yet: there is no habit to put beside it." : gone.Length > 0 ? $"The last sheet of this flour, {habit.Sheet.Code}, draws from {string.Join(", ", gone)}, which cannot be drawn now: the habit cannot be kept up." : "";
        return new MixSight(ask, spec, ask.Faults.Count > 0 ? new MixRefused(ask.Faults) : MixSolver.Solve(spec), remarks, gone.Length == 0 ? habit : null, none, market);
    }

    /// <summary>Bins that by themselves lie above a market's limit while the mill's own switch for mixing down is off: no sheet may open their gates, whatever was asked.</summary>
    public IReadOnlyList<LeftOut> Barred => BlendDown.Of(Spec with { Market = Market }).Refused;

    private static readonly double ToDry = MixBlend.Factor(Basis.At12);

    // What was tested on some trucks alone stands for all that lies there.
    private static IEnumerable<string> PartlyRead(IReadOnlyList<MixBin> bins, IReadOnlyDictionary<string, IReadOnlyList<BlendSolids>> solids) =>
        bins.SelectMany(b => solids.GetValueOrDefault(b.Code, []).Select(s => (b.Code, Solid: s))).Where(s => s.Solid.ShareRead < 0.995).GroupBy(s => s.Solid.What)
            .Select(g => FormattableString.Invariant($"Not every truck was tested for {g.Key.Words()}; those that were stand for the rest: {string.Join(", ", g.Select(s => FormattableString.Invariant($"{s.Code} {100 * s.Solid.ShareRead:0} %")))} of the wheat that leaves next."));

    private static double? Cost(SeasonWheat wheat, BandValues? values) =>
        wheat.Quality.TryGet(Property.Protein, out var protein) ? values?.PerTonne(wheat.WheatClass, protein.Value) : null;

    // What leaves next: the first layer where the bin has layers.
    private static MixBin Bin(SeasonWheat wheat, double cost, double? year, MixAsk ask, IReadOnlyList<BlendSolids> solids)
    {
        var next = wheat.Layers.Count > 0 ? wheat.Layers[0] : null;
        var values = wheat.Quality.Values.ToDictionary(v => v.Key, v => v.Value);
        foreach (var (what, value) in next?.Quality.Values ?? new Dictionary<Property, SeasonValue>())
        {
            values[what] = value;
        }

        foreach (var solid in solids)
        {
            values.TryAdd(solid.What, new SeasonValue(solid.ValueDry / ToDry, (solid.StandardUncertaintyDry ?? 0) / ToDry, Basis.At12));
        }

        return new MixBin(wheat.Code, wheat.WheatClass, cost)
        {
            YearValuePerTonne = year,
            MoisturePercent = next?.MoisturePercent ?? wheat.MoisturePercent,
            Values = values.ToDictionary(v => v.Key, v => new MixValue(v.Value.Value, v.Value.Basis, v.Value.Spread)),
            Tonnes = next?.Tonnes ?? wheat.OpeningTonnes,
            LockedShare = ask.Locks.TryGetValue(wheat.Code, out var share) ? share : null,
        };
    }
}
