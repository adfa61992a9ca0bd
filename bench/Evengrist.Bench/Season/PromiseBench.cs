using System.Diagnostics;
using System.Globalization;
using Evengrist.Planning.Season;
using Evengrist.Planning.Season.Futures;
using Evengrist.Planning.Tests.Season.Futures;
using Evengrist.Season;
using Evengrist.Season.Futures;
using Evengrist.Season.Terms;

namespace Evengrist.Bench.Season;

/// <summary>How long a promise takes, and how often what it states holds in crop years of the hidden truth.</summary>
internal static class PromiseBench
{
    public static int Run(string[] args)
    {
        if (args is ["anew", .. var many])
        {
            return AnewBench.Run(many is [var n] && int.TryParse(n, NumberStyles.None, CultureInfo.InvariantCulture, out var count) && count > 0 ? count : 20);
        }

        int[] given = [.. args.Select(a => int.TryParse(a, NumberStyles.None, CultureInfo.InvariantCulture, out var number) ? number : -1)];
        if (given.Length > 3 || given.Contains(-1))
        {
            Console.Error.WriteLine("usage: promise [YEARS [FUTURES [FIRST YEAR]]] | promise anew [FUTURES]");
            return 2;
        }

        var (years, futures, first) = (given.ElementAtOrDefault(0) is > 0 and var y ? y : 200, given.ElementAtOrDefault(1) is > 0 and var f ? f : 300, given.ElementAtOrDefault(2));

        Time();
        var all = new List<SimulatedYears.Statement>();
        for (var year = 1; year <= years; year++)
        {
            all.AddRange(SimulatedYears.Year(first + year, futures));
            if (year % 20 == 0 || year == years)
            {
                Table(year, all);
            }
        }

        return 0;
    }

    private static void Time()
    {
        var terms = new HiddenTruth(1).Told(MillYear.Terms);
        if (SeasonPlanner.Linear(MillYear.Spec(terms)) is not SeasonPlanned { Plan: var plan })
        {
            throw new InvalidOperationException("The demonstration's year has no plan.");
        }

        var asked = FuturesFromTerms.Of(plan, terms, 1000, 1);
        foreach (var cores in new[] { 1, Environment.ProcessorCount })
        {
            var began = Stopwatch.GetTimestamp();
            var promise = ((Promised)PromiseRun.Reckon(asked, cores)).Promise;
            Console.WriteLine(string.Create(CultureInfo.InvariantCulture, $"1000 futures of {plan.Spec.Periods.Count} periods on {cores} cores: {Stopwatch.GetElapsedTime(began).TotalSeconds:0.0} s"));
            if (cores == 1)
            {
                foreach (var flour in promise.Flours)
                {
                    Console.WriteLine(PromiseSentence.Of(promise, flour));
                }
            }
        }
    }

    private static void Table(int years, List<SimulatedYears.Statement> all)
    {
        Console.WriteLine($"{years} years");
        foreach (var at in new[] { 0.95, 0.9, 0.85, 0.8, 0.7, 0.5, 0.3 })
        {
            if (SimulatedYears.Nearest(all, at, 0.05) is { Count: > 0 } near)
            {
                var flours = near.GroupBy(s => s.Flour).Select(g => string.Create(CultureInfo.InvariantCulture, $"{g.Key} {g.Average(s => s.Held ? 1.0 : 0):0.00} of {g.Count()}"));
                Console.WriteLine(string.Create(CultureInfo.InvariantCulture, $"{at:0.00}: {near.Count} statements, stated {near.Average(s => s.Stated):0.000}, held {near.Average(s => s.Held ? 1.0 : 0):0.000}  {string.Join(", ", flours)}"));
            }
        }
    }
}
