using System.ComponentModel;
using Evengrist.Plant;
using Evengrist.Plant.Answers;
using Evengrist.Plant.Cases;
using Evengrist.Records.Intake;
using Evengrist.Web.Start;

namespace Evengrist.Web.Api;

/// <summary>Probe plans, edge doubt, test or not, and screening over HTTP, each of a posed case; no records needed.</summary>
public static class SamplingApi
{
    private const string By = "Who keeps it; demanded.";

    /// <summary>Adds the four questions, and the two papers they go by.</summary>
    public static void MapSamplingApi(this IEndpointRouteBuilder app)
    {
        var intake = app.MapGroup("/api/intake").WithTags("Intake");
        Map(intake, "probe", "Plan the sample of a posed vehicle", ProbeCase.Help, ProbeCase.Read, ProbeAnswer.To);
        Map(intake, "edge", "How sure a posed reading's side of each edge is", EdgeCase.Help, EdgeCase.Read, EdgeAnswer.To);
        Map(intake, "test", "Whether a test of a posed load is worth its wait", TestCase.Help, TestCase.Read, TestAnswer.To);
        intake.MapGet("sampling/policy", (MillDoor door) => Results.Content(SamplingPapers.PolicyOf(door.Mill!).Policy.ToJson(), "application/json")).WithSummary("The site's policy for sampling");
        intake.MapPost("sampling/policy", (HttpContext context, MillDoor door, [Description(By)] string? by) => KeepAsync(context, json => SamplingPapers.KeepPolicy(door.Mill!, json, by ?? "")))
            .WithSummary("Keep the site's policy for sampling as its next version").Accepts<object>("application/json").ProducesProblem(StatusCodes.Status400BadRequest);
        intake.MapGet("sampling/costs", (MillDoor door) => SamplingPapers.CostsOf(door.Mill!) is var (costs, _) ? Results.Content(costs.ToJson(), "application/json") : Results.Problem("No costs are kept yet.", statusCode: StatusCodes.Status404NotFound, title: "No costs"))
            .WithSummary("What tests and wrong decisions cost").ProducesProblem(StatusCodes.Status404NotFound);
        intake.MapPost("sampling/costs", (HttpContext context, MillDoor door, [Description(By)] string? by) => KeepAsync(context, json => SamplingPapers.KeepCosts(door.Mill!, json, by ?? "")))
            .WithSummary("Keep what tests and wrong decisions cost as the next version").Accepts<object>("application/json").ProducesProblem(StatusCodes.Status400BadRequest);
        Map(intake, "screen", "Whether one composite clears several posed loads", ScreenCase.Help, ScreenCase.Read, ScreenAnswer.To);
    }

    private static async Task<IResult> KeepAsync(HttpContext context, Func<string, IReadOnlyList<string>> keep)
    {
        using var reader = new StreamReader(context.Request.Body);
        var faults = keep(await reader.ReadToEndAsync(context.RequestAborted));
        return faults.Count == 0 ? Results.NoContent() : Results.Problem(string.Join(" ", faults), statusCode: StatusCodes.Status400BadRequest, title: "Not kept", extensions: new Dictionary<string, object?> { ["faults"] = faults });
    }

    private static void Map<TCase, TAnswer>(
        RouteGroupBuilder group, string path, string says, CaseHelp help, Func<Stream, Parsed<TCase>> read, Func<TCase, (TAnswer? Answer, IReadOnlyList<string> Reasons)> to)
        where TCase : class
        where TAnswer : class =>
        group.MapPost(path, (Delegate)(async Task<IResult> (HttpContext context) =>
        {
            IReadOnlyList<string> refused = [];
            var answer = await Posed.AnswerAsync(context, read, posed =>
            {
                (var got, refused) = to(posed);
                return got is not null ? Parsing.Got(got) : Parsing.Failed<TAnswer>(Fault.AtPath("$", "", "a case that has an answer"));
            });
            return refused.Count == 0 ? answer : Results.Problem(string.Join(" ", refused), statusCode: StatusCodes.Status422UnprocessableEntity, title: "No answer");
        })).WithSummary(says).WithDescription(help.Schema).Accepts<object>("application/json").Produces<TAnswer>().ProducesProblem(StatusCodes.Status400BadRequest).ProducesProblem(StatusCodes.Status422UnprocessableEntity);
}
