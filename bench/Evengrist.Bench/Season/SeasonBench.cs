using System.Diagnostics;
using System.Globalization;
using Evengrist.Planning.Season;
using Evengrist.Planning.Solving;
using Evengrist.Planning.Tests.Season;
using Evengrist.Season;

namespace Evengrist.Bench.Season;

/// <summary>Our plans of a crop year beside the same problem handed raw to every solver at hand, and the year decided week by week.</summary>
internal static class SeasonBench
{
    public static int Run(string[] args)
    {
        var (limit, part) = (120, "");
        for (var i = 0; i < args.Length; i += 2)
        {
            switch (args[i], args.ElementAtOrDefault(i + 1))
            {
                case ("--limit", { } text) when int.TryParse(text, NumberStyles.None, CultureInfo.InvariantCulture, out limit):
                    break;
                case ("--part", "linear" or "whole" or "seeds" or "weeks" or "trucks"):
                    part = args[i + 1];
                    break;
                default:
                    Console.Error.WriteLine("usage: season [--limit SECONDS] [--part linear|whole|seeds|weeks|trucks]");
                    return 2;
            }
        }

        SeasonPlanner.Millable(MadeSeason.Of(1, weeks: 4), new SeasonOptions { RelativeGap = 0 }); // compiles the code
        OtherProgram.Install();
        Console.WriteLine($"Processors {Environment.ProcessorCount}; load {(File.Exists("/proc/loadavg") ? File.ReadAllText("/proc/loadavg").Trim() : "unknown")}");
        foreach (var missing in OtherProgram.All.Where(o => !o.IsHere))
        {
            Console.WriteLine($"Missing: {missing.Name} (package {missing.Package}); its rows are left out.");
        }

        if (part is "" or "linear")
        {
            LinearRows();
        }

        if (part is "" or "trucks")
        {
            Trucks();
        }

        if (part is "" or "weeks")
        {
            Weeks();
        }

        if (part is "" or "whole")
        {
            Milled(limit);
        }

        if (part is "seeds")
        {
            OtherSeeds(limit);
        }

        return 0;
    }

    private static void LinearRows()
    {
        var spec = MadeSeason.Of(MadeSeason.Seeds[0]);
        var problem = SeasonBuild.Of(spec, LayerDraws.First(spec)).Problem;
        Console.WriteLine($"\nLinear plan, seed {MadeSeason.Seeds[0]}: {problem.Columns.Count} columns, {problem.Rows.Count} rows\n\n| who | wall s | processor s | cost | wall, times ours |\n|---|---:|---:|---:|---:|");
        var ours = Timed("this project: built, solved, read, checked", 0, () => SeasonPlanner.Linear(spec) is SeasonPlanned { Plan: var plan } ? plan.Costs.Total : null);
        foreach (var engine in new[] { LinearEngine.Glop, LinearEngine.Clp, LinearEngine.Highs, LinearEngine.Scip })
        {
            Timed($"{engine} through the same package, raw", ours, () => LinearSolver.Solve(problem, new SolveOptions { Engine = engine, Longest = TimeSpan.FromSeconds(120) }) is { HasValues: true } a ? a.Cost : null);
        }

        Programs(problem, ours, 120, _ => true);
    }

    private static void Milled(int limit)
    {
        var seed = MadeSeason.Seeds[0];
        var spec = MadeSeason.Of(seed);
        var linear = SeasonBuild.Of(spec, LayerDraws.First(spec));
        var bound = LinearSolver.Solve(linear.Problem).Cost;
        var raw = SeasonBuild.Of(spec, linear.Draws);
        MixRules.Put(raw, Supports.All(raw));
        Console.WriteLine(string.Create(CultureInfo.InvariantCulture, $"\nPlan that can be milled, seed {seed}: {raw.Problem.Columns.Count} columns, {raw.Problem.Columns.Count(c => c.IsWhole)} whole, {raw.Problem.Rows.Count} rows; linear bound {bound:0.0}; limit {limit} s; gap in % of the cost above the bound\n"));
        Console.WriteLine("| who | wall s | processor s | cost | gap % |\n|---|---:|---:|---:|---:|");
        void Row(string who, double? cost, double wall, double cpu) => Console.WriteLine(string.Create(CultureInfo.InvariantCulture, $"| {who} | {wall:0.0} | {cpu:0.0} | {(cost is { } c ? c.ToString("0", CultureInfo.InvariantCulture) : "none")} | {(cost is { } d ? (100 * (d - bound) / Math.Abs(d)).ToString("0.000", CultureInfo.InvariantCulture) : "–")} |"));
        void Ours(string who, Func<SeasonOutcome> plan)
        {
            var (wall, cpu, outcome) = Clock(plan);
            Row(outcome is SeasonPlanned { Plan: var p } ? $"{who}: {p.Exit}, {p.Misses.Count} misses" : $"{who}: {outcome.GetType().Name}", outcome is SeasonPlanned { Plan: var q } ? q.Costs.Total : null, wall, cpu);
        }

        Ours("this project, quick, 10 s at 0.3 %", () => SeasonPlanner.Millable(spec));
        Ours($"this project, background, {limit} s at 0.1 %", () => SeasonPlanner.Polish(spec, new SeasonOptions { RelativeGap = 0.001, Longest = TimeSpan.FromSeconds(limit) }));
        foreach (var engine in new[] { LinearEngine.Scip, LinearEngine.Cbc, LinearEngine.Highs })
        {
            var (wall, cpu, answer) = Clock(() => LinearSolver.Solve(raw.Problem, new SolveOptions { Engine = engine, RelativeGap = 0.001, Longest = TimeSpan.FromSeconds(limit) }));
            Row($"{engine} through the same package, raw: {answer.Exit}", answer.HasValues ? answer.Cost : null, wall, cpu);
        }

        var file = Path.Combine(Path.GetTempPath(), $"season-{Environment.ProcessId}.mps");
        Mps.Write(raw.Problem, file);
        foreach (var other in OtherProgram.All.Where(o => o.IsHere && o.Name != "clp"))
        {
            var (cost, wall, cpu) = other.Run(file, limit);
            Row($"{other.Name}, exported problem", cost, wall, cpu);
        }

        File.Delete(file);
        OtherSeeds(limit);
    }

