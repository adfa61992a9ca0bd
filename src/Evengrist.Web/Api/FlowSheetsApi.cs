using System.ComponentModel;
using System.Text;
using Evengrist.Milling.Sheet;
using Evengrist.Plant;
using Evengrist.Plant.Answers;
using Evengrist.Plant.Cases;
using Evengrist.Records.Milling;
using Evengrist.Web.Start;

namespace Evengrist.Web.Api;

/// <summary>Flow sheets over HTTP.</summary>
internal static class FlowSheetsApi
{
    /// <summary>Adds the questions about flow sheets, and keeping them.</summary>
    public static void MapFlowSheets(this IEndpointRouteBuilder milling)
    {
        milling.MapPosed<FlowSheetAnswer>("sheet", SheetAsync, FlowSheetCase.Help, "Checks a flow sheet and adds up what it has: passages, roll length, cloth, loops; keeps nothing, needs no records");
        milling.MapGet("units", Units).WithSummary("The units whose flow sheets are kept, each in its newest version").Produces<MillUnitAnswer[]>();
        milling.MapGet("units/{unit}/sheet", Kept).WithSummary("A flow sheet as the mill keeps it, as a file").Produces(StatusCodes.Status200OK, contentType: "application/json").ProducesProblem(StatusCodes.Status404NotFound);
        milling.MapPost("units/{unit}/sheet", (Delegate)KeepAsync).WithSummary("Keeps a flow sheet as the next version of a unit's; say who with ?by=, why with ?reason= and from which version it was made with ?after= (0 for the first)")
            .WithDescription(FlowSheetCase.Help.Schema).Accepts<object>("application/json").Produces<KeptAnswer>(StatusCodes.Status201Created).ProducesProblem(StatusCodes.Status400BadRequest);
    }

    private static Task<IResult> SheetAsync(HttpContext context) => Posed.AnswerAsync(context, FlowSheetCase.Read, s => Parsing.Got(FlowSheetAnswer.Of(s)));

    private static MillUnitAnswer[] Units(MillDoor door) => [.. FlowSheets.Newest(door.Mill!).Select(k => new MillUnitAnswer(k.Unit, k.Version, k.By, $"{k.Recorded}", k.Reason, FlowSheetAnswer.Of(k.Sheet)))];

    private static IResult Kept(MillDoor door, string unit, [Description("The version; the newest when left out.")] int? version) =>
        FlowSheets.Versions(door.Mill!, unit).LastOrDefault(v => version is null || v.Version == version) is { } kept
            ? Results.File(Encoding.UTF8.GetBytes(FlowSheetJson.Write(kept.Sheet)), "application/json", $"flow-sheet-{kept.Unit}-{kept.Version}.json")
            : Results.Problem("No such flow sheet is kept. /api/milling/units lists the units.", statusCode: StatusCodes.Status404NotFound, title: "Not there");

    private static async Task<IResult> KeepAsync(HttpContext context, MillDoor door, string unit, string? by, string? reason, string? after)
    {
        using var body = new MemoryStream();
        await context.Request.Body.CopyToAsync(body, context.RequestAborted);
        body.Position = 0;
        var read = FlowSheetCase.Read(body);
        var wrong = int.TryParse(after ?? "0", out var version) ? Array.Empty<string>() : [$"after is the number of a version, or 0; read “{after}”."];
        var (kept, faults) = read.Ok && wrong.Length == 0 ? FlowSheets.Keep(door.Mill!, unit, new FlowSheetPaper(reason ?? "", read.Value), by ?? "", version) : (null, [.. wrong, .. read.Faults.Select(f => f.ToString())]);
        return kept is not null ? Results.Json(new KeptAnswer(FlowSheetJson.PaperKind, kept.Unit, kept.Version), statusCode: StatusCodes.Status201Created)
            : Results.Problem(string.Join(" ", faults.Take(10)), statusCode: StatusCodes.Status400BadRequest, title: "Not kept", extensions: new Dictionary<string, object?> { ["faults"] = faults });
    }
}

/// <summary>A unit of the mill and its newest flow sheet.</summary>
/// <param name="Unit">Its code.</param>
/// <param name="Version">Version of the sheet.</param>
/// <param name="By">Who kept it.</param>
/// <param name="Recorded">When, as an ISO moment.</param>
/// <param name="Reason">Why.</param>
/// <param name="Sheet">The sheet, added up.</param>
public sealed record MillUnitAnswer(string Unit, int Version, string By, string Recorded, string Reason, FlowSheetAnswer Sheet);
