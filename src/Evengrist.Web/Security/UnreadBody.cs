using System.Text.Json;
using Evengrist.Quantities;
using Microsoft.AspNetCore.Diagnostics;

namespace Evengrist.Web.Security;

/// <summary>Says in words why the body or a parameter of a request could not be read, so that whoever wrote the sender can mend it.</summary>
internal static class UnreadBody
{
    /// <summary>Fills in the problem where the request itself was at fault.</summary>
    public static void Say(ProblemDetailsContext problem)
    {
        if (problem.ProblemDetails.Status == StatusCodes.Status413PayloadTooLarge)
        {
            problem.ProblemDetails.Detail = UploadBound.Advice;
            return;
        }

        var trouble = problem.Exception ?? problem.HttpContext.Features.Get<IExceptionHandlerFeature>()?.Error;
        if (trouble is not BadHttpRequestException bad)
        {
            return;
        }

        problem.ProblemDetails.Title = "Not understood";
        problem.ProblemDetails.Detail = bad switch
        {
            { StatusCode: StatusCodes.Status415UnsupportedMediaType } => "Send the body as application/json.",
            { InnerException: JsonException json } => $"The body cannot be read. {JsonFault.Words(json, typeof(UnreadBody))}",
            _ when bad.Message.Contains("body", StringComparison.Ordinal) => "The body is missing: send a JSON object as application/json.",
            _ => $"A part of the request cannot be read: {bad.Message}",
        };
    }
}
