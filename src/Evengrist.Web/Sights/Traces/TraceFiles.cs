using System.Text;
using Evengrist.Web.Visiting;

namespace Evengrist.Web.Sights.Traces;

/// <summary>The lists of a trace as files to download.</summary>
public static class TraceFiles
{
    /// <summary>Adds <c>/tracing/reach.csv</c> and <c>/tracing/roots.csv</c>; both take the fields of the tracing page.</summary>
    public static void MapTraceFiles(this IEndpointRouteBuilder app)
    {
        app.MapGet("/tracing/reach.csv", (HttpContext context, Visit visit) => File(context, visit, "reach")).ExcludeFromDescription();
        app.MapGet("/tracing/roots.csv", (HttpContext context, Visit visit) => File(context, visit, "roots")).ExcludeFromDescription();
    }

    private static IResult File(HttpContext context, Visit visit, string way)
    {
        var asked = TraceVisit.Of(visit, TraceVisit.Read(context.Request.Query) with { Way = way });
        if (asked.Sight is not { } sight)
        {
            return Results.Text(asked.Faults.Count > 0 ? string.Join("\n", asked.Faults) : "Say what to trace: add ?code=", statusCode: StatusCodes.Status400BadRequest);
        }

        var text = sight.Reach is { } reach ? TraceCsv.Of(reach, visit.Zone) : TraceCsv.Of(sight.Roots!);
        return Results.File(Encoding.UTF8.GetPreamble().Concat(Encoding.UTF8.GetBytes(text)).ToArray(), "text/csv; charset=utf-8", $"{way}-{FileName(sight.Place.Code)}.csv");
    }

    private static string FileName(string code) => new([.. code.Select(c => char.IsAsciiLetterOrDigit(c) || c == '-' ? c : '_')]);
}
