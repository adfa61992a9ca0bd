using Evengrist.Intake;
using Evengrist.Quantities;

namespace Evengrist.Web.Sights.Trucks;

/// <summary>Waits in the yard as figures.</summary>
public static class YardFigures
{
    /// <summary>A wait in minutes with its ±; null where there is no forecast.</summary>
    public static Figure? Wait(YardSight yard, YardWait? wait)
    {
        ArgumentNullException.ThrowIfNull(yard);
        return wait is null || yard.Median is not { } median ? null
            : Figure.Reckoned("wait until it is served", (decimal)Math.Round(wait.Minutes, 6), "min", 0, new Because(
                "first come, first served: the lane that is free first, W = max(0, free − arrival)",
                [Figure.Reckoned("service of one truck", (decimal)median, "min", 0, new Because($"median of {yard.Services.Count} trucks today, weighed full to weighed empty", [], "the tickets")), Figure.Seen("lanes", yard.Lanes, "")],
                "docs/model/yard.md")) with { StandardUncertainty = (decimal)Math.Round(wait.StandardUncertainty, 6) };
    }
}
