using Evengrist.Season;

namespace Evengrist.Bench.Season.Backtest;

/// <summary>The rest of a simulated year as a season to plan.</summary>
internal static class YearSpec
{
    /// <summary>From a week on: the week's orders are known, later ones expected.</summary>
    /// <param name="year">The year.</param>
    /// <param name="week">Number of the first week, from 0.</param>
    /// <param name="weeks">How many weeks to look ahead.</param>
    /// <param name="wheats">What lies there and is to come; each with its worth at the end.</param>
    /// <param name="known">Whether all orders are known in advance.</param>
    public static SeasonSpec Of(SimulatedYear year, int week, int weeks, IReadOnlyList<SeasonWheat> wheats, bool known = false)
    {
        SeasonPeriod[] periods = [.. Enumerable.Range(week, weeks).Select(w => new SeasonPeriod(year.Start.PlusWeeks(w), 7))];
        return new SeasonSpec(periods, [new MillUnit("A", year.Need * 1.3 / SimulatedYear.Weeks / 150, [.. periods.Select(_ => 150.0)])], wheats,
            [.. year.Flours.Select((f, i) => f with { Demand = [.. Enumerable.Range(week, weeks).Select(w => known || w == week ? year.Ordered[i][w] : f.Demand[w])] })], "USD")
        {
            Offers = [.. year.Offers.Where(o => o.First < week + weeks).Select(o => o with { First = Math.Max(0, o.First - week), Last = weeks - 1, Wheat = o.Wheat with { EndValuePerTonne = SimulatedYear.Price(o.Wheat) } })],
            StoragePerTonneWeek = SimulatedYear.Storage,
        };
    }

    /// <summary>The plan of an outcome.</summary>
    /// <exception cref="InvalidOperationException">There is none.</exception>
    public static SeasonPlan Solved(SeasonOutcome outcome) => outcome is SeasonPlanned { Plan: var plan } ? plan : throw new InvalidOperationException(outcome is SeasonBadInput bad ? string.Join(" ", bad.Faults) : $"The year has no plan: {outcome}");
}
