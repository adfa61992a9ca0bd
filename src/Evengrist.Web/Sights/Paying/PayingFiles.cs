using Evengrist.Intake.Paying;
using Evengrist.Plant.Tables;
using Evengrist.Web.Visiting;

namespace Evengrist.Web.Sights.Paying;

/// <summary>Statements, the season report and receipt records as files to download.</summary>
public static class PayingFiles
{
    /// <summary>Adds <c>/intake/statement.csv</c>, <c>/intake/season.csv</c> and <c>/intake/receipts.csv</c>; they take the fields of their pages.</summary>
    public static void MapPayingFiles(this IEndpointRouteBuilder app)
    {
        app.MapGet("/intake/statement.csv", (Visit visit, string? grower, string? from, string? until) =>
            File(visit, from, until, $"statement-{grower}", (sight, span) => sight.Statements(grower ?? "", span) is { Count: > 0 } found ? PayingCsv.Of(found) : null)).ExcludeFromDescription();
        app.MapGet("/intake/season.csv", (Visit visit, string? from, string? until) => File(visit, from, until, "season", (sight, span) => PayingCsv.Of(sight.Season(span)))).ExcludeFromDescription();
        app.MapGet("/intake/receipts.csv", (Visit visit, string? from, string? until) => File(visit, from, until, "receipts", (sight, span) => PayingCsv.Receipts(sight.Loads(span)))).ExcludeFromDescription();
    }

    private static IResult File(Visit visit, string? from, string? until, string name, Func<TradeSight, SeasonSpan, CsvText?> text)
    {
        var sight = TradeSight.Of(visit.Mill, visit.AsOf);
        var asked = SpanAsk.Of(from, until, sight.Day);
        return asked.Faults.Count > 0 ? Results.Text(string.Join("\n", asked.Faults), statusCode: StatusCodes.Status400BadRequest)
            : text(sight, asked.Span) is not { } csv ? Results.Text($"No load of that grower came from {asked.Span}.", statusCode: StatusCodes.Status404NotFound)
            : Results.File(csv.ToBytes(), "text/csv; charset=utf-8", $"{Safe(name)}-{asked.Span.From:R}-{asked.Span.Until:R}.csv");
    }

    private static string Safe(string name) => new([.. name.Select(c => char.IsAsciiLetterOrDigit(c) || c == '-' ? c : '_')]);
}
