using Evengrist.Planning.Solving;

namespace Evengrist.Planning.Season.Mixing;

/// <summary>All mixes of a season: prices new ones, keeps them in the season over mixes, and tells which of them go together.</summary>
internal sealed class MixBook : IDisposable
{
    private readonly SeasonModel model;
    private readonly LinearAnswer linear;
    private readonly MixPricing[] pricings;

    /// <param name="model">The linear problem.</param>
    /// <param name="linear">Its answer.</param>
    public MixBook(SeasonModel model, LinearAnswer linear)
    {
        (this.model, this.linear) = (model, linear);
        HashSet<int> rows = [.. model.Limits.SelectMany(l => l.Caps.Append(l.Row))];
        var terms = model.Problem.Terms.Where(t => rows.Contains(t.Row)).ToLookup(t => t.Row);
        var limits = model.Limits.ToLookup(l => (l.Flour, l.Period));
        pricings = [.. from t in Enumerable.Range(0, model.Spec.Periods.Count)
                       from f in Enumerable.Range(0, model.Spec.Flours.Count)
                       where MixRules.Any(model.Spec.Flours[f])
                       let pricing = new MixPricing(model, terms, [.. limits[(f, t)]], f, t)
                       where pricing.Uses.Length > 0
                       select pricing];
        Master = new MixMaster(model, pricings, linear);
    }

    /// <summary>Flours and periods that are mixed.</summary>
    public int Count => pricings.Length;

    /// <summary>The season over the mixes known so far.</summary>
    public MixMaster Master { get; }

    /// <summary>Takes in the mixes of the linear plan where it keeps the rules, those of a plan that is known and, at the linear plan's duals, the best with each of the wheats that it draws.</summary>
    public void Seed(IReadOnlyList<double>? known) => Each((pricing, _) =>
    {
        var prices = Master.Prices(pricing, 1);
        MixColumn? Cheapest(int with) => pricing.Cheapest(prices, double.PositiveInfinity, with: with).LastOrDefault();
        IEnumerable<MixColumn?> some = [pricing.Of(linear.Values), known is null ? null : pricing.Of(known), Cheapest(-1)];
        return [.. some.Concat(Enumerable.Range(0, pricing.Uses.Length).Where(i => linear.Values[pricing.Uses[i]] > 1e-6).Select(Cheapest)).OfType<MixColumn>()];
    });

    /// <summary>Takes in the mixes that would lower the cost; gives by how much, money, at the most.</summary>
    /// <param name="lean">How far to lean on the linear problem's duals, 0 to 1.</param>
    /// <param name="settled">Where it is settled which wheats are drawn.</param>
    public List<((int Flour, int Period) Key, double Gain)> Price(double lean, IReadOnlyDictionary<(int Flour, int Period), int[]> settled)
    {
        var gains = new double[pricings.Length];
        Each((pricing, i) =>
        {
            var prices = Master.Prices(pricing, lean);
            var found = pricing.Cheapest(prices, lean > 0 ? double.PositiveInfinity : -1e-7, settled.GetValueOrDefault((pricing.Flour, pricing.Period))).TakeLast(2).ToArray();
            if (found.Length > 0)
            {
                var cost = found[^1].Penalty + found[^1].Wheats.Zip(found[^1].Shares, (k, s) => prices[Array.BinarySearch(pricing.Wheats, k)] * s).Sum();
                gains[i] = -cost * MixRules.Most(model, pricing.Flour, pricing.Period, pricing.Wheats).Tonnes;
            }

            return found;
        });
        return [.. gains.Select((g, i) => ((pricings[i].Flour, pricings[i].Period), g)).Where(g => g.g > 0)];
    }

    /// <summary>Mixes of a flour in a period as one; null where that does not keep the rules.</summary>
    public MixColumn? Joined(IGrouping<(int Flour, int Period), (MixColumn Mix, double Tonnes)> used)
    {
        var (all, shares, penalty) = (used.Sum(u => u.Tonnes), new SortedDictionary<int, double>(), 0.0);
        foreach (var (mix, tonnes) in used)
        {
            penalty += mix.Penalty * tonnes / all;
            for (var i = 0; i < mix.Wheats.Length; i++)
            {
                shares[mix.Wheats[i]] = shares.GetValueOrDefault(mix.Wheats[i]) + (mix.Shares[i] * tonnes / all);
            }
        }

        var flour = model.Spec.Flours[used.Key.Flour];
        return shares.Count <= (flour.MostGates ?? int.MaxValue) && shares.Values.All(s => s >= flour.LeastShare * (1 - 1e-9)) ? new MixColumn(used.Key.Flour, used.Key.Period, [.. shares.Keys], [.. shares.Values], penalty) : null;
    }

    /// <summary>The mix whose wheats are drawn for most of a flour in a period, and for how large a part of it.</summary>
    public static (MixColumn Mix, double Part) Most(IGrouping<(int Flour, int Period), (MixColumn Mix, double Tonnes)> used)
    {
        var most = used.GroupBy(u => string.Join(' ', u.Mix.Wheats)).MaxBy(g => g.Sum(u => u.Tonnes))!;
        return (most.First().Mix, most.Sum(u => u.Tonnes) / used.Sum(u => u.Tonnes));
    }

    /// <inheritdoc/>
    public void Dispose() => Master.Dispose();

    private void Each(Func<MixPricing, int, MixColumn[]> priced)
    {
        var found = new MixColumn[pricings.Length][];
        Parallel.For(0, pricings.Length, i => found[i] = priced(pricings[i], i));
        foreach (var mix in found.SelectMany(m => m))
        {
            Master.Add(mix);
        }
    }
}
