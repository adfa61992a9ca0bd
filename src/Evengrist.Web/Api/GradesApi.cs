using Evengrist.Intake.Grading;
using Evengrist.Plant;
using Evengrist.Plant.Answers;
using Evengrist.Plant.Cases;

namespace Evengrist.Web.Api;

/// <summary>Grades over HTTP: a posed sample, without records.</summary>
internal static class GradesApi
{
    public static void MapGrades(this IEndpointRouteBuilder intake) =>
        intake.MapPost("grade", (Delegate)GradeAsync).WithSummary("Grade a posed sample by a standard or a house class; needs no records").WithDescription(GradeCase.Help.Schema)
            .Accepts<object>("application/json").Produces<GradeAnswer>().ProducesProblem(StatusCodes.Status400BadRequest).ProducesProblem(StatusCodes.Status422UnprocessableEntity);

    private static async Task<IResult> GradeAsync(HttpContext context)
    {
        NotGraded? not = null;
        var answer = await Posed.AnswerAsync(context, GradeCase.Read, posed =>
        {
            var outcome = GradeModel.Grade(posed.Standard, posed.Sample);
            not = outcome as NotGraded;
            return outcome is Graded graded ? Parsing.Got(GradeAnswer.Of(graded)) : Parsing.Failed<GradeAnswer>(Fault.AtPath("$", "", "a sample that can be graded"));
        });
        return not is null ? answer : Results.Problem(string.Join(" ", not.Reasons), statusCode: StatusCodes.Status422UnprocessableEntity, title: "Not graded",
            extensions: new Dictionary<string, object?> { ["missing"] = not.Missing, ["atBest"] = not.AtBest });
    }
}
