using System.ComponentModel;
using Evengrist.Ledger;
using Evengrist.Plant;
using Evengrist.Plant.Answers;
using Evengrist.Plant.Epcis;
using Evengrist.Plant.Epcis.Sending;
using Evengrist.Plant.Epcis.Writing;
using Evengrist.Records;
using Evengrist.Records.Tracing;
using Evengrist.Web.Sights.Events;
using Evengrist.Web.Start;
using NodaTime;

namespace Evengrist.Web.Api;

/// <summary>Events of lots to and from others over HTTP, by the open standard EPCIS 2.0.</summary>
public static class EpcisApi
{
    private const string Media = EventFiles.Media;
    private static KeptTable<MillKeys> KeptKeys => EventFiles.Keys;

    /// <summary>Adds checking, taking in, listing and writing.</summary>
    public static void MapEpcisApi(this IEndpointRouteBuilder app)
    {
        var epcis = app.MapGroup("/api/epcis").WithTags("EPCIS");
        epcis.MapPost("check", (Delegate)((HttpContext context) => Posed.AnswerAsync(context, EpcisCheck.Read, d => Parsing.Got(EpcisAnswer.Of(d)))))
            .WithSummary("Whether a document of EPCIS 2.0 can be taken: every fault with its JSON path, or its events with their hash; keeps nothing").Accepts<object>(Media, "application/json").Produces<EpcisAnswer>().ProducesProblem(StatusCodes.Status400BadRequest);
        epcis.MapPost("import", (Delegate)ImportAsync).WithSummary("Take a customer's or supplier's document in: all of it or nothing; the same event twice is kept once. Say who with ?by=")
            .Accepts<object>(Media, "application/json").Produces<EpcisTakenAnswer>().ProducesProblem(StatusCodes.Status400BadRequest);
        epcis.MapGet("events", (MillDoor door) => Results.Ok(OthersEvents.All(door.Mill!).Select(p => EpcisEventAnswer.OfKept(p.Code, p.Json, p.By, p.Recorded.ToDateTimeOffset())).OrderBy(e => e.At).ThenBy(e => e.Hash, StringComparer.Ordinal)))
            .WithSummary("Events taken in from others, by time").Produces<IReadOnlyList<EpcisEventAnswer>>();
        epcis.MapGet("export", Export).WithSummary("What happened in a span of time, or the way of one lot, as an EPCIS 2.0 document; the same ledger gives the same bytes").Produces<object>(contentType: Media).ProducesProblem(StatusCodes.Status400BadRequest);
        epcis.MapPost("export", Send).WithSummary("The same, sent: kept as sent to whom (?to=), by whom (?by=) and when; what went there before and is wrong now is declared wrong in it, once").Produces<object>(contentType: Media)
            .ProducesProblem(StatusCodes.Status400BadRequest).ProducesProblem(StatusCodes.Status409Conflict);
        epcis.MapGet("sent", (MillDoor door) => Results.Ok(Sendings.All(door.Mill!).Select(p => EpcisSentAnswer.Of(p.Json, p.Version, p.By, p.Recorded.ToDateTimeOffset()))))
            .WithSummary("Documents that were sent, by whom they went to").Produces<IReadOnlyList<EpcisSentAnswer>>();
        epcis.MapGet("wrong", Wrong).WithSummary("What somebody was told and would now be told to be wrong").Produces<EpcisWouldDeclareAnswer>().ProducesProblem(StatusCodes.Status400BadRequest);
        epcis.MapGet("keys", (MillDoor door) => Results.Text(KeptKeys.Newest(door.Mill!).Table.ToJson(), "application/json")).WithSummary("Names of GS1 by which places, products, customers and units go in documents");
        epcis.MapPost("keys", (Delegate)KeepKeysAsync).WithSummary("Keep the names of GS1 as the next version; say who with ?by=").WithDescription($"Keys look like {MillKeys.Example}").Accepts<object>("application/json")
            .Produces<KeptAnswer>(StatusCodes.Status201Created).ProducesProblem(StatusCodes.Status400BadRequest);
    }

