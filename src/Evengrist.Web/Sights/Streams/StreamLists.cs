using Evengrist.Quantities.Lists;
using Evengrist.Records.Lists;
using Evengrist.Web.Visiting;

namespace Evengrist.Web.Sights.Streams;

/// <summary>What the page of streams shows, as lists that are taken out.</summary>
public static class StreamLists
{
    /// <summary>The curve that the page shows: of what was typed, else of the unit's newest survey.</summary>
    public static (TakenList? List, string Why) Curve(Visit visit, HttpContext context, ListAsk ask)
    {
        ArgumentNullException.ThrowIfNull(visit);
        ArgumentNullException.ThrowIfNull(context);
        var kept = UnitSurvey.Of(visit.Mill, context.Request.Query.Typed("unit"));
        var asked = CurveAsk.Of(context.Request.Query.Typed, kept.Start);
        return asked.Table is { } table ? (StreamCurves.Of(kept.Unit, table, asked.GoesTo.GetValueOrDefault), "")
            : (null, asked.Fields.Faults.Count > 0 ? string.Join(" ", asked.Fields.Faults) : "There is no survey to take out: type one on the page, or keep one.");
    }
}
