using Evengrist.Planning.Streams;
using Evengrist.Quantities.Lists;
using Evengrist.Streams;
using Evengrist.Streams.Dividing;
using Evengrist.Web.Sights.Lists;
using Evengrist.Web.Visiting;

namespace Evengrist.Web.Sights.Streams;

/// <summary>The best divide of streams, and a survey held against weighers, as lists.</summary>
public static class DivideLists
{
    private const string Page = "/streams/divide";

    /// <summary>Flours of the best divide, how far each is from its limits, what streams would bring elsewhere; the survey's check.</summary>
    public static IReadOnlyList<PageList> All { get; } =
    [
        PageList.Answer(Page, "divide-flours", "Best divide of streams: which share of which stream goes to which flour", new ListOf<(DivideSpec Spec, DividedFlour Flour, MillStream? Stream, double Share)>()
                .Text("flour", r => r.Flour.Place.Code).Text("stream", r => r.Stream?.Code).Reckoned("share of the stream", ListUnit.Percent, r => r.Stream is null ? null : 100 * r.Share).Number("yield of the stream, of the wheat", ListOrigin.Seen, ListUnit.Percent, r => (decimal?)r.Stream?.Yield).Number("ash of the stream", ListOrigin.Seen, ListUnit.Percent, r => (decimal?)r.Stream?.AshPercent)
                .Number("protein of the stream", ListOrigin.Seen, ListUnit.Percent, r => (decimal?)r.Stream?.ProteinPercent).Text("basis of ash and protein", r => r.Spec.Table.Basis.ToString()).Reckoned("yield of the flour, of the wheat", ListUnit.Percent, r => r.Flour.Yield).YesNo("US: may be called flour by its ash", r => r.Flour.MayBeCalledFlour)
                .Number("the flour brings in an hour", ListOrigin.Reckoned, null, r => r.Flour.ValuePerHour).Text("currency", r => r.Spec.Currency),
            (visit, context) => Of(visit, context, (spec, solved) => solved.Best.Flours.SelectMany(f => f.Parts.Select(p => ((MillStream?)p.Stream, p.Share)).DefaultIfEmpty((null, 0d)).Select(p => (spec, f, p.Item1, p.Item2))))),
        PageList.Answer(Page, "divide-limits", "Best divide of streams: how far each flour is from each end of its limits", new ListOf<(DivideSpec Spec, DividedFlour Flour, LimitRoom Room)>()
                .Text("flour", r => r.Flour.Place.Code).Text("limit", r => r.Room.End.Words).YesNo("kept in the mean", r => r.Room.IsKept).Reckoned("to spare", null, r => r.Room.Distance).Text("unit", r => DivideWords.UnitOf(r.Room.End.What, r.Spec.Table.Basis)).Reckoned("chance to be kept", ListUnit.Percent, r => 100 * r.Room.Chance),
            (visit, context) => Of(visit, context, (spec, solved) => solved.Best.Flours.SelectMany(f => f.Rooms.Select(r => (spec, f, r))))),
        PageList.Answer(Page, "divide-moves", "Best divide of streams: what an hour would bring more or less if one stream alone went whole to another flour", new ListOf<(DivideSpec Spec, StreamMove Move)>()
                .Text("stream", r => r.Move.Stream.Code).Text("to flour", r => r.Move.To.Code).Number("an hour brings more", ListOrigin.Reckoned, null, r => r.Move.ValuePerHour).Text("currency", r => r.Spec.Currency).YesNo("there is a spout", r => r.Move.IsOpen).Text("limits then missed", r => string.Join("; ", r.Move.Missed.Select(m => $"{m.Flour} {m.Of}"))),
            (visit, context) => Of(visit, context, (spec, solved) => solved.Moves.Select(m => (spec, m)))),
        PageList.Answer("/streams/survey/check", "survey-check", "The newest survey of a unit held against its weighers: each measurement beside its reconciled value", CheckColumns.Of(CheckColumns.IsShareOfSurvey, ListUnit.TonnesPerHour), (visit, context) =>
        {
            if (UnitSurvey.Of(visit.Mill, context.Request.Query.Typed("unit")).Kept is not { Survey: var survey })
            {
                return (null, "No stream survey is kept: keep one with the flour each stream goes to.");
            }

            var ask = SurveyCheckAsk.Of(visit.Mill, survey, context.Request.Query.Typed);
            return ask.Outcome is { Found: var found } ? (CheckColumns.Rows(found), "") : (null, ask.Fields.Faults.Count > 0 ? string.Join(" ", ask.Fields.Faults) : "The survey does not say where its streams go: keep it again with the flour of each stream.");
        }),
    ];

    private static (IEnumerable<T>? Rows, string Why) Of<T>(Visit visit, HttpContext context, Func<DivideSpec, DivideSolved, IEnumerable<T>> rows)
    {
        var ask = DivideAsk.Of(context.Request.Query.Typed, UnitSurvey.Of(visit.Mill, context.Request.Query.Typed("unit")).Start);
        if (ask.Spec is not { } spec)
        {
            return (null, ask.Fields.Faults.Count > 0 ? string.Join(" ", ask.Fields.Faults) : "No survey or no flours yet: say which flours you want of it on the page.");
        }

        return DivideSolver.Solve(spec, DivideWords.OnPage(spec), context.RequestAborted) switch
        {
            DivideSolved solved => (rows(spec, solved), ""),
            DivideClash clash => (null, "No divide keeps all of it: " + string.Join("; ", clash.Clash)),
            DivideNotSolved not => (null, not.Reason),
            _ => (null, "There is no answer."),
        };
    }
}
