using System.ComponentModel;
using Evengrist.Mix.Relations;
using Evengrist.Plant.Answers;
using Evengrist.Records.Mix;
using Evengrist.Records.Season;
using Evengrist.Web.Start;
using NodaTime;

namespace Evengrist.Web.Api;

/// <summary>How flours follow from their wheat, over HTTP.</summary>
internal static class RelationsApi
{
    private const string Example = """{"flour":"WB","relation":{"what":"Protein","wheatBasis":"12mb","flourBasis":"14mb","intercept":-1.3,"slope":1,"uncertainty":0.3,"isFitted":false,"source":"…"}}""";

    /// <summary>Adds showing and keeping.</summary>
    public static void MapRelations(this RouteGroupBuilder mix)
    {
        mix.MapGet("relations", Show).WithSummary("The relation kept for each flour and property, and the newest fit to the mill's runs beside it").Produces<RelationsAnswer>().ProducesProblem(StatusCodes.Status400BadRequest);
        mix.MapPost("relations", (Delegate)KeepAsync).WithSummary("Keep a relation of a flour to its wheat as its next version; say who with ?by=").WithDescription($"A relation looks like {Example}; wheat it holds for as leastWheat and mostWheat")
            .Accepts<object>("application/json").Produces<KeptAnswer>(StatusCodes.Status201Created).ProducesProblem(StatusCodes.Status400BadRequest);
    }

    private static IResult Show(MillDoor door, IClock clock, [Description(ApiMoment.Says)] string? asof)
    {
        var mill = door.Mill!;
        if (ApiMoment.Read(asof, mill.Settings, clock) is not { } at)
        {
            return ApiMoment.Bad(asof);
        }

        var rows = SeasonShelf.TermsOf(mill) is { } kept ? RelationRecords.Of(mill, kept.Terms, at) : [];
        return Results.Ok(new RelationsAnswer([.. rows.Select(r => RelationAnswer.Of(r.Flour.Code, r.What, r.Kept is { } k ? RelationKeptAnswer.Of(k.Version, k.By, k.Recorded, k.Relation.Relation) : null, r.Fit))], RelationsAnswer.Said));
    }

    private static async Task<IResult> KeepAsync(HttpContext context, MillDoor door)
    {
        using var reader = new StreamReader(context.Request.Body);
        if (!MillRelation.TryRead(await reader.ReadToEndAsync(context.RequestAborted), out var relation, out var faults))
        {
            return MixApi.Refuse(faults);
        }

        var (kept, refused) = MillRelations.Keep(door.Mill!, relation, context.Request.Query["by"].ToString().Trim());
        return kept is null ? MixApi.Refuse(refused) : Results.Json(new KeptAnswer(MillRelation.Kind, kept.Relation.Code, kept.Version), statusCode: StatusCodes.Status201Created);
    }
}
