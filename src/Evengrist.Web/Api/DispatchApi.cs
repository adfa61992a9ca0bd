using System.ComponentModel;
using Evengrist.Packing.Dispatch;
using Evengrist.Plant.Answers;
using Evengrist.Records;
using Evengrist.Records.Packing.Dispatch;
using Evengrist.Web.Sights.Bins;
using Evengrist.Web.Sights.Dispatch;
using Evengrist.Web.Start;
using NodaTime;

namespace Evengrist.Web.Api;

/// <summary>Loads, consignees and release records over HTTP.</summary>
public static class DispatchApi
{
    private const string NotDone = "Not done";

    /// <summary>Adds them.</summary>
    public static void MapDispatchApi(this IEndpointRouteBuilder app)
    {
        var dispatch = app.MapGroup("/api/dispatch").WithTags("Dispatch");
        dispatch.MapGet("loads", Loads).WithSummary("Loads of a day, each with what stands against its leaving").Produces<DispatchAnswer[]>().ProducesProblem(StatusCodes.Status400BadRequest);
        dispatch.MapGet("loads/{number}", Load).WithSummary("One load").Produces<DispatchAnswer>().ProducesProblem(StatusCodes.Status404NotFound);
        dispatch.MapPost("loads", Plan).WithSummary("Plan a load; say who with ?by=").WithDescription("""{ "number": "D-260114-9", "day": "2026-01-14", "consignee": "C5", "planned": "24 WB", "carrier": "H1", "trailer": "…", "driver": "…", "orders": "…", "tanker": "true" }""")
            .Produces<DispatchAnswer>(StatusCodes.Status201Created).ProducesProblem(StatusCodes.Status400BadRequest);
        dispatch.MapPost("loads/{number}/{act}", Do).WithSummary($"An act at the ramp: {string.Join(", ", LoadForm.Acts)}; say who with ?by=")
            .WithDescription("""{ "code": "P-…", "reason": "…", "point": "clean", "good": "yes", "previous": "flour", "wash": "…", "celsius": "4", "seals": "4711 4712", "at": "2026-01-14T10:40" }; only the fields of the act count; at: mill time or with an offset, now when left out. Sent twice, a departure is written once""")
            .Produces<DispatchAnswer>().ProducesProblem(StatusCodes.Status400BadRequest).ProducesProblem(StatusCodes.Status409Conflict);
        dispatch.MapGet("releases", Releases).WithSummary("Release records (21 CFR 1.345) of a span of days, with what each lacks").Produces<ReleaseAnswer[]>().ProducesProblem(StatusCodes.Status400BadRequest);
        dispatch.MapGet("releases/{load}", (MillDoor door, string load) => ReleaseSources.RecordOf(door.Mill!, load) is { } record ? Results.Ok(SourcedReleaseAnswer.Of(record, ReleaseSources.Of(door.Mill!, record)))
            : Results.Problem($"No load {load} has left. GET /api/dispatch/releases lists what did by day.", statusCode: StatusCodes.Status404NotFound, title: "No such record")).WithSummary("The release record of one load with the sources of its ingredients (21 CFR 1.345(b))").Produces<SourcedReleaseAnswer>().ProducesProblem(StatusCodes.Status404NotFound);
        dispatch.MapGet("consignees", (MillDoor door) => Results.Content($"[{string.Join(",", Consignees.All(door.Mill!).Select(c => c.ToJson()))}]", "application/json")).WithSummary("Cards of consignees, each in its newest version");
        dispatch.MapPost("consignees", (Delegate)KeepAsync).WithSummary("Keep a consignee's card as its next version; say who with ?by=").Accepts<object>("application/json").Produces<KeptAnswer>(StatusCodes.Status201Created).ProducesProblem(StatusCodes.Status400BadRequest);
    }

