using Evengrist.Milling.Learning;
using Evengrist.Milling.OnPaper;
using MathNet.Numerics.LinearAlgebra;

namespace Evengrist.Milling.Drift;

/// <summary>The mill at the newest test, sound and drifted: what a drift costs and which measurement would tell it.</summary>
internal sealed class DriftReckoning(DatedTest newest, IReadOnlyList<TuneKey> keys, Vector<double> sound)
{
    private const double Odds = 20;
    private readonly MillTest test = newest.Test;
    private readonly MillFigures figures = MillFigures.Of(newest.Test.Sheet, newest.Test.Wheat, keys, sound, TestErrors.Usual);

    /// <summary>What a drift of some amount costs.</summary>
    public DriftCost Cost(DriftCandidate of, Estimate amount, DriftPrices? prices)
    {
        var turned = sound.Clone();
        foreach (var key in of.Keys)
        {
            turned[key] += amount.Value;
        }

        var wheat = of.Keys.Count > 0 ? test.Wheat : DriftRow.Wet(test.Wheat, amount.Value);
        var drifted = MillFigures.Of(test.Sheet, wheat, keys, turned, TestErrors.Usual);
        var flour = MillForecast.FlourOf(test.Sheet);
        var (ash, was) = (drifted.Ash(flour).Value, figures.Ash(flour).Value);
        var points = AtAsh(drifted, flour, was) - figures.Yield(flour).Value;
        var unsure = Math.Sqrt(Math.Pow(amount.Uncertainty / amount.Value, 2) + (MillChange.Shortfall * MillChange.Shortfall));
        var money = prices is null ? (double?)null : -points * MillChange.PerPoint(test.Wheat) * (double)(prices.Flour - prices.Feed);
        return new DriftCost(new Estimate(points, Math.Abs(points) * unsure), ash - was, money is { } m ? new Estimate(m, Math.Abs(m) * unsure) : null);
    }

    /// <summary>The measurement that tells causes apart best; null where more than a hundred of any would be needed.</summary>
    /// <param name="equations">What is known before the cause is taken in.</param>
    /// <param name="causes">The causes with amounts and probabilities; what is left of them is no drift.</param>
    public DriftTell? Next(DriftEquations equations, IReadOnlyList<(DriftCandidate Of, double Amount, double Probability)> causes)
    {
        var wetter = MillFigures.Of(test.Sheet, DriftRow.Wet(test.Wheat, DriftRow.Wetter), keys, sound, TestErrors.Usual);
        var errors = TestErrors.Usual;
        List<(string What, double Told)> told = [];
        foreach (var passage in test.Sheet.Passages)
        {
            if (figures.Release(passage.Code) is { } release)
            {
                told.Add(($"{passage.Code} release", Told(release, wetter.Release(passage.Code)!, $"{passage.Code} release", errors.ReleasePoints)));
            }
        }

        foreach (var product in figures.Solution.Products.Where(p => p.YieldPercent > 0.05).Select(p => p.Product.Code))
        {
            told.Add(($"{product} yield", Told(figures.Yield([product]), wetter.Yield([product]), $"{product} yield", errors.YieldPoints + (errors.YieldShare * figures.Yield([product]).Value))));
            told.Add(($"{product} ash", Told(figures.Ash([product]), wetter.Ash([product]), $"{product} ash", errors.AshPoints)));
        }

        var best = told.MaxBy(t => t.Told);
        return best.Told < 0.05 ? null : new DriftTell(best.What, Math.Max(1, (int)Math.Ceiling(2 * Math.Log(Odds) / best.Told)));

        // Squared distance of what two causes would show, in errors, over the pairs as likely as they are.
        double Told(Figure figure, Figure wet, string what, double sigma)
        {
            var unknowns = Vector<double>.Build.Dense(equations.Found.Count);
            var known = keys.Count(k => k.Kind is not TuneKind.Tear);
            unknowns.SetSubVector(0, known, figure.Gradient.SubVector(0, known));
            var offset = equations.OffsetOf(what);
            if (offset is { } at)
            {
                unknowns[at] = 1;
            }

            var variance = Math.Pow(equations.Spread.GetValueOrDefault(what, sigma), 2) + equations.Variance(unknowns) + (offset is null ? figure.ModelError * figure.ModelError : 0);
            (double Shift, double Probability)[] shows =
            [
                .. causes.Select(c => (c.Amount * ((c.Of.Keys.Count > 0 ? c.Of.Keys.Sum(k => figure.Gradient[k]) : (wet.Value - figure.Value) / DriftRow.Wetter) - equations.TakenBack(unknowns, c.Of.Column)), c.Probability)),
                (0, Math.Max(0, 1 - causes.Sum(c => c.Probability))),
            ];
            var (sum, pairs) = (0.0, 0.0);
            for (var i = 0; i < shows.Length; i++)
            {
                for (var j = i + 1; j < shows.Length; j++)
                {
                    var likely = shows[i].Probability * shows[j].Probability;
                    (sum, pairs) = (sum + (likely * Math.Pow(shows[i].Shift - shows[j].Shift, 2) / variance), pairs + likely);
                }
            }

            return pairs > 0 ? sum / pairs : 0;
        }
    }

    // Yield of flour once the streams of most ash are out until the ash is what it was; no credit where it is less.
    private static double AtAsh(MillFigures of, string[] flour, double ash)
    {
        var streams = flour.Select(c => (Yield: of.Yield([c]).Value, Ash: of.Ash([c]).Value)).Where(s => s.Yield > 0).OrderByDescending(s => s.Ash).ToArray();
        var (yield, amount) = (streams.Sum(s => s.Yield), streams.Sum(s => s.Yield * s.Ash));
        foreach (var stream in streams.TakeWhile(s => s.Ash > ash))
        {
            var over = amount - (ash * yield);
            if (over <= 0)
            {
                break;
            }

            var taken = Math.Min(stream.Yield, over / (stream.Ash - ash));
            (yield, amount) = (yield - taken, amount - (taken * stream.Ash));
        }

        return yield;
    }
}
