using System.Diagnostics;
using System.Globalization;
using Evengrist.Planning.Tests.Season.Futures;
using Evengrist.Season.Futures;

namespace Evengrist.Bench.Season;

/// <summary>The same futures milled by the rule and planned anew every week: what the rule costs, and by how many weeks it makes a flour starve sooner.</summary>
internal static class AnewBench
{
    public static int Run(int futures)
    {
        var asked = SimulatedYears.Asked(1, Math.Max(2, futures)).Asked;
        var frame = new FutureFrame(asked);
        var done = new (FutureYear Rule, FutureYear Anew)?[futures];
        var began = Stopwatch.GetTimestamp();
        Parallel.For(0, futures, i =>
        {
            var world = FutureModel.Draw(frame, i);
            try
            {
                var (rule, anew) = (FutureMill.Run(frame, world), FutureMill.Run(frame, world, new PlannedAnew(frame).Decide));
                done[i] = (rule, anew);
                Console.WriteLine(string.Create(CultureInfo.InvariantCulture, $"{i}: {rule.Costs.Total:#,0} by the rule, {anew.Costs.Total:#,0} anew; off {string.Join(" ", rule.Flours.Select((x, f) => $"{frame.Season.Flours[f].Code} {x.Off}/{anew.Flours[f].Off}"))}"));
            }
            catch (InvalidOperationException none)
            {
                Console.WriteLine($"{i}: left out. {none.Message}");
            }
        });
        (FutureYear Rule, FutureYear Anew)[] pairs = [.. done.OfType<(FutureYear, FutureYear)>()];

        // What the year costs contains what is left and by-products, so a ratio is taken of what is spent and missed.
        double Mean(Func<FutureYear, double> of, Func<(FutureYear Rule, FutureYear Anew), FutureYear> which) => pairs.Average(p => of(which(p)));
        foreach (var (what, of) in new (string, Func<FutureYear, double>)[]
        {
            ("cost of the year", y => y.Costs.Total), ("bought", y => y.Costs.Purchases), ("keeping", y => y.Costs.Storage), ("misses", y => y.Costs.Misses), ("unmet", y => y.Costs.Unmet), ("by-products", y => y.Costs.ByProducts), ("left", y => y.Costs.EndValue),
        })
        {
            Console.WriteLine(string.Create(CultureInfo.InvariantCulture, $"{what}: {Mean(of, p => p.Rule):#,0} by the rule, {Mean(of, p => p.Anew):#,0} anew, ratio {Mean(of, p => p.Rule) / Mean(of, p => p.Anew):0.000}"));
        }

        for (var f = 0; f < frame.Season.Flours.Count; f++)
        {
            int[] later = [.. pairs.Select(p => p.Rule.Flours[f].Off - p.Anew.Flours[f].Off)];
            Console.WriteLine(string.Create(CultureInfo.InvariantCulture,
                $"{frame.Season.Flours[f].Code}: off in week {pairs.Average(p => p.Rule.Flours[f].Off):0.0} by the rule, {pairs.Average(p => p.Anew.Flours[f].Off):0.0} anew; rule less anew {later.Average():0.0}, from {later.Min()} to {later.Max()}; the same within a week in {later.Count(x => Math.Abs(x) <= 1)} of {pairs.Length}"));
        }

        Console.WriteLine(string.Create(CultureInfo.InvariantCulture, $"{pairs.Length} of {futures} futures of {frame.Season.Periods.Count} weeks in {Stopwatch.GetElapsedTime(began).TotalSeconds:0} s"));
        return 0;
    }
}