    private static IResult Loads(MillDoor door, IClock clock, [Description("the day, 2026-01-14; that of asof when left out")] string? day, [Description(ApiMoment.Says)] string? asof)
    {
        if (ApiMoment.Read(asof, door.Mill!.Settings, clock) is not { } at)
        {
            return ApiMoment.Bad(asof);
        }

        if ((string.IsNullOrWhiteSpace(day) ? at.InZone(door.Mill.Settings.Zone).Date : TypedDay.Read(day)) is not { } asked)
        {
            return MixApi.Refuse([TypedDay.None(day)], "Not asked rightly");
        }

        var papers = RampPapers.Of(door.Mill);
        return Results.Ok(papers.Loads.Where(l => l.Day == asked).Select(l => Answer(SeenLoad.Of(door.Mill, papers, l, at))).ToArray());
    }

    private static IResult Load(MillDoor door, IClock clock, string number, [Description(ApiMoment.Says)] string? asof) =>
        ApiMoment.Read(asof, door.Mill!.Settings, clock) is not { } at ? ApiMoment.Bad(asof)
            : Of(door.Mill, number, at) is { } answer ? Results.Ok(answer) : Results.Problem($"There is no load {number}. GET /api/dispatch/loads lists them by day.", statusCode: StatusCodes.Status404NotFound, title: "No such load");

    private static DispatchAnswer? Of(Mill mill, string number, Instant at) => SeenLoad.Of(mill, number, at) is { } seen ? Answer(seen) : null;

    private static DispatchAnswer Answer(SeenLoad seen) => DispatchAnswer.Of(seen.Load, seen.Packages, seen.Filled, seen.Findings);

    private static IResult Plan(MillDoor door, IClock clock, PlanForm form, string? by)
    {
        if (form.Read(out var faults) is not { } plan)
        {
            return MixApi.Refuse(faults, "Not planned");
        }

        var (load, refused) = DispatchShelf.Plan(door.Mill!, plan, by);
        return load is null ? MixApi.Refuse(refused, "Not planned") : Results.Json(Of(door.Mill!, load.Number, clock.GetCurrentInstant()), statusCode: StatusCodes.Status201Created);
    }

    private static IResult Do(MillDoor door, IClock clock, string number, string act, LoadForm form, string? by)
    {
        var mill = door.Mill!;
        var at = ApiMoment.OrNow(form.At, mill.Settings, clock);
        var answer = form.Do(mill, number, act.ToLowerInvariant(), by, at);
        if (answer.Load is { } load)
        {
            var seen = SeenLoad.Of(mill, RampPapers.Of(mill), load, at!.Value);
            return Results.Ok(DispatchAnswer.Of(load, seen.Packages, seen.Filled, answer.Findings));
        }

        string[] says = [.. answer.Findings.Where(f => f.Weight != FindingWeight.Caution).Select(f => f.Words)];
        return DispatchShelf.Find(mill, number) is { IsOpen: false } && act is not "return"
            ? Results.Problem(string.Join(" ", says), statusCode: StatusCodes.Status409Conflict, title: "It is over") : MixApi.Refuse(says, NotDone);
    }

    private static IResult Releases(MillDoor door, IClock clock, [Description("first day, 2026-01-08; six days before the last when left out")] string? from, [Description("last day; that of asof when left out")] string? until, [Description(ApiMoment.Says)] string? asof)
    {
        if (ApiMoment.Read(asof, door.Mill!.Settings, clock) is not { } at)
        {
            return ApiMoment.Bad(asof);
        }

        var ask = RecordsAsk.Of(from, until, at, door.Mill.Settings.Zone);
        return ask.Faults.Count > 0 ? MixApi.Refuse(ask.Faults, "Not asked rightly") : Results.Ok(ReleaseRecords.Of(door.Mill, ask.Begin, ask.End).Select(ReleaseAnswer.Of).ToArray());
    }

    private static async Task<IResult> KeepAsync(HttpContext context, MillDoor door, string? by)
    {
        using var reader = new StreamReader(context.Request.Body);
        if (!ConsigneeCard.TryRead(await reader.ReadToEndAsync(context.RequestAborted), out var card, out var faults))
        {
            return MixApi.Refuse(faults);
        }

        var (kept, refused) = Consignees.Keep(door.Mill!, card, by);
        return kept is null ? MixApi.Refuse(refused) : Results.Json(new KeptAnswer(ConsigneeCard.Kind, kept.Code, door.Mill!.Papers(ConsigneeCard.Kind).Newest(kept.Code)!.Version), statusCode: StatusCodes.Status201Created);
    }
}
