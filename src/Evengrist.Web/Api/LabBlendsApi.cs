using System.ComponentModel;
using Evengrist.Laboratory.Bake;
using Evengrist.Records.Laboratory;
using Evengrist.Web.Start;

namespace Evengrist.Web.Api;

/// <summary>Measured blends over HTTP; a guess is posed to <c>/api/lab/bake</c>.</summary>
internal static class LabBlendsApi
{
    /// <summary>Adds listing and keeping.</summary>
    public static void MapLabBlends(this RouteGroupBuilder lab)
    {
        lab.MapGet("bakes/blends", (MillDoor door, [Description("of one property alone")] string? property) => Results.Ok(MeasuredBlends.Newest(door.Mill!).Select(b => b.Blend).Where(b => property is null || b.Property == property).ToArray()))
            .WithSummary("Blends whose dough property was measured: what guesses learn from").Produces<MeasuredBlend[]>();
        lab.MapPost("bakes/blends", (Delegate)KeepAsync).WithSummary("Keep what a blend was measured, or its next version; say who with ?by=")
            .WithDescription("""{ "code": "…", "property": "water absorption, %", "parts": [ { "flour": "WB", "share": 0.75, "value": 61.5 }, { "flour": "HG", "share": 0.25, "value": 63 } ], "measured": 62.3 }""")
            .Accepts<MeasuredBlend>("application/json").Produces<KeptAnswer>(StatusCodes.Status201Created).ProducesProblem(StatusCodes.Status400BadRequest);
    }

    private static async Task<IResult> KeepAsync(HttpContext context, MillDoor door)
    {
        using var reader = new StreamReader(context.Request.Body);
        if (!MeasuredBlend.TryRead(await reader.ReadToEndAsync(context.RequestAborted), out var blend, out var faults))
        {
            return MixApi.Refuse(faults);
        }

        var (version, refused) = MeasuredBlends.Keep(door.Mill!, blend, context.Request.Query["by"].ToString().Trim());
        return version == 0 ? MixApi.Refuse(refused) : Results.Json(new KeptAnswer(MeasuredBlend.PaperKind, blend.Code, version), statusCode: StatusCodes.Status201Created);
    }
}
