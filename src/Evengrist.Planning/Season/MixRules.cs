using Evengrist.Season;

namespace Evengrist.Planning.Season;

/// <summary>Adds to the linear problem what makes a plan that can be milled: most gates, least shares, campaigns.</summary>
/// <remarks>
/// Where it is settled which wheats a flour draws in a period, gates and shares are linear. Where it is open, each candidate has a whole number 0 or 1:
/// x ≤ U·y, Σ y ≤ gates, x ≥ share·W·y, with U and W from what is wanted, and from the hours where flour can be stored.
/// </remarks>
internal sealed class MixRules
{
    private readonly SeasonModel model;

    private MixRules(SeasonModel model) => this.model = model;

    /// <summary>Whole numbers, by flour, period and wheat; filled only where it is open which wheats are drawn.</summary>
    public Dictionary<(int Wheat, int Flour, int Period), int> Drawn { get; } = [];

    /// <summary>Whole numbers, by flour and period, of campaigns.</summary>
    public Dictionary<(int Flour, int Period), int> Milled { get; } = [];

    /// <summary>Whether any rule is there at all.</summary>
    public static bool Any(SeasonSpec spec) => spec.Flours.Any(Any) || spec.Units.Any(u => u.LeastCampaignHours > 0);

    /// <summary>Whether a flour's mixes have rules.</summary>
    public static bool Any(SeasonFlour flour) => flour.MostGates is not null || flour.LeastShare > 0;

    /// <summary>Adds the rules.</summary>
    /// <param name="model">The linear problem.</param>
    /// <param name="supports">Which wheats each flour may draw in each period.</param>
    public static MixRules Put(SeasonModel model, Supports supports)
    {
        var rules = new MixRules(model);
        for (var f = 0; f < model.Spec.Flours.Count; f++)
        {
            for (var t = 0; t < model.Spec.Periods.Count; t++)
            {
                rules.One(f, t, supports);
            }
        }

        return rules;
    }

    private void One(int f, int t, Supports supports)
    {
        var (flour, problem) = (model.Spec.Flours[f], model.Problem);
        var wheats = Enumerable.Range(0, model.Wheats.Length).Where(k => model.Use[k, f, t] >= 0).ToArray();
        foreach (var k in wheats.Where(k => !supports[k, f, t]))
        {
            problem.Bound(model.Use[k, f, t], 0, 0);
        }

        wheats = [.. wheats.Where(k => supports[k, f, t])];
        if (wheats.Length == 0)
        {
            return;
        }

        var (hours, tight) = Most(model, f, t, wheats);
        Campaign(f, t, wheats, supports, hours);
        if (!Any(flour))
        {
            return;
        }

        var open = supports.IsOpen(f, t) && (flour.LeastShare > 0 || wheats.Length > flour.MostGates);
        var gates = open && flour.MostGates is { } most && wheats.Length > most ? problem.Row($"gates.{flour.Code}.{t}", double.NegativeInfinity, most) : -1;
        foreach (var k in wheats)
        {
            var x = model.Use[k, f, t];
            if (!open)
            {
                Share(f, t, k, wheats, -1, 0);
                continue;
            }

            var y = Drawn[(k, f, t)] = problem.Column($"Y.{x}", 0, 1, 0, whole: true);
            var cap = problem.Row($"drawn.{x}", double.NegativeInfinity, 0);
            problem.Put(cap, x, 1);
            problem.Put(cap, y, -hours);
            if (gates >= 0)
            {
                problem.Put(gates, y, 1);
            }

            if (flour.LeastShare > 0 && tight)
            {
                var row = problem.Row($"share.{x}", 0, double.PositiveInfinity);
                problem.Put(row, x, 1);
                problem.Put(row, y, -flour.LeastShare * hours);
            }
            else
            {
                Share(f, t, k, wheats, y, hours);
            }
        }
    }

    // x ≥ share·Σ x where it is drawn; the whole number, where there is one, lets go where it is not.
    private void Share(int f, int t, int k, int[] wheats, int y, double most)
    {
        var (share, problem) = (model.Spec.Flours[f].LeastShare, model.Problem);
        if (share <= 0)
        {
            return;
        }

        var row = problem.Row($"share.{model.Use[k, f, t]}", y >= 0 ? -share * most : 0, double.PositiveInfinity);
        foreach (var j in wheats)
        {
            problem.Put(row, model.Use[j, f, t], (j == k ? 1 : 0) - share);
        }

        if (y >= 0)
        {
            problem.Put(row, y, -share * most);
        }
    }

    private void Campaign(int f, int t, int[] wheats, Supports supports, double most)
    {
        var unit = model.Spec.Units[model.UnitOf(f)];
        if (unit.LeastCampaignHours is not > 0)
        {
            return;
        }

        var (problem, least) = (model.Problem, unit.LeastCampaignHours.Value * unit.TonnesPerHour);
        if (supports.IsOpen(f, t) || supports.IsCampaignOpen(f, t))
        {
            var z = Milled[(f, t)] = problem.Column($"C.{f}.{t}", 0, 1, 0, whole: true);
            var (floor, cap) = (problem.Row($"campaign.{f}.{t}", 0, double.PositiveInfinity), problem.Row($"milled.{f}.{t}", double.NegativeInfinity, 0));
            problem.Put(floor, z, -least);
            problem.Put(cap, z, -most);
            Array.ForEach(wheats, k => problem.Put(floor, model.Use[k, f, t], 1));
            Array.ForEach(wheats, k => problem.Put(cap, model.Use[k, f, t], 1));
        }
        else
        {
            var floor = problem.Row($"campaign.{f}.{t}", least, double.PositiveInfinity);
            Array.ForEach(wheats, k => problem.Put(floor, model.Use[k, f, t], 1));
        }
    }

    /// <summary>Most wheat that can be ground for a flour in a period; tight where it is what is ground whenever nothing is unmet.</summary>
    public static (double Tonnes, bool Tight) Most(SeasonModel model, int f, int t, int[] wheats)
    {
        var (flour, unit) = (model.Spec.Flours[f], model.Spec.Units[model.UnitOf(f)]);
        var hours = unit.Hours[t] * unit.TonnesPerHour;
        var wanted = Math.Max(0, flour.Demand[t] - (t == 0 ? flour.OpeningTonnes : 0)) / wheats.Min(k => SeasonYield.Of(model.Wheats[k], flour));
        return flour.StockMost <= 0 && wanted <= hours ? (wanted, true) : (hours, false);
    }
}
