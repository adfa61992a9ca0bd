using System.ComponentModel;
using Evengrist.Mix.Sheets;
using Evengrist.Planning.Mix;
using Evengrist.Plant.Answers;
using Evengrist.Plant.Cases;
using Evengrist.Records.Mix;
using Evengrist.Web.Start;
using NodaTime;

namespace Evengrist.Web.Api;

/// <summary>Today's mix and its sheets, over HTTP.</summary>
public static class MixApi
{
    private const string Example = """{"line":"MXA","flour":"WB","from":"2026-01-14T12:00:00Z","until":"2026-01-15T12:00:00Z","tonnesPerHour":17.5,"setBy":"…","gates":[{"bin":"B06","class":"HW","sharePercent":100}]}""";

    /// <summary>Adds the questions about mixes.</summary>
    public static void MapMixApi(this IEndpointRouteBuilder app)
    {
        var mix = app.MapGroup("/api/mix").WithTags("Mix");
        mix.MapPosed<MixAnswer>("solve", SolveAsync, MixCase.Help, "The cheapest mix of posed bins that keeps every limit, or which limits clash; needs no records");
        mix.MapGet("sheets", Sheets).WithSummary("Mix sheets that had begun, the newest first, each beside what was drawn, and how gates give what they are set to").Produces<SheetsAnswer>().ProducesProblem(StatusCodes.Status400BadRequest);
        mix.MapPost("sheets", (Delegate)KeepAsync).WithSummary("Keep a mix sheet; a change of one is kept as its next version: name it with ?code=; say who with ?by=").WithDescription($"A sheet looks like {Example}")
            .Accepts<object>("application/json").Produces<KeptAnswer>(StatusCodes.Status201Created).ProducesProblem(StatusCodes.Status400BadRequest);
        mix.MapRelations();
    }

    private static Task<IResult> SolveAsync(HttpContext context) =>
        Posed.ReplyAsync(context, MixCase.Read, posed => MixAnswer.Of(MixSolver.Solve(posed.Spec, stop: context.RequestAborted), posed.Spec.Currency));

    private static IResult Sheets(MillDoor door, IClock clock, [Description(ApiMoment.Says)] string? asof)
    {
        var mill = door.Mill!;
        if (ApiMoment.Read(asof, mill.Settings, clock) is not { } at)
        {
            return ApiMoment.Bad(asof);
        }

        var records = SheetRecords.Of(mill, at, toCome: false);
        return Results.Ok(new SheetsAnswer(
            [.. records.Sheets.Select(s => SheetAnswer.Of(s.Kept.Code, s.Kept.Version, s.Kept.By, s.Kept.Recorded, s.Kept.Sheet, s.Against))], [.. records.Fits.Select(GateFitAnswer.Of)], SheetsAnswer.Said));
    }

    private static async Task<IResult> KeepAsync(HttpContext context, MillDoor door)
    {
        using var reader = new StreamReader(context.Request.Body);
        var (code, by) = (context.Request.Query["code"].ToString().Trim(), context.Request.Query["by"].ToString().Trim());
        if (!MixSheetJson.TryRead(await reader.ReadToEndAsync(context.RequestAborted), out var sheet, out var faults))
        {
            return Refuse(faults);
        }

        var (kept, refused) = MixSheets.Keep(door.Mill!, sheet, code.Length > 0 ? code : null, by);
        return kept is null ? Refuse(refused) : Results.Json(new KeptAnswer(MixSheet.Kind, kept.Code, kept.Version), statusCode: StatusCodes.Status201Created);
    }

    /// <summary>What could not be kept, and why.</summary>
    internal static IResult Refuse(IReadOnlyList<string> faults, string title = "Not kept") =>
        Results.Problem(string.Join(" ", faults), statusCode: StatusCodes.Status400BadRequest, title: title, extensions: new Dictionary<string, object?> { ["faults"] = faults });
}
