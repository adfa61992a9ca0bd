namespace Evengrist.Web.Start;

/// <summary>Until the mill is open, pages send to the start page and the HTTP API says to ask again.</summary>
public static class StartingGate
{
    /// <summary>Adds the gate; what needs no mill passes.</summary>
    public static void UseStartingGate(this IApplicationBuilder app, MillDoor door) => app.Use(async (context, next) =>
    {
        var path = context.Request.Path;
        if (door.Mill is not null || path == "/starting" || path.StartsWithSegments("/trouble") || path.StartsWithSegments("/openapi") || Path.HasExtension(path))
        {
            await next(context);
        }
        else if (path.StartsWithSegments("/api"))
        {
            context.Response.Headers.RetryAfter = "1";
            await Results.Problem(door.Fault ?? door.Opening.Step, statusCode: StatusCodes.Status503ServiceUnavailable, title: door.Fault is null ? "The mill is being opened" : "The mill could not be opened")
                .ExecuteAsync(context);
        }
        else
        {
            context.Response.Redirect("/starting" + QueryString.Create("back", path + context.Request.QueryString));
        }
    });
}
