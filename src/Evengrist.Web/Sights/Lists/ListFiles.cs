using System.ComponentModel;
using System.Globalization;
using Evengrist.Plant.Exports;
using Evengrist.Plant.Imports;
using Evengrist.Quantities;
using Evengrist.Quantities.Lists;
using Evengrist.Records;
using Evengrist.Records.Lists;
using Evengrist.Web.Api;
using Evengrist.Web.Start;
using Evengrist.Web.Visiting;
using NodaTime;

namespace Evengrist.Web.Sights.Lists;

/// <summary>Takes lists out as files: at the address of their page with <c>?as=csv|xlsx|parquet</c> (and <c>&amp;list=</c> where the page has several), and all of them at <c>/api/lists</c>.</summary>
public static class ListFiles
{
    /// <summary>Answers the address of a page with its list where <c>as</c> is said.</summary>
    public static void UsePageLists(this WebApplication app) => app.Use(async (context, next) =>
    {
        // What was typed into a form is sent with it where the page keeps none of it.
        var isSent = HttpMethods.IsPost(context.Request.Method) && context.Request.HasFormContentType;
        if (!(HttpMethods.IsGet(context.Request.Method) || isSent) || !context.Request.Query.ContainsKey("as") || PageLists.On(context.Request.Path) is not { Count: > 0 } here)
        {
            await next(context);
            return;
        }

        if (isSent)
        {
            await context.Request.ReadFormAsync(context.RequestAborted);
        }

        var (asked, named) = (context.Request.Query.Typed("as"), context.Request.Query.Typed("list") ?? here[0].List.Name);
        var (page, code) = here.FirstOrDefault(l => l.List.Name.Equals(named, StringComparison.OrdinalIgnoreCase));
        if (ListFormat.Find(asked) is not { } format || page is null)
        {
            await Results.Text(page is null ? $"This page has no list \"{named}\". It has {string.Join(", ", here.Select(l => l.List.Name))}: say &list= with one of them." : $"A list is taken out as {ListFormat.Words}, not as \"{asked}\".",
                statusCode: StatusCodes.Status400BadRequest).ExecuteAsync(context);
            return;
        }

        var visit = context.RequestServices.GetRequiredService<Visit>();
        var (ask, wrong) = Ask(context.Request.Query, code, visit.AsOf, visit.Settings, visit.Read);
        var (list, why) = ask is null ? (null, wrong) : page.Take(visit, context, ask);
        await (list is null ? Results.Text(why, statusCode: StatusCodes.Status400BadRequest) : await FileAsync(list, format, visit.Zone, context.RequestAborted)).ExecuteAsync(context);
    });

    /// <summary>Adds <c>/api/lists</c>.</summary>
    public static void MapListsApi(this IEndpointRouteBuilder app)
    {
        var lists = app.MapGroup("/api/lists").WithTags("Lists");
        lists.MapGet("", () => Results.Ok(ListName.All)).WithSummary("Every list that can be taken out, with the pages it stands on; what only a page has is taken at its address with ?as= and &list=").Produces<IReadOnlyList<ListName>>();
        lists.MapGet("{name}", (Delegate)TakeAsync).WithSummary("A list as CSV, XLSX or Parquet; a mass is in kilograms (KGM), a moment with its offset")
            .WithDescription("A list may take more than stands here: facts take sort, by and text; layers take outflow (fifo, core or stirred).").Produces<byte[]>(contentType: ListFormat.Csv.Media).ProducesProblem(StatusCodes.Status400BadRequest).ProducesProblem(StatusCodes.Status404NotFound);
    }

    /// <summary>A list as a file to download. It is written whole first: what goes wrong is said, and no half of a list is sent.</summary>
    public static async Task<IResult> FileAsync(TakenList list, ListFormat format, DateTimeZone zone, CancellationToken stopping)
    {
        ArgumentNullException.ThrowIfNull(list);
        ArgumentNullException.ThrowIfNull(format);
        var file = new FileStream(Path.GetTempFileName(), FileMode.Open, FileAccess.ReadWrite, FileShare.None, 64 * 1024, FileOptions.DeleteOnClose | FileOptions.Asynchronous);
        try
        {
            await ListWriter.WriteAsync(list, format, zone, file, stopping);
        }
        catch
        {
            await file.DisposeAsync();
            throw;
        }

        file.Position = 0;
        return Results.Stream(file, format.Media, $"{list.Name}.{format.Word}");
    }