    private static void OtherSeeds(int limit)
    {
        Console.WriteLine("\nEvery seed, ours only: the linear plan alone; wall and processor seconds of plans that can be milled, the linear plan in them, gap, misses\n\n| seed | linear, wall s | asked 0.3 %, wall s | processor s | gap % | misses | asked 0.1 %, wall s | processor s | gap % | misses |\n|---|---:|---:|---:|---:|---:|---:|---:|---:|---:|");
        foreach (var seed in MadeSeason.Seeds)
        {
            var made = MadeSeason.Of(seed);
            string Cells(Func<SeasonOutcome> plan)
            {
                var (wall, cpu, outcome) = Clock(plan);
                return string.Create(CultureInfo.InvariantCulture, $"{wall:0.0} | {cpu:0.0} | {100 * Plan(outcome).Gap:0.000} | {Plan(outcome).Misses.Count}");
            }

            var alone = Clock(() => SeasonPlanner.Linear(made));
            Console.WriteLine(string.Create(CultureInfo.InvariantCulture, $"| {seed} | {alone.Wall:0.00} | {Cells(() => SeasonPlanner.Millable(made))} | {Cells(() => SeasonPlanner.Polish(made, new SeasonOptions { RelativeGap = 0.001, Longest = TimeSpan.FromSeconds(limit) }))} |"));
        }
    }

    private static void Trucks()
    {
        Console.WriteLine("\nA truck of 26 t, seed by seed: worth in every bin from the duals; one bin solved anew from where it stood\n\n| seed | duals, ms | anew, s | worth by the duals | saved, solved anew |\n|---|---:|---:|---:|---:|");
        foreach (var seed in MadeSeason.Seeds)
        {
            var spec = MadeSeason.Of(seed);
            using var open = new OpenSeason();
            var plan = Plan(open.Solve(spec));
            var truck = new SeasonWheat("truck", "HW", 26, 12, MadeSeason.Quality(13.6, 1.55, 360));
            var (first, _, ranked) = Clock(() => new SeasonWorth(plan).OfTruck(truck));
            var best = ranked[0];
            var (anew, _, after) = Clock(() => Plan(open.Solve(spec with { Wheats = [.. spec.Wheats.Select(w => w.Code == best.Wheat ? TruckMix.Of(w, truck) : w)] })));
            Console.WriteLine(string.Create(CultureInfo.InvariantCulture, $"| {seed} | {1000 * first:0.0} | {anew:0.00} | {best.Money:0.00} | {plan.Costs.Total - after.Costs.Total:0.00} |"));
        }
    }

    private static void Weeks()
    {
        Console.WriteLine("\nThe year decided week by week, over the whole year at once (linear plans; cost over the whole's, %)\n\n| seed | whole | all wheat left worth the same | left wheat at the whole plan's worth |\n|---|---:|---:|---:|");
        foreach (var seed in MadeSeason.Seeds)
        {
            var spec = MadeSeason.Of(seed);
            var whole = Plan(SeasonPlanner.Linear(spec));
            var worth = new SeasonWorth(whole);
            double Over(Func<string, int, double> of) => 100 * ((WeekByWeek.Cost(spec, of) / whole.Costs.Total) - 1);
            var flat = Over((_, _) => 200);
            var dual = Over((w, t) => t + 1 < spec.Periods.Count ? worth.Of(w, t + 1) : 0);
            Console.WriteLine(string.Create(CultureInfo.InvariantCulture, $"| {seed} | {whole.Costs.Total:0} | +{flat:0.0} | +{dual:0.0} |"));
        }
    }

    private static void Programs(LinearProblem problem, double ours, int limit, Func<OtherProgram, bool> which)
    {
        var file = Path.Combine(Path.GetTempPath(), $"season-{Environment.ProcessId}.mps");
        Mps.Write(problem, file);
        foreach (var other in OtherProgram.All.Where(o => o.IsHere && which(o)))
        {
            var (cost, wall, cpu) = other.Run(file, limit);
            Say($"{other.Name}, exported problem", wall, cpu, cost, ours);
        }

        File.Delete(file);
    }

    private static double Timed(string who, double ours, Func<double?> solve)
    {
        var (wall, cpu, cost) = Clock(solve);
        Say(who, wall, cpu, cost, ours > 0 ? ours : wall);
        return wall;
    }

    private static void Say(string who, double wall, double cpu, double? cost, double ours) =>
        Console.WriteLine(string.Create(CultureInfo.InvariantCulture, $"| {who} | {wall:0.00} | {cpu:0.00} | {(cost is { } c ? c.ToString("0.0", CultureInfo.InvariantCulture) : "none")} | {wall / ours:0.0} |"));

    private static (double Wall, double Cpu, T Value) Clock<T>(Func<T> what)
    {
        using var self = Process.GetCurrentProcess();
        var (cpu, began) = (self.TotalProcessorTime, Stopwatch.GetTimestamp());
        var value = what();
        self.Refresh();
        return (Stopwatch.GetElapsedTime(began).TotalSeconds, (self.TotalProcessorTime - cpu).TotalSeconds, value);
    }

    private static SeasonPlan Plan(SeasonOutcome outcome) => outcome is SeasonPlanned planned ? planned.Plan : throw new InvalidOperationException($"No plan: {outcome}");
}
