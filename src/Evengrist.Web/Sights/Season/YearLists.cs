using Evengrist.Ledger;
using Evengrist.Quantities.Lists;
using Evengrist.Season.Bands;
using Evengrist.Season.ChangeOver;
using Evengrist.Season.Futures;
using Evengrist.Web.Sights.Lists;
using Evengrist.Web.Visiting;

namespace Evengrist.Web.Sights.Season;

/// <summary>Bands of a harvest, the change to the new crop, and what can be promised of each flour, as lists.</summary>
public static class YearLists
{
    /// <summary>All three.</summary>
    public static IReadOnlyList<PageList> All { get; } =
    [
        PageList.Answer("/season/bands", "season-bands", "Bands of a harvest for each number of bands, with what is expected in each", new ListOf<(BandsSight Sight, BandsPlanned Planned, BandRow Row, HarvestBand Band, int Number)>()
                .Text("class", r => r.Sight.WheatClass).Whole("bands", r => r.Row.Design.Bands.Count, null, ListOrigin.Stated).Reckoned("cost of the year with so many", null, r => r.Row.Cost).Text("currency", r => r.Planned.Currency).Whole("band, 1 is the lowest", r => r.Number)
                .Reckoned("a truck reads protein from", ListUnit.Percent, r => r.Band.From, "12mb").Reckoned("a truck reads protein up to", ListUnit.Percent, r => r.Band.To, "12mb").Reckoned("and falling number from", ListUnit.Second, r => r.Band.FallingNumberFrom > 0 ? r.Band.FallingNumberFrom : null).Reckoned("and falling number up to", ListUnit.Second, r => r.Band.FallingNumberTo)
                .Reckoned("expected in it", ListUnit.Tonne, r => r.Band.Tonnes).Reckoned("at most there at once", ListUnit.Tonne, r => r.Row.MostTonnes[r.Number - 1]).Reckoned("true mean of protein", ListUnit.Percent, r => r.Band.Quality.Values.TryGetValue(Property.Protein, out var protein) ? protein.Value : null, "12mb").Reckoned("strays, by true protein", ListUnit.Percent, r => 100 * r.Band.Strays),
            (visit, context) => BandsSight.Of(Desk(context), visit.Mill, visit.AsOf, context.Request.Query, again: false) switch
            {
                { Planned: { } planned } sight => (planned.Rows.SelectMany(r => r.Design.Bands.Select((b, i) => (sight, planned, r, b, i + 1))), ""),
                { Work.IsRunning: true } => (null, StillReckoning.Words),
                { Ask.Fields.Faults: { Count: > 0 } faults } => (null, string.Join(" ", faults)),
                { } => (null, "Ask on the page for bands of the harvest first, and take the list out there."),
                null => (null, "There is no plan of the year to start from, or no harvest is expected."),
            }),
        PageList.Answer("/season/change-over", "change-over", "The change from old crop to new for one flour, a row for each step and property", new ListOf<(ChangeSight Sight, ChangeStep Step, PropertyMove Move)>()
                .Text("flour", r => r.Sight.Flour.Code).Reckoned("new crop in the mix", ListUnit.Percent, r => 100 * r.Step.Share).Day("from", r => r.Sight.Ask.First.PlusDays(r.Step.FirstDay)).Text("property of the mix", r => r.Move.What.Words()).Text("unit", r => UnitOf(r.Move.What)).Reckoned("expected", null, r => r.Move.Value)
                .Reckoned("one standard deviation of it", null, r => r.Move.Spread).Reckoned("move against the step before", null, r => r.Move.Move).Reckoned("one standard deviation of the move", null, r => r.Move.MoveSpread).Reckoned("limits of the flour kept, chance", ListUnit.Percent, r => 100 * r.Move.Kept),
            (visit, context) => ChangeSight.Of(Desk(context), visit.Mill, visit.AsOf, context.Request.Query.Typed("flour"), context.Request.Query.Typed) switch
            {
                { Laid: { } laid } sight => (laid.Steps.SelectMany(s => s.Moves.Select(m => (sight, s, m))), ""),
                { Ask.Fields.Faults: { Count: > 0 } faults } => (null, string.Join(" ", faults)),
                { } => (null, "Nothing is laid out: type old crop and new crop in on the page."),
                null => (null, "No terms of the crop year are kept: enter them under Season."),
            }),
        PageList.Answer("/season/promise", "season-promise", "What can be promised of each flour: how surely it is on target through each week", new ListOf<(SeasonPromise Promise, FlourPromise Flour, PromisePoint Point)>()
                .Text("flour", r => r.Flour.Flour).Day("period begins", r => r.Promise.Spec.Plan.Spec.Periods[r.Point.Period].Start).Reckoned("on target through it, chance", ListUnit.Percent, r => 100 * r.Point.Probability).Reckoned("one standard error of that", ListUnit.Percent, r => 100 * r.Point.StandardError)
                .YesNo("on target as stated", r => r.Point.Period <= r.Flour.Through).Number("stated at", ListOrigin.Stated, ListUnit.Percent, r => 100 * (decimal)r.Promise.Spec.Stated),
            (visit, context) => Records.Season.SeasonShelf.TermsOf(visit.Mill) is not { Terms: var terms } || visit.AsOf.InZone(visit.Zone).Date > terms.End ? (null, "No terms of the crop year are kept for this day: enter them under Season.")
                : Desk(context).PlanOf(visit.Mill, terms, visit.AsOf) is { Promised.Promise: var promise } ? (promise.Flours.SelectMany(f => f.Points.Select(p => (promise, f, p))), "") : (null, "Nothing is promised yet: begin the reckoning on the page, and take the list out once it stands there.")),
    ];

    private static YearDesk Desk(HttpContext context) => context.RequestServices.GetRequiredService<YearDesk>();

    private static string UnitOf(Property what) => ChangeAsk.Asked.Where(a => a.What == what).Select(a => a.Unit).FirstOrDefault() ?? "";
}
