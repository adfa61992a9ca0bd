using System.ComponentModel;
using Evengrist.Laboratory.Bake;
using Evengrist.Plant.Answers;
using Evengrist.Plant.Cases;
using Evengrist.Records.Laboratory;
using Evengrist.Web.Start;
using NodaTime;

namespace Evengrist.Web.Api;

/// <summary>Bakes over HTTP.</summary>
internal static class LabBakeApi
{
    private const string Example = """{"code":"2026-01-12 A","at":"2026-01-12T15:00:00Z","baker":"…","control":"WB of 5 January","loaves":[{"flour":"WB of 5 January","dough":"1","volumeMillilitres":845,"weightGrams":210}],"flours":[{"flour":"WB of 5 January","place":"F-WB"}]}""";

    /// <summary>Adds posed bakes, showing and keeping.</summary>
    public static void MapLabBake(this RouteGroupBuilder lab)
    {
        lab.MapPosed<LabBakeAnswer>("bake", PosedAsync, LabBakeCase.Help, "What to weigh for a bake, flours against a control, bakers taken out, tasters, ranks, a blend's guess; needs no records");
        lab.MapGet("bakes", Show).WithSummary("Kept bakes, the newest first").Produces<object[]>().ProducesProblem(StatusCodes.Status400BadRequest);
        lab.MapPost("bakes", (Delegate)KeepAsync).WithSummary("Keep a bake, or its next version; say who with ?by=").WithDescription($"A bake looks like {Example}; mL and g after cooling")
            .Accepts<object>("application/json").Produces<KeptAnswer>(StatusCodes.Status201Created).ProducesProblem(StatusCodes.Status400BadRequest);
        lab.MapGet("bakes/made", Made).WithSummary("What made the flours of a kept bake (?bake=), by the ledger: wheat bins, mix sheets, mill units, surveys of their streams").Produces<FlourMadeAnswer[]>().ProducesProblem(StatusCodes.Status404NotFound);
        lab.MapLabBakePhotographs();
        lab.MapLabBlends();
    }

    private static Task<IResult> PosedAsync(HttpContext context) => Posed.ReplyAsync(context, LabBakeCase.Read, LabBakeAnswer.To);

    private static IResult Show(MillDoor door, IClock clock, [Description(ApiMoment.Says)] string? asof) => ApiMoment.Read(asof, door.Mill!.Settings, clock) is { } at
        ? Results.Text($"[{string.Join(",", BakeSessions.Newest(door.Mill!, at).Select(b => b.Session.ToJson()))}]", "application/json")
        : ApiMoment.Bad(asof);

    private static IResult Made(MillDoor door, string? bake) => BakeSessions.Find(door.Mill!, bake ?? "") is { } found
        ? Results.Ok(found.Session.Flours.Select(f => FlourMadeAnswer.Of(f.Flour, FlourHistory.Of(door.Mill!, f.Place, found.Session.At))).ToArray())
        : Results.Problem($"No bake “{bake}” is kept. GET /api/lab/bakes lists them.", statusCode: StatusCodes.Status404NotFound, title: "No such bake");

    private static async Task<IResult> KeepAsync(HttpContext context, MillDoor door, IClock clock)
    {
        using var reader = new StreamReader(context.Request.Body);
        if (!BakeSession.TryRead(await reader.ReadToEndAsync(context.RequestAborted), out var session, out var faults))
        {
            return MixApi.Refuse(faults);
        }

        var (version, objections) = BakeSessions.Keep(door.Mill!, session, context.Request.Query["by"].ToString().Trim(), clock.GetCurrentInstant());
        return version == 0 ? MixApi.Refuse([.. objections.Select(o => o.IsQuestion ? $"{o.Words} Put it right, or give the bake a reason." : o.Words)]) : Results.Json(new KeptAnswer(BakeSession.PaperKind, session.Code, version), statusCode: StatusCodes.Status201Created);
    }
}
