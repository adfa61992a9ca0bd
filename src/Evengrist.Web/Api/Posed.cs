using Evengrist.Plant;

namespace Evengrist.Web.Api;

/// <summary>Answers a case posed in the body of a request, without the records.</summary>
internal static class Posed
{
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
}
