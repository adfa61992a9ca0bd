using System.Diagnostics;
using Evengrist.Planning.Solving;
using Evengrist.Streams.Dividing;

namespace Evengrist.Planning.Streams;

/// <summary>Finds the divide of flour streams that brings most. Page: docs/model/divide.md.</summary>
public static class DivideSolver
{
    /// <summary>The divide that brings most, or why there is none.</summary>
    public static DivideOutcome Solve(DivideSpec spec, DivideOptions? options = null, CancellationToken stop = default)
    {
        ArgumentNullException.ThrowIfNull(spec);
        options ??= new DivideOptions();
        if (DivideFaults.Of(spec) is { Count: > 0 } faults)
        {
            return new DivideRefused(faults);
        }

        var (answer, shares) = DivideProblem.Solve(spec, options.Longest, stop);
        if (!answer.HasValues)
        {
            return answer.Exit == ExitReason.Infeasible && Clash(spec, options, stop) is { } clash ? clash : new DivideNotSolved(answer.Exit == ExitReason.TimeReached ? "Time ran out before a divide was found: ask for no chance of the limits, for fewer flours, or share more spouts." : Said(answer.Exit));
        }

        if (DivideCheck.Broken(spec, shares) is { Count: > 0 } broken)
        {
            return new DivideNotSolved($"The solver's answer did not pass the check and is not shown: {string.Join(" ", broken)}");
        }

        var best = Divided.Of(spec, (s, p) => shares[s][p]);
        var proven = answer.Exit == ExitReason.Optimal;
        return new DivideSolved(
            best, proven, proven ? 0 : answer.Gap,
            proven ? "Proven: no divide brings more." : Said(answer.Exit), answer.Took, Divided.Now(spec), StreamMove.Of(spec, best));
    }

    private static DivideClash? Clash(DivideSpec spec, DivideOptions options, CancellationToken stop)
    {
        var all = DivideDemand.AllOf(spec);
        var (began, longest) = (Stopwatch.GetTimestamp(), 3 * options.Longest);
        return DeletionFilter.Find(all, IsPossible, () => Stopwatch.GetElapsedTime(began) < longest) is { } clash
            ? new DivideClash([.. clash.Demands.Select(d => d.Words)], clash.IsSmallest) : null;

        bool IsPossible(IReadOnlyList<DivideDemand> kept) =>
            DivideProblem.Solve(all.Except(kept).Aggregate(spec, (s, d) => d.Without(s)), options.Longest, stop).Answer.Exit != ExitReason.Infeasible;
    }

    private static string Said(ExitReason exit) => exit switch
    {
        ExitReason.GapReached => "The solver stopped within its gap of what is proven.",
        ExitReason.TimeReached => "Time ran out.",
        ExitReason.Cancelled => "It was stopped.",
        ExitReason.Infeasible => "The solver found no answer even without any limit: a fault of the program.",
        _ => "The solver gave up.",
    };
}
