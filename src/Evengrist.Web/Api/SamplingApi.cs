using Evengrist.Plant;
using Evengrist.Plant.Answers;
using Evengrist.Plant.Cases;

namespace Evengrist.Web.Api;

/// <summary>Probe plans, edge doubt, test or not, and screening over HTTP, each of a posed case; no records needed.</summary>
public static class SamplingApi
{
    /// <summary>Adds the four questions.</summary>
    public static void MapSamplingApi(this IEndpointRouteBuilder app)
    {
        var intake = app.MapGroup("/api/intake").WithTags("Intake");
        Map(intake, "probe", "Plan the sample of a posed vehicle", ProbeCase.Help, ProbeCase.Read, ProbeAnswer.To);
        Map(intake, "edge", "How sure a posed reading's side of each edge is", EdgeCase.Help, EdgeCase.Read, EdgeAnswer.To);
        Map(intake, "test", "Whether a test of a posed load is worth its wait", TestCase.Help, TestCase.Read, TestAnswer.To);
        Map(intake, "screen", "Whether one composite clears several posed loads", ScreenCase.Help, ScreenCase.Read, ScreenAnswer.To);
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
