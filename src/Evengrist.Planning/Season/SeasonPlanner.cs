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
}
