using System.Diagnostics;
using Evengrist.Planning.Season.Mixing;
using Evengrist.Planning.Solving;
using Evengrist.Season;

namespace Evengrist.Planning.Season;

/// <summary>Looks for a plan that can be milled, from the linear one. The difficulty is finding a good plan, not proving it: the best ones lie within a fraction of a per cent of the linear bound.</summary>
/// <remarks>
/// 1. Drop what the linear plan draws beyond the gates and far below the least share, and solve that as it stands: a plan at once. 2. Choose among mixes that keep the rules (<see cref="MixDive"/>).
/// 3. Settle the flour-weeks that keep the rules in the linear plan; elsewhere let whole numbers, and campaigns, choose among the wheats it draws, and, on the other core, among two more each.
/// 4. Open span after span of weeks to near wheats, the rest settled as the best plan has it. 5. Open everything. Each starts from the best plan so far; it ends once the gap asked for is reached.
/// </remarks>
internal sealed class MillableSeason
{
    private const int Span = 8;
    private const string Mixing = "mixes that can be milled";
    private readonly SeasonSpec spec;
    private readonly SeasonOptions options;
    private readonly IProgress<SeasonProgress>? progress;
    private readonly CancellationToken stop;
    private readonly long began = Stopwatch.GetTimestamp();
    private readonly SeasonModel linear;
    private readonly LinearAnswer answer;
    private LinearAnswer? best;
    private SeasonModel? bestModel;

    public MillableSeason(SeasonSpec spec, SeasonModel linear, LinearAnswer answer, SeasonOptions options, IProgress<SeasonProgress>? progress, CancellationToken stop) =>
        (this.spec, this.linear, this.answer, this.options, this.progress, this.stop) = (spec, linear, answer, options, progress, stop);

    private TimeSpan Took => Stopwatch.GetElapsedTime(began);

    private TimeSpan? Left => options.Longest is { } longest ? longest - Took is var left && left > TimeSpan.Zero ? left : TimeSpan.Zero : null;

    private double Gap => best is null ? double.PositiveInfinity : (best.Cost - answer.Bound) / Math.Max(1e-12, Math.Abs(best.Cost));

    private bool Done => Gap <= options.RelativeGap || stop.IsCancellationRequested || Left == TimeSpan.Zero;

    /// <summary>The best plan found, checked; or why there is none.</summary>
    /// <param name="thorough">Whether to go on through spans and the whole, or to stop after the quick steps.</param>
    public SeasonOutcome Find(bool thorough)
    {
        Report("the linear plan, rounded");
        Better(Solve(Supports.Dropped(linear, answer.Values), TimeSpan.MaxValue));
        if (!Done)
        {
            Mixes();
        }

        if (!Done)
        {
            Report("the weeks that do not fit yet");
            var (touched, wider) = (Supports.Touched(linear, answer.Values), Supports.Touched(linear, answer.Values, Supports.Near(linear, answer, 2)));
            var left = thorough ? Least(Left, TimeSpan.FromSeconds(20)) : Left ?? TimeSpan.MaxValue;
            var other = Task.Run(() => Solve(wider, left));
            var mine = Solve(touched, left);
            Better(mine);
            Better(other.GetAwaiter().GetResult());
        }

        if (thorough)
        {
            Spans();
        }

        var exit = Done || !thorough ? null : Whole();
        return Outcome(exit);
    }

    private void Mixes()
    {
        Report(Mixing);
        using var ends = CancellationTokenSource.CreateLinkedTokenSource(stop);
        if (Left is { } left)
        {
            ends.CancelAfter(left);
        }

        using var dive = new MixDive(linear, answer, options.RelativeGap / 6, ends.Token);
        foreach (var supports in dive.Tries(best?.Values))
        {
            Better(Solve(supports, Left ?? TimeSpan.MaxValue));
            if (Done)
            {
                break;
            }

            Report(Mixing);
        }
    }