    private static async Task<IResult> ImportAsync(HttpContext context, MillDoor door)
    {
        var by = context.Request.Query["by"].ToString().Trim();
        return by.Length == 0 ? MixApi.Refuse(["Say who takes it in: ?by=NAME."]) : await Posed.AnswerAsync(context, EpcisCheck.Read, document =>
        {
            var taken = OthersEvents.Take(door.Mill!, document.Fingerprint(), document.Json.GetRawText(), document.Alone(), by);
            return Parsing.Got(new EpcisTakenAnswer(taken.Added, taken.DeclaredWrong, taken.AlreadyKnown, [.. document.Asked.Select(a => a.ToString())], taken.NeverSeen));
        });
    }

    private static async Task<IResult> KeepKeysAsync(HttpContext context, MillDoor door)
    {
        var by = context.Request.Query["by"].ToString().Trim();
        using var reader = new StreamReader(context.Request.Body);
        return !MillKeys.TryRead(await reader.ReadToEndAsync(context.RequestAborted), out var keys, out var faults) ? MixApi.Refuse(faults)
            : by.Length == 0 ? MixApi.Refuse(["Say who keeps them: ?by=NAME."])
            : Results.Json(new KeptAnswer(MillKeys.Kind, MillKeys.Code, KeptKeys.Keep(door.Mill!, keys, by)), statusCode: StatusCodes.Status201Created);
    }

    private static IResult Export(
        MillDoor door, IClock clock, [Description("Code of a truck, pallet, load or tote, a field, elevator or additive lot; or give from and until.")] string? code, [Description("What happened from then on.")] string? from,
        [Description("What happened before then.")] string? until, [Description("How bins are taken to empty: fifo (when left out), core or stirred.")] string? outflow,
        [Description("Whom it is for: what went there before and is wrong now is declared wrong. Nothing is kept of it.")] string? to)
    {
        var (ask, faults) = ExportAsk.Read(code, from, until, outflow, to);
        return ask is null ? MixApi.Refuse(faults, "Not written") : EventFiles.Look(door.Mill!, ask, clock.GetCurrentInstant());
    }

    private static IResult Send(
        MillDoor door, IClock clock, [Description("Whom it is sent to; demanded.")] string? to, [Description("Who sends it; demanded.")] string? by,
        [Description("Code of a truck, pallet, load or tote, a field, elevator or additive lot; or give from and until.")] string? code, [Description("What happened from then on.")] string? from,
        [Description("What happened before then.")] string? until, [Description("How bins are taken to empty: fifo (when left out), core or stirred.")] string? outflow)
    {
        var (ask, faults) = ExportAsk.Read(code, from, until, outflow, to);
        string[] nobody = string.IsNullOrWhiteSpace(by) ? ["Say who sends it: ?by=NAME."] : [], nowhere = string.IsNullOrWhiteSpace(to) ? [Earlier.Fault(to)!] : [];
        if (ask is null || nobody.Length + nowhere.Length > 0)
        {
            return MixApi.Refuse([.. faults, .. nowhere, .. nobody], "Not sent");
        }

        try
        {
            return EventFiles.Send(door.Mill!, ask, clock.GetCurrentInstant(), by!.Trim());
        }
        catch (LedgerRefusal refusal)
        {
            return Results.Problem(refusal.Message, statusCode: StatusCodes.Status409Conflict, title: "Not sent");
        }
    }

    private static IResult Wrong(MillDoor door, IClock clock, [Description("Whom it would go to; demanded.")] string? to)
    {
        if (Earlier.Fault(to) is { } fault)
        {
            return MixApi.Refuse([fault], "Not looked up");
        }

        var earlier = EventFiles.Earlier(door.Mill!, to!);
        return earlier.Outflow is not { } outflow ? MixApi.Refuse([$"Nothing was sent to {earlier.To} yet."], "Not looked up")
            : Results.Ok(EventFiles.Ask(door.Mill!, earlier, outflow, clock.GetCurrentInstant(), (_, document) => EpcisWouldDeclareAnswer.Of(earlier.To, document)));
    }
}
