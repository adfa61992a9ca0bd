using System.ComponentModel;
using Evengrist.Plant.Answers;
using Evengrist.Records.Streams;
using Evengrist.Streams.Surveys;
using Evengrist.Web.Sights.Streams;
using Evengrist.Web.Start;
using Evengrist.Web.Visiting;

namespace Evengrist.Web.Api;

/// <summary>Kept stream surveys over HTTP.</summary>
internal static class SurveysApi
{
    private const string Example = """{"unit":"UA","takenAt":"2025-09-16T09:00:00Z","takenBy":"…","wheatTonnesPerHour":17.5,"table":{"basis":"14mb","streams":[{"code":"1M","yield":14,"ashPercent":0.37,"proteinPercent":11}]},"valves":[{"stream":"1M","now":"WB"}]}""";

    /// <summary>Adds showing and keeping.</summary>
    public static void MapSurveys(this RouteGroupBuilder streams)
    {
        streams.MapGet("surveys", Show).WithSummary("Kept stream surveys, by unit, the first version first").Produces<StreamSurveysAnswer>();
        streams.MapGet("surveys/check", Check).WithSummary("The newest survey of a unit held against the weighers of its flours: whether they agree, which measurement does not, every value reconciled; keeps nothing")
            .WithDescription("For each flour F of the survey: t-F its weigher, t/h (the ledger's about that time when left out), u-F its ± of one standard, % of itself, a-F ash, p-F protein; rolls and rest, t/h, with u-rolls and u-rest, count together.")
            .Produces<FlowNetAnswer>().ProducesProblem(StatusCodes.Status400BadRequest).ProducesProblem(StatusCodes.Status404NotFound);
        streams.MapPost("surveys", (Delegate)KeepAsync).WithSummary("Keep a stream survey as its unit's next; say who with ?by=").WithDescription($"A survey looks like {Example}; yields in % of the wheat")
            .Accepts<object>("application/json").Produces<KeptAnswer>(StatusCodes.Status201Created).ProducesProblem(StatusCodes.Status400BadRequest);
    }

    private static IResult Show(MillDoor door, [Description("one unit alone")] string? unit) =>
        Results.Ok(new StreamSurveysAnswer([.. StreamSurveys.All(door.Mill!).Where(k => unit is null || k.Survey.Unit.Equals(unit, StringComparison.OrdinalIgnoreCase)).Select(k => StreamSurveyAnswer.Of(k.Version, k.By, k.Recorded, k.Survey))]));

    private static IResult Check(HttpContext context, MillDoor door, [Description("Code of the unit.")] string? unit)
    {
        if (StreamSurveys.All(door.Mill!).LastOrDefault(k => k.Survey.Unit.Equals(unit, StringComparison.OrdinalIgnoreCase)) is not { } kept)
        {
            return Results.Problem($"No survey is kept of a unit \"{unit}\". GET /api/streams/surveys lists them.", statusCode: StatusCodes.Status404NotFound, title: "No such survey");
        }

        var ask = SurveyCheckAsk.Of(door.Mill!, kept.Survey, context.Request.Query.Typed);
        if (ask.Outcome is not { } outcome)
        {
            return MixApi.Refuse(ask.Fields.Faults.Count > 0 ? ask.Fields.Faults : ["The ledger moved no flour about the survey's time: give t-F of a flour, t/h."]);
        }

        var (answer, reasons) = FlowNetAnswer.Of(outcome.Found, SurveyCheckAsk.Level);
        return answer is null ? MixApi.Refuse(reasons) : Results.Ok(answer);
    }

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
