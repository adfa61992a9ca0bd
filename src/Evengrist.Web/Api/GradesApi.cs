using System.ComponentModel;
using Evengrist.Intake.Grading;
using Evengrist.Ledger;
using Evengrist.Plant;
using Evengrist.Plant.Answers;
using Evengrist.Plant.Cases;
using Evengrist.Records.Intake;
using Evengrist.Web.Sights.Grades;
using Evengrist.Web.Start;

namespace Evengrist.Web.Api;

/// <summary>Grades over HTTP: a posed sample, without records; and the mill's own classes.</summary>
internal static class GradesApi
{
    public static void MapGrades(this IEndpointRouteBuilder intake)
    {
        intake.MapPosed<GradeAnswer>("grade", GradeAsync, GradeCase.Help, "Grade a posed sample by a standard or a house class; needs no records");
        intake.MapGet("house-classes", (MillDoor door) => Results.Content($"[{string.Join(",", HeldStandards.Of(door.Mill!).House.Select(HouseClassJson.Write))}]", "application/json"))
            .WithSummary("The mill's own classes of wheat, each in its newest version").Produces<object[]>();
        intake.MapPost("house-classes", (Delegate)KeepAsync).WithSummary("Keep a version of one of the mill's own classes; a version once kept never changes")
            .Accepts<object>("application/json").Produces(StatusCodes.Status201Created).ProducesProblem(StatusCodes.Status400BadRequest).ProducesProblem(StatusCodes.Status409Conflict);
    }

    private static async Task<IResult> KeepAsync(HttpContext context, MillDoor door, [Description("Who decided it; demanded.")] string? by)
    {
        // A page elsewhere can make a browser send text, or bytes of no type at all, but not JSON.
        if (!context.Request.HasJsonContentType())
        {
            return Results.Problem("Send the class as application/json.", statusCode: StatusCodes.Status415UnsupportedMediaType, title: "Not kept");
        }

        using var reader = new StreamReader(context.Request.Body);
        var read = HouseClassJson.TryRead(await reader.ReadToEndAsync(context.RequestAborted), out var house, out var faults);
        if (!read || string.IsNullOrWhiteSpace(by))
        {
            string[] all = [.. faults, .. string.IsNullOrWhiteSpace(by) ? ["Say who decided it: add ?by="] : Array.Empty<string>()];
            return Results.Problem(string.Join(" ", all), statusCode: StatusCodes.Status400BadRequest, title: "Not kept", extensions: new Dictionary<string, object?> { ["faults"] = all });
        }

        try
        {
            door.Mill!.Keep(house!, by.Trim());
        }
        catch (LedgerRefusal refusal)
        {
            return Results.Problem(refusal.Message, statusCode: StatusCodes.Status409Conflict, title: "Not kept");
        }

        return Results.Created($"/intake/grades?standard={Uri.EscapeDataString("house:" + house!.Code)}", new { house.Code, house.Version });
    }

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
