using Evengrist.Laboratory.Charts;
using NodaTime;

namespace Evengrist.Records.Laboratory;

/// <summary>Frozen limits of charts and what was done about their signals: papers, none ever changed.</summary>
public static class ChartBooks
{
    /// <summary>Every version of every chart's limits by the chart's code, the newest first.</summary>
    public static ILookup<string, (FrozenLimits Limits, int Version, string By, Instant Kept)> Limits(Mill mill)
    {
        ArgumentNullException.ThrowIfNull(mill);
        return mill.Papers(FrozenLimits.PaperKind).All().Read<FrozenLimits>(FrozenLimits.TryRead).OrderByDescending(p => p.Paper.Version).ToLookup(p => p.Paper.Code, p => (p.Value, p.Paper.Version, p.Paper.By, p.Paper.Recorded));
    }

    /// <summary>What was done about a chart's signals, the newest first.</summary>
    public static IReadOnlyList<(ChartAction Action, string By, Instant Kept)> Actions(Mill mill, string chart)
    {
        ArgumentNullException.ThrowIfNull(mill);
        return [.. mill.Papers(ChartAction.PaperKind).All().Where(p => p.Code == chart).Read<ChartAction>(ChartAction.TryRead).OrderByDescending(p => p.Paper.Version).Select(p => (p.Value, p.Paper.By, p.Paper.Recorded))];
    }

    /// <summary>Keeps what was done; every fault where it cannot be kept. The same once more is the same.</summary>
    public static IReadOnlyList<string> Act(Mill mill, ChartAction action, string by)
    {
        ArgumentNullException.ThrowIfNull(mill);
        ArgumentNullException.ThrowIfNull(action);
        var faults = action.Faults();
        if (faults.Count == 0 && !Actions(mill, action.Chart).Any(a => a.Action == action))
        {
            mill.Papers(ChartAction.PaperKind).KeepNext(action.Chart, action.ToJson(), by);
        }

        return faults;
    }
}
