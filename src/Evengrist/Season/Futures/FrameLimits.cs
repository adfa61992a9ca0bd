namespace Evengrist.Season.Futures;

/// <summary>Lays out the limits of a flour: relief that a plan has bought moves the edge aimed at, a tolerance the edge judged by.</summary>
internal static class FrameLimits
{
    public static FrameLimit[] Of(FutureFrame frame, SeasonFlour flour) =>
        [.. flour.Limits.SelectMany(l => new[] { true, false }.Where(least => (least ? l.Least : l.Most) is not null).Select(least => Side(frame, flour, l, least)))];

    private static FrameLimit Side(FutureFrame frame, SeasonFlour flour, SeasonLimit limit, bool least)
    {
        var at = (least ? limit.Least : limit.Most)!.Value;
        var tolerance = frame.Spec.Tolerances.FirstOrDefault(t => t.What == limit.What)?.By ?? 0;
        var granted = new double[frame.Periods];
        foreach (var relief in frame.Spec.Plan.Reliefs.Where(r => r.Flour == flour.Code && r.What == limit.What && r.IsBelow == least))
        {
            granted[relief.Period] += limit.Relief[relief.Step].By * relief.Share;
        }

        double Edge(double by) => SeasonScale.OnScale(limit.What, Sound(limit, least ? at - by : at + by), limit.Basis);
        return new FrameLimit(
            frame.Properties.ToList().IndexOf(limit.What), least != SeasonScale.Falls(limit.What), frame.ByDry[frame.Properties.ToList().IndexOf(limit.What)], limit.MissPrice / SeasonScale.PerUnit(limit.What, at),
            [.. granted.Select(Edge)], [.. granted.Select(g => Edge(g + tolerance))]);
    }

    // A falling number at or below 50 s has no liquefaction number: an edge tolerated down to there is none.
    private static double Sound(SeasonLimit limit, double value) => SeasonScale.Falls(limit.What) ? Math.Max(50.001, value) : value;
}
