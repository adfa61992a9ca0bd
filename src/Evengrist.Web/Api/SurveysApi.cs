using System.ComponentModel;
using Evengrist.Plant.Answers;
using Evengrist.Records.Streams;
using Evengrist.Streams.Surveys;
using Evengrist.Web.Start;

namespace Evengrist.Web.Api;

/// <summary>Kept stream surveys over HTTP.</summary>
internal static class SurveysApi
{
    private const string Example = """{"unit":"UA","takenAt":"2025-09-16T09:00:00Z","takenBy":"…","wheatTonnesPerHour":17.5,"table":{"basis":"14mb","streams":[{"code":"1M","yield":14,"ashPercent":0.37,"proteinPercent":11}]},"valves":[{"stream":"1M","now":"WB"}]}""";

    /// <summary>Adds showing and keeping.</summary>
    public static void MapSurveys(this RouteGroupBuilder streams)
    {
        streams.MapGet("surveys", Show).WithSummary("Kept stream surveys, by unit, the first version first").Produces<StreamSurveysAnswer>();
        streams.MapPost("surveys", (Delegate)KeepAsync).WithSummary("Keep a stream survey as its unit's next; say who with ?by=").WithDescription($"A survey looks like {Example}; yields in % of the wheat")
            .Accepts<object>("application/json").Produces<KeptAnswer>(StatusCodes.Status201Created).ProducesProblem(StatusCodes.Status400BadRequest);
    }

    private static IResult Show(MillDoor door, [Description("one unit alone")] string? unit) =>
        Results.Ok(new StreamSurveysAnswer([.. StreamSurveys.All(door.Mill!).Where(k => unit is null || k.Survey.Unit.Equals(unit, StringComparison.OrdinalIgnoreCase)).Select(k => StreamSurveyAnswer.Of(k.Version, k.By, k.Recorded, k.Survey))]));

    private static async Task<IResult> KeepAsync(HttpContext context, MillDoor door)
    {
        using var reader = new StreamReader(context.Request.Body);
        if (!StreamSurvey.TryRead(await reader.ReadToEndAsync(context.RequestAborted), out var survey, out var faults))
        {
            return MixApi.Refuse(faults);
        }

        var (kept, refused) = StreamSurveys.Keep(door.Mill!, survey, context.Request.Query["by"].ToString().Trim());
        return kept is null ? MixApi.Refuse(refused) : Results.Json(new KeptAnswer(StreamSurvey.Kind, kept.Survey.Unit, kept.Version), statusCode: StatusCodes.Status201Created);
    }
}
