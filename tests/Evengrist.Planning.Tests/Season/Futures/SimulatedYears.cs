using Evengrist.Planning.Season;
using Evengrist.Planning.Season.Futures;
using Evengrist.Season;
using Evengrist.Season.Futures;
using Evengrist.Season.Terms;

namespace Evengrist.Planning.Tests.Season.Futures;

/// <summary>Crop years drawn from the hidden truth, each with its own plan and promise, and whether what was stated held.</summary>
internal static class SimulatedYears
{
    /// <summary>One statement: the chance stated that a flour is on target through a period, and whether it truly was.</summary>
    public sealed record Statement(int Year, string Flour, int Period, double Stated, bool Held, Evengrist.Ledger.Property? Expected, Evengrist.Ledger.Property? Ended);

    /// <summary>What is asked of a year, by the way any mill's promise goes: from terms to spec, plan and spreads.</summary>
    /// <param name="seed">Number of the year.</param>
    /// <param name="futures">How many futures.</param>
    /// <param name="told">Changes what the mill believes of its spreads; null for what past years told it.</param>
    public static (FuturesSpec Asked, HiddenTruth Truth) Asked(int seed, int futures, Func<SeasonTerms, SeasonTerms>? told = null)
    {
        var (stocks, truth) = (new Random(seed * 7919), new HiddenTruth(seed));
        var terms = truth.Told(MillYear.Terms);
        terms = told?.Invoke(terms) ?? terms;
        return SeasonPlanner.Linear(MillYear.Spec(terms, _ => 0.9 + (0.2 * stocks.NextDouble()), days: 0)) is SeasonPlanned { Plan: var plan }
            ? (FuturesFromTerms.Of(plan, terms, futures, seed), truth)
            : throw new InvalidOperationException($"Year {seed} has no plan.");
    }

    /// <summary>Every statement of a year.</summary>
    public static IReadOnlyList<Statement> Year(int seed, int futures, int? cores = null, Func<SeasonTerms, SeasonTerms>? told = null)
    {
        var (asked, truth) = Asked(seed, futures, told);
        var spec = asked.Plan.Spec;
        var promise = ((Promised)PromiseRun.Reckon(asked, cores)).Promise;
        var frame = new FutureFrame(asked);
        var year = FutureMill.Run(frame, truth.Year(frame));
        return [.. promise.Flours.SelectMany(f => f.Points.Select(p => new Statement(seed, f.Flour, p.Period, p.Probability, year.Flours[spec.Flours.ToList().FindIndex(x => x.Code == f.Flour)].Off > p.Period, f.Limiting?.What, year.Flours[spec.Flours.ToList().FindIndex(x => x.Code == f.Flour)].Limiting)))];
    }

    /// <summary>One statement a year and flour: the one nearest to a probability, within a reach of it.</summary>
    public static IReadOnlyList<Statement> Nearest(IEnumerable<Statement> statements, double stated, double reach) =>
        [.. statements.GroupBy(s => (s.Year, s.Flour)).Select(g => g.MinBy(s => Math.Abs(s.Stated - stated))!).Where(s => Math.Abs(s.Stated - stated) <= reach)];
}
