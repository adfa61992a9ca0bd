using System.ComponentModel;
using Evengrist.Laboratory.Bake;
using Evengrist.Records.Laboratory;
using Evengrist.Web.Start;

namespace Evengrist.Web.Api;

/// <summary>Photographs of bakes over HTTP.</summary>
internal static class LabBakePhotographsApi
{
    /// <summary>Adds listing, the pictures, and keeping one.</summary>
    public static void MapLabBakePhotographs(this RouteGroupBuilder lab)
    {
        lab.MapGet("bakes/photographs", (MillDoor door, [Description("code of the bake")] string? bake) => Results.Ok(BakePhotographs.Of(door.Mill!, bake ?? ""))).WithSummary("Photographs that stand of a bake (?bake=)").Produces<BakePhotograph[]>();
        lab.MapGet("bakes/photographs/{hash}", (MillDoor door, string hash) => BakePhotographs.Picture(door.Mill!, hash) is { } picture ? Results.File(picture.Bytes, picture.MediaType)
            : Results.Problem("No picture of this hash is kept.", statusCode: StatusCodes.Status404NotFound, title: "No such picture")).WithSummary("A picture by its SHA-256").ProducesProblem(StatusCodes.Status404NotFound);
        lab.MapPost("bakes/photographs", (Delegate)KeepAsync).WithSummary("Keep a photograph of a kept bake: the picture is the body; say which with ?bake=, what it shows with ?shows=, who with ?by=")
            .WithDescription($"JPEG, PNG or WebP by its content, whatever Content-Type says, up to {PictureFile.MostMebibytes} MiB").Produces<BakePhotograph>(StatusCodes.Status201Created).ProducesProblem(StatusCodes.Status400BadRequest);
    }

    private static async Task<IResult> KeepAsync(HttpContext context, MillDoor door)
    {
        using var body = new MemoryStream();
        await context.Request.Body.CopyToAsync(body, context.RequestAborted);
        string Q(string key) => context.Request.Query[key].ToString().Trim();
        var (kept, faults) = BakePhotographs.Keep(door.Mill!, Q("bake"), body.ToArray(), Q("shows"), Q("by"));
        return kept is null ? MixApi.Refuse(faults) : Results.Json(kept, statusCode: StatusCodes.Status201Created);
    }
}