    private void Spans()
    {
        var near = Supports.Near(linear, answer, 3);
        for (var before = double.PositiveInfinity; best is not null && !Done && best.Cost < before - (1e-5 * Math.Abs(best.Cost));)
        {
            before = best.Cost;
            for (var from = 0; from < spec.Periods.Count && !Done; from += Span)
            {
                var (a, b) = (from, Math.Min(from + (Span / 2), spec.Periods.Count));
                Report($"periods {from} to {Math.Min(from + (3 * Span / 2), spec.Periods.Count) - 1}");
                var settled = Supports.Settled(bestModel!, best.Values);
                var (first, second) = (settled.Open(linear, a, a + Span, near), settled.Open(linear, b, b + Span, near));
                var left = Least(Left, TimeSpan.FromSeconds(30));
                var other = Task.Run(() => Solve(second, left));
                var mine = Solve(first, left);
                Better(mine);
                Better(other.GetAwaiter().GetResult());
            }
        }
    }

    private ExitReason? Whole()
    {
        Report("all weeks and wheats at once");
        var whole = Solve(Supports.All(linear), Left ?? TimeSpan.MaxValue);
        Better(whole);
        return whole.Answer.Exit;
    }

    private (SeasonModel Model, LinearAnswer Answer) Solve(Supports supports, TimeSpan longest)
    {
        var model = SeasonBuild.Of(spec, linear.Draws);
        var rules = MixRules.Put(model, supports);
        var solved = LinearSolver.Solve(model.Problem, new SolveOptions { RelativeGap = options.RelativeGap / 3, Longest = longest == TimeSpan.MaxValue ? null : longest, Start = model.Problem.HasWhole ? Start(model, rules) : null }, stop);
        if (!solved.HasValues || !model.Problem.HasWhole)
        {
            return (model, solved);
        }

        // The same choice of wheats solved as a linear problem: exact, and without what a branch and bound leaves as dust.
        var clean = SeasonBuild.Of(spec, linear.Draws);
        MixRules.Put(clean, Supports.Settled(model, solved.Values));
        var exact = LinearSolver.Solve(clean.Problem);
        return exact.HasValues ? (clean, exact with { Exit = solved.Exit }) : (model, solved with { Values = [] });
    }

    private Dictionary<int, double>? Start(SeasonModel model, MixRules rules)
    {
        if (best is null)
        {
            return null;
        }

        var start = new Dictionary<int, double>();
        for (var c = 0; c < linear.Problem.Columns.Count; c++)
        {
            start[c] = best.Values[c];
        }

        foreach (var ((k, f, t), y) in rules.Drawn)
        {
            start[y] = best.Values[model.Use[k, f, t]] > 1e-6 ? 1 : 0;
        }

        foreach (var ((f, t), z) in rules.Milled)
        {
            start[z] = Supports.Drawn(model, best.Values, f, t).Count > 0 ? 1 : 0;
        }

        return start;
    }

    private void Better((SeasonModel Model, LinearAnswer Answer) found)
    {
        if (found.Answer.HasValues && (best is null || found.Answer.Cost < best.Cost))
        {
            (bestModel, best) = (found.Model, found.Answer);
        }
    }

    private void Report(string doing) => progress?.Report(new SeasonProgress(doing, best?.Cost ?? double.NaN, answer.Bound, Took));

    private SeasonOutcome Outcome(ExitReason? whole)
    {
        if (best is null)
        {
            return whole == ExitReason.Infeasible
                ? new SeasonInfeasible(["most gates, least shares and campaigns, together with what people have decided"], ["ease a mix rule, or take back a choice"])
                : SeasonFailure.Of(stop.IsCancellationRequested ? ExitReason.Cancelled : whole ?? ExitReason.TimeReached, linear);
        }

        var exit = stop.IsCancellationRequested && Gap > options.RelativeGap ? SeasonExit.Cancelled
            : best.Cost - answer.Bound <= 1e-9 * Math.Max(1, Math.Abs(best.Cost)) || whole == ExitReason.Optimal ? SeasonExit.Optimal
            : Gap <= options.RelativeGap ? SeasonExit.GapReached : SeasonExit.TimeReached;
        var drawn = SeasonReading.Drawn(bestModel!, best.Values);
        var plan = SeasonReading.Plan(bestModel!, best, Math.Min(answer.Bound, best.Cost), millable: true);
        return SeasonFailure.Checked(plan with { Exit = exit, Took = Took, LayerDifference = linear.Draws.AnyLayers ? linear.Draws.DifferenceTo(linear.Draws.Of(drawn), drawn) : 0 });
    }

    private static TimeSpan Least(TimeSpan? a, TimeSpan b) => a is { } x && x < b ? x : b;
}
