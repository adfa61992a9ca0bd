using Evengrist.Intake.Trade;
using Evengrist.Ledger;
using Evengrist.Records.Intake;
using Evengrist.Web.Start;

namespace Evengrist.Web.Api;

/// <summary>Keeps papers of the scale house sent over HTTP.</summary>
internal static class PaperPosts
{
    public static void Map<T>(IEndpointRouteBuilder group, string path, string kind, string summary)
        where T : class, ITradePaper =>
        group.MapPost(path, (Delegate)((HttpContext context) => KeepAsync<T>(context, kind))).WithSummary(summary + "; a change is kept as the next version; say who with ?by=")
            .Accepts<object>("application/json").Produces<KeptAnswer>(StatusCodes.Status201Created).ProducesProblem(StatusCodes.Status400BadRequest);

    private static async Task<IResult> KeepAsync<T>(HttpContext context, string kind)
        where T : class, ITradePaper
    {
        using var reader = new StreamReader(context.Request.Body);
        var json = await reader.ReadToEndAsync(context.RequestAborted);
        var by = context.Request.Query["by"].ToString().Trim();
        var read = PaperText.TryRead<T>(json, out var paper, out var faults);
        string[] all = [.. faults, .. by.Length == 0 ? ["Say who keeps it: add ?by="] : Array.Empty<string>()];
        if (!read || all.Length > 0)
        {
            return Results.Problem(string.Join(" ", all), statusCode: StatusCodes.Status400BadRequest, title: "Not kept", extensions: new Dictionary<string, object?> { ["faults"] = all });
        }

        try
        {
            return Results.Json(new KeptAnswer(kind, paper!.Code, TradeShelf.Keep(context.RequestServices.GetRequiredService<MillDoor>().Mill!, kind, paper, by)), statusCode: StatusCodes.Status201Created);
        }
        catch (LedgerRefusal refusal)
        {
            return Results.Problem(refusal.Message, statusCode: StatusCodes.Status400BadRequest, title: "Not kept");
        }
    }
}

/// <summary>A paper that was kept.</summary>
/// <param name="Kind">Its kind.</param>
/// <param name="Code">Its code.</param>
/// <param name="Version">The version it was kept as; the same again is the same version.</param>
public sealed record KeptAnswer(string Kind, string Code, int Version);
