using Evengrist.Planning.Solving;
using Evengrist.Season;

namespace Evengrist.Planning.Season;

/// <summary>The season in blocks of several periods: soon solved, and it tells which wheats a flour is likely to draw when.</summary>
/// <remarks>It only says where to look first; whatever it leaves out is opened before the answer is given, so that no answer depends on it.</remarks>
internal static class CoarseSeason
{
    private const int Block = 4;

    /// <summary>Too few periods are solved as they are.</summary>
    public const int Worthwhile = 24;

    /// <summary>Columns of wheat into flour that are left for later.</summary>
    public static List<int> Later(SeasonModel model)
    {
        var spec = Of(model.Spec);
        var coarse = SeasonBuild.Of(spec, LayerDraws.First(spec));
        var answer = LinearSolver.Solve(coarse.Problem);
        var later = new List<int>();
        for (var k = 0; answer.HasValues && k < model.Wheats.Length; k++)
        {
            for (var f = 0; f < model.Spec.Flours.Count; f++)
            {
                for (var t = 0; t < model.Spec.Periods.Count; t++)
                {
                    if (model.Use[k, f, t] is >= 0 and var x && !Enumerable.Range((t / Block) - 1, 3).Any(b => b >= 0 && b < spec.Periods.Count && coarse.Use[k, f, b] is >= 0 and var c && answer.Values[c] > 1e-6))
                    {
                        later.Add(x);
                    }
                }
            }
        }

        return later;
    }

    private static SeasonSpec Of(SeasonSpec spec)
    {
        int[][] blocks = [.. Enumerable.Range(0, spec.Periods.Count).Chunk(Block)];
        SeasonWheat Wheat(SeasonWheat w) => w with { Layers = [], Deliveries = [.. w.Deliveries.Select(d => new SeasonDelivery(d.Period / Block, d.Tonnes))] };
        return spec with
        {
            Periods = [.. blocks.Select(b => new SeasonPeriod(spec.Periods[b[0]].Start, b.Sum(t => spec.Periods[t].Days)))],
            Units = [.. spec.Units.Select(u => u with { Hours = [.. blocks.Select(b => b.Sum(t => u.Hours[t]))] })],
            Wheats = [.. spec.Wheats.Select(Wheat)],
            Offers = [.. spec.Offers.Select(o => o with
            {
                First = o.First / Block, Last = o.Last / Block, Tiers = [.. o.Tiers.Select(t => t with { TonnesPerPeriod = t.TonnesPerPeriod * Block })],
            })],
            Flours = [.. spec.Flours.Select(f => f with { Demand = [.. blocks.Select(b => b.Sum(t => f.Demand[t]))] })],
            Choices = [],
        };
    }
}
