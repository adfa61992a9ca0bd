using System.ComponentModel;
using Evengrist.Laboratory.Specifications;
using Evengrist.Plant.Answers;
using Evengrist.Records.Laboratory;
using Evengrist.Web.Sights.Laboratory;
using Evengrist.Web.Start;
using NodaTime;
using NodaTime.Text;

namespace Evengrist.Web.Api;

/// <summary>Lots, decisions and specifications over HTTP.</summary>
internal static class LabLotsApi
{
    private const string NotAsked = "Not asked rightly";

    /// <summary>Adds them.</summary>
    public static void MapFlourLots(this RouteGroupBuilder lab)
    {
        lab.MapGet("lots", Lots).WithSummary("Lots of a milling day and the days before it, each with its results, what the figures advise and what was decided").Produces<LabLotAnswer[]>().ProducesProblem(StatusCodes.Status400BadRequest);
        lab.MapGet("lots/{code}", Lot).WithSummary("One lot, held against the mill's own specification or another with ?specification=").Produces<LabLotAnswer>().ProducesProblem(StatusCodes.Status404NotFound);
        lab.MapPost("lots/{code}/decisions", Decide).WithSummary("A named person decides of a lot: Release, Hold, Rework or Downgrade; say who with ?by=. A hold lies on its packages at once")
            .WithDescription("""{ "verdict": "Hold", "reason": "…", "at": "2026-01-14T10:40", "as": "…" }; at: mill time or with an offset, now when left out; as: the flour a downgraded lot goes as""").Produces<LabLotAnswer>(StatusCodes.Status201Created).ProducesProblem(StatusCodes.Status400BadRequest);
        lab.MapGet("rejudge", Rejudge).WithSummary("Lots that hang on an instrument that read wrong over a span: their odds as judged and put right, what was released and has gone; changes nothing").Produces<RejudgedLotAnswer[]>().ProducesProblem(StatusCodes.Status400BadRequest);
        lab.MapGet("specifications", (MillDoor door) => Results.Content($"[{string.Join(",", FlourSpecifications.Newest(door.Mill!).Select(k => SpecificationJson.Write(k.Specification)))}]", "application/json")).WithSummary("Specifications, each in its newest version");
        lab.MapPost("specifications", (Delegate)KeepAsync).WithSummary("Keep a specification as the next version of its code; say who with ?by=").Accepts<object>("application/json").Produces<KeptAnswer>(StatusCodes.Status201Created).ProducesProblem(StatusCodes.Status400BadRequest);
    }

    internal static LabLotAnswer Of(SeenLot lot) => LabLotAnswer.Of(lot.Lot, lot.State.ToString(), lot.Packages, lot.Judged?.Title, lot.Advice, lot.Results, lot.Decisions);

    private static IResult Lots(MillDoor door, IClock clock, [Description("milling day, 2025-10-07; that of asof when left out")] string? day, [Description("how many days back, 1 to 31; 1 when left out")] string? days, [Description(ApiMoment.Says)] string? asof)
    {
        if (ApiMoment.Read(asof, door.Mill!.Settings, clock) is not { } at)
        {
            return ApiMoment.Bad(asof);
        }

        var read = string.IsNullOrWhiteSpace(day) ? ParseResult<LocalDate>.ForValue(LotShelf.DayOf(door.Mill!, at)) : LocalDatePattern.Iso.Parse(day.Trim());
        return !read.Success || read.Value.Year is < 1900 or > 9000 ? MixApi.Refuse([$"“{day}” is no day: write it like 2025-10-07."], NotAsked)
            : !int.TryParse(days ?? "1", out var count) || count is < 1 or > LotShelf.MostDays ? MixApi.Refuse([$"days is a whole number from 1 to {LotShelf.MostDays}; read “{days}”."], NotAsked)
            : Results.Ok(LotShelf.Of(door.Mill!, read.Value.PlusDays(1 - count), read.Value, at).Select(Of).ToArray());
    }

    private static IResult Lot(MillDoor door, IClock clock, string code, string? specification, [Description(ApiMoment.Says)] string? asof) =>
        ApiMoment.Read(asof, door.Mill!.Settings, clock) is not { } at ? ApiMoment.Bad(asof)
            : LotShelf.Find(door.Mill!, code, at, specification) is { } lot ? Results.Ok(Of(lot))
            : Results.Problem($"There was no lot {code} by then. GET /api/lab/lots lists them by day.", statusCode: StatusCodes.Status404NotFound, title: "No such lot");

    private static IResult Decide(MillDoor door, IClock clock, string code, LotForm form, string? by, string? specification)
    {
        if (form.Entry(code, specification ?? "", text => ApiMoment.OrNow(text, door.Mill!.Settings, clock), out var faults) is not { } entry)
        {
            return MixApi.Refuse(faults, "Not decided");
        }

        var decided = entry.In(door.Mill!, by ?? "");
        return decided.Decision is null ? MixApi.Refuse(decided.Faults, "Not decided") : Results.Json(Of(LotShelf.Find(door.Mill!, code, entry.At, specification)!), statusCode: StatusCodes.Status201Created);
    }

    private static IResult Rejudge(HttpContext context, MillDoor door, IClock clock, [Description("as readings name it")] string? instrument, [Description("Protein, Ash …")] string? property,
        [Description("since when it read wrong")] string? from, [Description("when it was right again")] string? until, [Description("how much too high it read")] string? bias, [Description("± of that, k = 2; 0 when left out")] string? pm, [Description(ApiMoment.Says)] string? asof)
    {
        if (ApiMoment.Read(asof, door.Mill!.Settings, clock) is not { } at)
        {
            return ApiMoment.Bad(asof);
        }

        var ask = RejudgeAsk.Of(door.Mill!, key => context.Request.Query[key].ToString(), text => string.IsNullOrWhiteSpace(text) ? null : ApiMoment.Read(text, door.Mill!.Settings, clock), at);
        string[] faults = [.. ask.Faults, .. ask is { Wrong: null, Faults.Count: 0 } ? ["Give instrument, property, from, until and bias."] : Array.Empty<string>()];
        return faults.Length > 0 ? MixApi.Refuse(faults, NotAsked) : Results.Ok(ask.Lots.Select(l => RejudgedLotAnswer.Of(l.Again, l.Seen.State.ToString(), l.Seen.Gone)).ToArray());
    }

    private static async Task<IResult> KeepAsync(HttpContext context, MillDoor door, string? by)
    {
        using var reader = new StreamReader(context.Request.Body);
        if (!SpecificationJson.TryRead(await reader.ReadToEndAsync(context.RequestAborted), out Specification? specification, out var faults))
        {
            return MixApi.Refuse(faults);
        }

        var (kept, refused) = FlourSpecifications.Keep(door.Mill!, specification, by ?? "");
        return kept is null ? MixApi.Refuse(refused) : Results.Json(new KeptAnswer(Specification.Kind, kept.Specification.Code, kept.Version), statusCode: StatusCodes.Status201Created);
    }
}
