using System.ComponentModel;
using Evengrist.Ledger;
using Evengrist.Plant;
using Evengrist.Plant.Answers;
using Evengrist.Plant.Epcis;
using Evengrist.Plant.Epcis.Writing;
using Evengrist.Plant.Imports;
using Evengrist.Records;
using Evengrist.Records.Packing;
using Evengrist.Records.Tracing;
using Evengrist.Web.Sights;
using Evengrist.Web.Start;
using NodaTime;

namespace Evengrist.Web.Api;

/// <summary>Events of lots to and from others over HTTP, by the open standard EPCIS 2.0.</summary>
public static class EpcisApi
{
    private const string Media = "application/ld+json";
    private static readonly KeptTable<MillKeys> KeptKeys = new(MillKeys.Kind, MillKeys.Code, MillKeys.None, MillKeys.TryRead, k => k.ToJson());

    /// <summary>Adds checking, taking in, listing and writing.</summary>
    public static void MapEpcisApi(this IEndpointRouteBuilder app)
    {
        var epcis = app.MapGroup("/api/epcis").WithTags("EPCIS");
        epcis.MapPost("check", (Delegate)((HttpContext context) => Posed.AnswerAsync(context, EpcisCheck.Read, d => Parsing.Got(EpcisAnswer.Of(d)))))
            .WithSummary("Whether a document of EPCIS 2.0 can be taken: every fault with its JSON path, or its events with their hash; keeps nothing").Accepts<object>(Media, "application/json").Produces<EpcisAnswer>().ProducesProblem(StatusCodes.Status400BadRequest);
        epcis.MapPost("import", (Delegate)ImportAsync).WithSummary("Take a customer's or supplier's document in: all of it or nothing; the same event twice is kept once. Say who with ?by=")
            .Accepts<object>(Media, "application/json").Produces<EpcisTakenAnswer>().ProducesProblem(StatusCodes.Status400BadRequest);
        epcis.MapGet("events", (MillDoor door) => Results.Ok(OthersEvents.All(door.Mill!).Select(p => EpcisEventAnswer.OfKept(p.Json, p.By, p.Recorded.ToDateTimeOffset())).OrderBy(e => e.At).ThenBy(e => e.Hash, StringComparer.Ordinal)))
            .WithSummary("Events taken in from others, by time").Produces<IReadOnlyList<EpcisEventAnswer>>();
        epcis.MapGet("export", Export).WithSummary("What happened in a span of time, or the way of one lot, as an EPCIS 2.0 document; the same ledger gives the same bytes").Produces<object>(contentType: Media).ProducesProblem(StatusCodes.Status400BadRequest);
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
            return Parsing.Got(new EpcisTakenAnswer(taken.Added, taken.DeclaredWrong, taken.AlreadyKnown, [.. document.Asked.Select(a => a.ToString())]));
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
        MillDoor door, [Description("Code of a truck, pallet, load or tote, a field, elevator or additive lot; or give from and until.")] string? code, [Description("What happened from then on.")] string? from,
        [Description("What happened before then.")] string? until, [Description("How bins are taken to empty: fifo (when left out), core or stirred.")] string? outflow)
    {
        var (mill, (begin, beginSays), (end, endSays)) = (door.Mill!, Moment(from), Moment(until));
        var hypothesis = string.IsNullOrEmpty(outflow) ? Outflow.FirstInFirstOut : OutflowWords.Read(outflow);
        if (hypothesis is null || beginSays.Length > 0 || endSays.Length > 0 || (string.IsNullOrWhiteSpace(code) ? begin is null || end is null || end <= begin : begin is not null || end is not null))
        {
            return MixApi.Refuse([hypothesis is null ? "outflow: fifo, core or stirred." : beginSays.Length + endSays.Length > 0 ? $"A moment looks like {beginSays}{endSays}." : "Give either code, or both from and a later until."], "Not written");
        }

        // Written to a file first: the ledger is not kept waiting for a slow reader.
        var (settings, keys, corrections) = (mill.Settings, KeptKeys.Newest(mill).Table with { Units = UnitNumbers.All(mill) }, Corrected.By(mill));
        var file = new FileStream(Path.GetTempFileName(), FileMode.Open, FileAccess.ReadWrite, FileShare.None, 64 * 1024, FileOptions.DeleteOnClose);
        int? count = null;
        var known = mill.Ask(view =>
        {
            var place = string.IsNullOrWhiteSpace(code) ? null : view.Book.Find(code);
            if (!string.IsNullOrWhiteSpace(code) && place is null)
            {
                return false;
            }

            var document = new MillDocument(view.Book, view.Reckoning(hypothesis.Value), settings.Name, settings.Zone, keys, corrections);
            count = place is null ? document.Write(file, begin!.Value, end!.Value) : document.Write(file, place);
            return true;
        });
        if (count is null)
        {
            file.Dispose();
            return MixApi.Refuse([known ? $"{code} is no truck, pallet, load, tote, field, elevator or additive lot: give from and until." : $"There is no place with the code \"{code}\"."], "Not written");
        }

        file.Position = 0;
        return Results.Stream(file, Media, "events.jsonld");
    }

    private static (Instant? At, string Expected) Moment(string? text)
    {
        var (at, expected) = string.IsNullOrWhiteSpace(text) ? (null, "") : Moments.Of(text, null);
        return (at, at is null ? expected : "");
    }
}
