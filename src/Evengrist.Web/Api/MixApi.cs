using Evengrist.Planning.Mix;
using Evengrist.Plant.Answers;
using Evengrist.Plant.Cases;

namespace Evengrist.Web.Api;

/// <summary>Today's mix, over HTTP.</summary>
public static class MixApi
{
    /// <summary>Adds the questions about mixes.</summary>
    public static void MapMixApi(this IEndpointRouteBuilder app)
    {
        var mix = app.MapGroup("/api/mix").WithTags("Mix");
        mix.MapPost("solve", (Delegate)SolveAsync).WithSummary("The cheapest mix of posed bins that keeps every limit, or which limits clash; needs no records").WithDescription(MixCase.Help.Schema)
            .Accepts<object>("application/json").Produces<MixAnswer>().ProducesProblem(StatusCodes.Status400BadRequest).ProducesProblem(StatusCodes.Status422UnprocessableEntity);
    }

    private static Task<IResult> SolveAsync(HttpContext context) =>
        Posed.ReplyAsync(context, MixCase.Read, posed => MixAnswer.Of(MixSolver.Solve(posed.Spec, stop: context.RequestAborted), posed.Spec.Currency));
}