    private static async Task<IResult> TakeAsync(
        HttpContext context, MillDoor door, IClock clock, string name, [Description("csv (when left out), xlsx or parquet.")] string? @as, [Description("Code of the one thing it is about: a place, a mill unit.")] string? of,
        [Description("Happened at or after.")] string? from, [Description("Happened before.")] string? until, [Description(ApiMoment.Says)] string? asof)
    {
        var settings = door.Mill!.Settings;
        if (MillLists.Find(name) is not { } list)
        {
            return Results.Problem(
                PageLists.All.FirstOrDefault(l => l.Name.Equals(name, StringComparison.OrdinalIgnoreCase)) is { } posed ? $"The list \"{posed.Name}\" is the answer to what its page is asked: take it at {posed.Page} with what is asked, and ?as=csv&list={posed.Name}." : $"There is no list \"{name}\": /api/lists names them all.",
                statusCode: StatusCodes.Status404NotFound, title: "No such list");
        }

        if (ListFormat.Find(string.IsNullOrEmpty(@as) ? "csv" : @as) is not { } format || ApiMoment.Read(asof, settings, clock) is not { } at)
        {
            return Results.Problem(ListFormat.Find(@as) is null && !string.IsNullOrEmpty(@as) ? $"as: {ListFormat.Words}, not \"{@as}\"." : $"\"{asof}\" is no moment. {ApiMoment.Says}", statusCode: StatusCodes.Status400BadRequest, title: "Not taken out");
        }

        var (ask, wrong) = Ask(context.Request.Query, of ?? "", at, settings, text => ApiMoment.Read(text, settings, clock));
        return ask is null ? Results.Problem(wrong, statusCode: StatusCodes.Status400BadRequest, title: "Not taken out") : await FileAsync(list.Take(door.Mill!, ask), format, settings.Zone, context.RequestAborted);
    }

    private static (ListAsk? Ask, string Why) Ask(IQueryCollection query, string code, Instant at, MillSettings settings, Func<string?, Instant?> read)
    {
        var zone = settings.Zone;
        if (query.Typed("day") is { Length: > 0 } text)
        {
            return OfDay(text, query, code, at, settings);
        }

        var (from, until) = (Moment(query.Typed("from"), zone, read, 0), Moment(query.Typed("until"), zone, read, 1));
        if (from.Wrong || until.Wrong)
        {
            return (null, $"\"{(from.Wrong ? query.Typed("from") : query.Typed("until"))}\" is no day and no moment. Write it like 2026-01-14 or 2026-01-14T10:40.");
        }

        var ask = Of(query, code, at, zone) with { From = from.At, Until = until.At };
        return ask.Fault is { } fault ? (null, fault) : (ask, "");
    }

    // Pages of a milling day, or of some back from one.
    private static (ListAsk? Ask, string Why) OfDay(string text, IQueryCollection query, string code, Instant at, MillSettings settings)
    {
        var days = query.Typed("days") is { Length: > 0 } said ? int.TryParse(said, NumberStyles.None, CultureInfo.InvariantCulture, out var number) && number is >= 1 and <= 366 ? number : 0 : 1;
        return NodaTime.Text.LocalDatePattern.Iso.Parse(text.Trim()) is not { Success: true, Value: var day } || day.Year is < 1900 or > 9000 || days == 0 ? (null, $"\"{text}\" is no day like 2026-01-14, or days are none from 1 to 366.")
            : (Of(query, code, at, settings.Zone) with { From = MillingDay.Begin(day.PlusDays(1 - days), settings.Zone, settings.DayStart), Until = MillingDay.Begin(day.PlusDays(1), settings.Zone, settings.DayStart) }, "");
    }

    private static ListAsk Of(IQueryCollection query, string code, Instant at, DateTimeZone zone) => new(at, zone)
    {
        Of = Uri.UnescapeDataString(code.Length > 0 ? code : query.Typed("place") ?? query.Typed("code") ?? "").Trim(),
        More = query.Where(q => q.Key is not ("as" or "list" or "asof")).ToDictionary(q => q.Key, q => q.Value.ToString(), StringComparer.OrdinalIgnoreCase),
    };

    // A day as the end of a span is meant whole.
    private static (Instant? At, bool Wrong) Moment(string? text, DateTimeZone zone, Func<string?, Instant?> read, int daysOn)
    {
        if (string.IsNullOrWhiteSpace(text))
        {
            return (null, false);
        }

        if (NodaTime.Text.LocalDatePattern.Iso.Parse(text.Trim()) is { Success: true, Value: var day })
        {
            return (zone.AtStartOfDay(day.PlusDays(daysOn)).ToInstant(), false);
        }

        var at = read(text) ?? Moments.Of(text, zone).At;
        return (at, at is null);
    }
}
