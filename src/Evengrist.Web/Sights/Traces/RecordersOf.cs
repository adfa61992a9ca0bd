using Evengrist.Ledger;
using Evengrist.Records;
using Evengrist.Records.Browsing;

namespace Evengrist.Web.Sights.Traces;

/// <summary>Who recorded the facts on the way of a trace, while it passed.</summary>
public static class RecordersOf
{
    // A flow is recorded at its beginning, which may lie before what was traced came along.
    private static readonly NodaTime.Duration Before = NodaTime.Duration.FromHours(4);
    private const int PlacesAsked = 14, FactsAsked = 400;

    /// <summary>Names by place: the plant's own places first, then loads and packages.</summary>
    public static IReadOnlyList<(string Place, string Names)> Trace(Mill mill, TraceSight sight)
    {
        ArgumentNullException.ThrowIfNull(mill);
        ArgumentNullException.ThrowIfNull(sight);
        return [.. sight.Stages.Where(s => s.Places == 1 && s.Kind.Role() is not (PlaceRole.Source or PlaceRole.Sink)).OrderBy(s => s.Kind.Role() == PlaceRole.Unit).ThenByDescending(s => s.Share)
            .Take(PlacesAsked).OrderBy(s => s.Kind).ThenBy(s => s.Name, StringComparer.Ordinal).Select(s => (s.Name, Names(mill, s)))];
    }

    private static string Names(Mill mill, Stage stage)
    {
        var within = stage.Kind.Role() == PlaceRole.Unit ? new FactFilter { Place = stage.Name, Size = FactsAsked }
            : new FactFilter { Place = stage.Name, From = stage.From - Before, Until = stage.Until.Plus(NodaTime.Duration.FromSeconds(1)), Size = FactsAsked };
        var page = mill.Facts(within);
        return string.Join(", ", page.Lines.Select(l => l.Fact.Attribution.By).Distinct().Order(StringComparer.Ordinal)) + (page.Next is null ? "" : " and perhaps others: only the newest facts were looked at");
    }
}
