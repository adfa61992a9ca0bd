using Evengrist.Plant;
using Evengrist.Plant.Answers;
using Evengrist.Plant.Cases;

namespace Evengrist.Web.Api;

/// <summary>Answers a case posed in the body of a request, without the records.</summary>
internal static class Posed
{
    /// <summary>Adds a question that is posed as a case: 400 where it cannot be read, 422 where it has no answer.</summary>
    public static void MapPosed<TAnswer>(this IEndpointRouteBuilder group, string route, Func<HttpContext, Task<IResult>> answer, CaseHelp help, string says) =>
        group.MapPost(route, (Delegate)answer).WithSummary(says).WithDescription(help.Schema).Accepts<object>("application/json")
            .Produces<TAnswer>().ProducesProblem(StatusCodes.Status400BadRequest).ProducesProblem(StatusCodes.Status422UnprocessableEntity);

    /// <summary>Reads the case and answers it; every fault with its JSON path otherwise.</summary>
    public static async Task<IResult> AnswerAsync<TCase, TAnswer>(HttpContext context, Func<Stream, Parsed<TCase>> read, Func<TCase, Parsed<TAnswer>> answer)
        where TCase : class
        where TAnswer : class
    {
        using var body = new MemoryStream();
        await context.Request.Body.CopyToAsync(body, context.RequestAborted);
        body.Position = 0;
        var answered = read(body).Then(answer);
        return answered.Ok ? Results.Ok(answered.Value) : Results.Problem(
            string.Join(" ", answered.Faults.Take(10)), statusCode: StatusCodes.Status400BadRequest, title: "The case cannot be read",
            extensions: new Dictionary<string, object?> { ["faults"] = answered.Faults.Select(f => f.ToString()).ToArray() });
    }

    /// <summary>An answer, or why there is none (422).</summary>
    public static IResult Result<TAnswer>(Reply<TAnswer> reply)
        where TAnswer : class => reply.Answer is { } answer ? Results.Ok(answer)
            : Results.Problem(string.Join(" ", reply.Reasons), statusCode: StatusCodes.Status422UnprocessableEntity, title: "There is no answer");

    /// <summary>Reads the case and answers it, or says why it has no answer (422).</summary>
    public static async Task<IResult> ReplyAsync<TCase, TAnswer>(HttpContext context, Func<Stream, Parsed<TCase>> read, Func<TCase, Reply<TAnswer>> reply)
        where TCase : class
        where TAnswer : class
    {
        Reply<TAnswer>? none = null;
        var result = await AnswerAsync(context, read, posed =>
        {
            var replied = reply(posed);
            none = replied.Answer is null ? replied : null;
            return replied.Answer is { } answer ? Parsing.Got(answer) : Parsing.Failed<TAnswer>([.. replied.Reasons.Select(r => Fault.Told("$", r))]);
        });
        return none is null ? result : Results.Problem(string.Join(" ", none.Reasons), statusCode: StatusCodes.Status422UnprocessableEntity, title: "The case has no answer");
    }
}
