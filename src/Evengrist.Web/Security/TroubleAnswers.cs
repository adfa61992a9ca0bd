using System.Data.Common;
using Microsoft.AspNetCore.Antiforgery;

namespace Evengrist.Web.Security;

/// <summary>What is answered when something goes wrong: problem details on the HTTP API, a calm page elsewhere.</summary>
public static class TroubleAnswers
{
    /// <summary>Adds both.</summary>
    public static void UseTroubleAnswers(this IApplicationBuilder app)
    {
        app.UseWhen(IsApi, api => api
            .UseExceptionHandler(new ExceptionHandlerOptions { StatusCodeSelector = StatusOf, SuppressDiagnosticsCallback = trouble => trouble.Exception is BadHttpRequestException })
            .UseStatusCodePages());
        app.UseWhen(context => !IsApi(context), pages =>
        {
            pages.UseExceptionHandler(new ExceptionHandlerOptions { ExceptionHandlingPath = "/trouble", CreateScopeForErrors = true, StatusCodeSelector = StatusOf });
            pages.UseStatusCodePagesWithReExecute("/trouble/{0}");
            pages.Use(AskAgainWithGet);
        });
    }

    // The page about a refused form is fetched, not posted: a second look at the form would be refused again. A refusal that says
    // what sort of content it has, and has none, is given the page as well.
    private static async Task AskAgainWithGet(HttpContext context, RequestDelegate next)
    {
        if (context.Request.Path.StartsWithSegments("/trouble"))
        {
            context.Request.Method = HttpMethods.Get;
        }

        await next(context);
        if (context.Response is { StatusCode: StatusCodes.Status400BadRequest, HasStarted: false })
        {
            context.Response.ContentType = null;
        }
    }

    private static int StatusOf(Exception trouble) => trouble switch
    {
        BadHttpRequestException bad => bad.StatusCode,
        AntiforgeryValidationException => StatusCodes.Status400BadRequest,
        DbException => StatusCodes.Status503ServiceUnavailable,
        _ => StatusCodes.Status500InternalServerError,
    };

    private static bool IsApi(HttpContext context) => context.Request.Path.StartsWithSegments("/api");
}
