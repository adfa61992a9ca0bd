using System.Diagnostics;
using Evengrist.Season;

namespace Evengrist.Planning.Season;

/// <summary>Plans a crop year. Model: docs/model/season.md.</summary>
public static class SeasonPlanner
{
    /// <summary>The linear plan: the least any plan can cost, with what everything scarce is worth. Most gates, least shares and campaigns are not kept.</summary>
    public static SeasonOutcome Linear(SeasonSpec spec, SeasonOptions? options = null, CancellationToken stop = default)
    {
        using var open = new OpenSeason(options);
        return open.Solve(spec, stop);
    }

    /// <summary>A plan that can be milled: most gates, least shares and campaigns are kept. Its bound is the linear plan's; it stops at the gap asked for or when time is up, with the best plan so far.</summary>
    public static SeasonOutcome Millable(SeasonSpec spec, SeasonOptions? options = null, IProgress<SeasonProgress>? progress = null, CancellationToken stop = default) =>
        Find(spec, options ?? new SeasonOptions(), thorough: false, progress, stop);

    /// <summary>The same, going on until the gap asked for is reached or somebody stops it: a job for the background.</summary>
    public static SeasonOutcome Polish(SeasonSpec spec, SeasonOptions? options = null, IProgress<SeasonProgress>? progress = null, CancellationToken stop = default) =>
        Find(spec, options ?? new SeasonOptions { RelativeGap = 0.001, Longest = null }, thorough: true, progress, stop);

    private static SeasonOutcome Find(SeasonSpec spec, SeasonOptions options, bool thorough, IProgress<SeasonProgress>? progress, CancellationToken stop)
    {
        var began = Stopwatch.GetTimestamp();
        using var open = new OpenSeason(options);
        if (open.Solve(spec, stop) is not SeasonPlanned linear)
        {
            return open.Last!;
        }

        if (!MixRules.Any(spec))
        {
            return new SeasonPlanned(linear.Plan with { IsMillable = true });
        }

        var took = Stopwatch.GetElapsedTime(began);
        var left = options.Longest is { } longest ? longest - took is var rest && rest > TimeSpan.Zero ? rest : TimeSpan.Zero : (TimeSpan?)null;
        var found = new MillableSeason(spec, open.Model!, open.LastAnswer!, options with { Longest = left }, progress, stop).Find(thorough);
        return found is SeasonPlanned planned ? new SeasonPlanned(planned.Plan with { Took = planned.Plan.Took + took, Duals = linear.Plan.Duals }) : found;
    }
}
