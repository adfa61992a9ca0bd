using Evengrist.Intake.Carrying;
using Evengrist.Intake.Deciding;
using Evengrist.Plant;
using Evengrist.Plant.Answers;
using Evengrist.Plant.Cases;

namespace Evengrist.Web.Api;

/// <summary>Advice and carry-over over HTTP: posed, without records.</summary>
internal static class DecisionApi
{
    public static void MapDecisions(this IEndpointRouteBuilder intake)
    {
        intake.MapPost("decide", (Delegate)DecideAsync).WithSummary("Advise what to decide of a posed load; needs no records").WithDescription(DecisionCase.Help.Schema)
            .Accepts<object>("application/json").Produces<DecisionAnswer>().ProducesProblem(StatusCodes.Status400BadRequest);
        intake.MapPost("carry-over", (Delegate)CarryOverAsync).WithSummary("Reckon what a route carries over into a posed load; needs no records").WithDescription(CarryOverCase.Help.Schema)
            .Accepts<object>("application/json").Produces<CarryOverAnswer>().ProducesProblem(StatusCodes.Status400BadRequest);
    }

    private static Task<IResult> DecideAsync(HttpContext context) =>
        Posed.AnswerAsync(context, DecisionCase.Read, posed => Parsing.Got(DecisionAnswer.Of(DecisionModel.Advise(posed.Load, posed.House, posed.Markets))));

    private static Task<IResult> CarryOverAsync(HttpContext context) =>
        Posed.AnswerAsync(context, CarryOverCase.Read, posed => Parsing.Got(CarryOverAnswer.Of(CarryOverModel.Of(posed.Load, posed.Spec, posed.Threshold))));
}
