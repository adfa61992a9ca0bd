using System.ComponentModel;
using Evengrist.Milling.Drift;
using Evengrist.Milling.Learning;
using Evengrist.Plant.Answers;
using Evengrist.Plant.Cases;
using Evengrist.Records.Milling;
using Evengrist.Web.Start;
using Evengrist.Web.Visiting;
using NodaTime;

namespace Evengrist.Web.Api;

/// <summary>Kept mill tests over HTTP.</summary>
internal static class MillTestsApi
{
    private const string Example = """{"unit":"UA","takenAt":"2025-09-22T15:00:00Z","takenBy":"…","sheetVersion":1,"wheat":{"tonnesPerHour":17.5,"moisturePercent":16,"ashPercent":1.7,"proteinPercent":14.4,"basis":"dry"},"releases":{"B1":29.5},"streams":[{"product":"1M","yieldPercent":14,"ashPercent":0.37}],"sieves":[{"passage":"B1","apertureMicrometres":1000,"throughPercent":52}],"set":{"gapMicrometres":{"B1":480}},"basis":"14mb"}""";

    private const string NotAsked = "Not asked rightly";

    /// <summary>Adds showing, keeping, correcting and striking.</summary>
    public static void MapMillTests(this RouteGroupBuilder milling)
    {
        milling.MapGet("tests", Show).WithSummary("Kept mill tests, each in its newest version, by unit and time; struck ones say why").Produces<MillTestsAnswer>();
        milling.MapPost("tests", (Delegate)KeepAsync).WithSummary("Keep a mill test; say who with ?by=, and to correct one which version with ?after=").WithDescription($"A test looks like {Example}; a correction has the unit and the time of what it corrects")
            .Accepts<object>("application/json").Produces<KeptAnswer>(StatusCodes.Status201Created).ProducesProblem(StatusCodes.Status400BadRequest);
        milling.MapPost("units/{unit}/tests", (Delegate)KeepFileAsync).WithSummary("Keep the mill tests of a CSV file or workbook, all or none; say who with ?by=").WithDescription($"One row for each figure: {MillTestColumns.Example}")
            .Accepts<object>("text/csv", "application/vnd.openxmlformats-officedocument.spreadsheetml.sheet").Produces<KeptAnswer[]>(StatusCodes.Status201Created).ProducesProblem(StatusCodes.Status400BadRequest);
        milling.MapPost("tests/{code}/strike", Strike).WithSummary("Strike a mill test: it stays to be read and counts no longer; say who with ?by=, why with ?reason= and which version with ?after=")
            .Produces<KeptAnswer>(StatusCodes.Status201Created).ProducesProblem(StatusCodes.Status400BadRequest);
        milling.MapGet("units/{unit}/fit", Fit).WithSummary("What a unit's kept tests say of it: factors on the model ±, measured figures beside the model's; takes seconds").Produces<MillFitAnswer>().ProducesProblem(StatusCodes.Status400BadRequest).ProducesProblem(StatusCodes.Status422UnprocessableEntity);
        milling.MapGet("units/{unit}/drift", Drift).WithSummary("What drifted in a unit by its kept tests, what it costs a day, what to measure next; takes seconds").Produces<MillDriftAnswer>().ProducesProblem(StatusCodes.Status400BadRequest).ProducesProblem(StatusCodes.Status422UnprocessableEntity);
    }

    private static IResult Fit(MillDoor door, IClock clock, string unit, [Description(ApiMoment.Says)] string? asof) =>
        Of(door, clock, unit, asof, history => history.Tests.Count == 0 ? new Reply<MillFitAnswer>(null, [$"No test of {unit} stands by that moment: the mill is not tuned."]) : MillFitAnswer.To(history.MillTests, history.Sheet, history.Tests[^1].Test.Wheat));

    private static IResult Drift(MillDoor door, IClock clock, string unit, [Description("what flour brings, money a tonne; left out, no money")] decimal? flour, [Description("what bran, wheatfeed and germ bring")] decimal? feed, [Description(ApiMoment.Says)] string? asof)
    {
        var prices = flour is null && feed is null ? null : new DriftPrices(flour ?? 0, feed ?? 0);
        return prices is not null && MillDriftAnswer.FaultOf(prices) is { } wrong ? MixApi.Refuse([wrong], NotAsked) : Of(door, clock, unit, asof, history => MillDriftAnswer.To(history.Tests, prices));
    }

    private static IResult Of<T>(MillDoor door, IClock clock, string unit, string? asof, Func<MillTestHistory, Reply<T>> answer)
        where T : class
    {
        if (ApiMoment.Read(asof, door.Mill!.Settings, clock) is not { } until)
        {
            return ApiMoment.Bad(asof);
        }

        if (MillTestHistory.Of(door.Mill!, unit, until) is not { } history)
        {
            return MixApi.Refuse([NoUnit(unit)], NotAsked);
        }

        return Posed.Result(answer(history));
    }

    private static IResult Show(MillDoor door, [Description("one unit alone")] string? unit) =>
        Results.Ok(new MillTestsAnswer([.. MillTests.Newest(door.Mill!).Where(t => unit is null || t.Paper.Unit.Equals(unit, StringComparison.OrdinalIgnoreCase)).Select(t => KeptMillTestAnswer.Of(t.Code, t.Version, t.By, t.Recorded, t.Paper))]));

    private static async Task<IResult> KeepAsync(HttpContext context, MillDoor door, Visit visit, string? by, string? after)
    {
        using var reader = new StreamReader(context.Request.Body);
        return !MillTestPaper.TryRead(await reader.ReadToEndAsync(context.RequestAborted), out var paper, out var faults) ? MixApi.Refuse(faults)
            : !Version(after, out var version) ? MixApi.Refuse([$"after is the number of a version, or 0 for a new test; read “{after}”."])
            : Say(MillTests.Keep(door.Mill!, paper, by ?? "", version, visit.Newest));
    }

    private static async Task<IResult> KeepFileAsync(HttpContext context, MillDoor door, Visit visit, string unit, string? by)
    {
        var mill = door.Mill!;
        if (FlowSheets.Newest(mill, unit) is not { } sheet)
        {
            return MixApi.Refuse([NoUnit(unit)]);
        }

        using var body = new MemoryStream();
        await context.Request.Body.CopyToAsync(body, context.RequestAborted);
        body.Position = 0;
        var read = MillTestTable.Read(body, unit, sheet.Version, mill.Settings.Zone);
        if (!read.Ok)
        {
            return MixApi.Refuse([.. read.Faults.Select(f => $"{f}")]);
        }

        var (kept, faults) = MillTests.KeepAll(mill, [.. read.Value.Tests.Select(t => ($"From line {t.Line}: ", t.Paper))], by ?? "", visit.Newest);
        return faults.Count > 0 ? MixApi.Refuse(faults) : Results.Json(kept.Select(k => new KeptAnswer(MillTestPaper.Kind, k.Code, k.Version)).ToArray(), statusCode: StatusCodes.Status201Created);
    }

    private static IResult Strike(MillDoor door, Visit visit, string code, string? by, string? reason, string? after) =>
        !Version(after, out var version) || version == 0 ? MixApi.Refuse([$"after is the number of the version that is struck; read “{after}”."]) : Say(MillTests.Strike(door.Mill!, code, reason ?? "", by ?? "", version, visit.Newest));

    private static string NoUnit(string unit) => $"No flow sheet of a unit {unit} is kept: /api/milling/units lists the units.";

    private static bool Version(string? after, out int version) => int.TryParse(after ?? "0", out version) && version >= 0;

    private static IResult Say((KeptMillTest? Kept, IReadOnlyList<string> Faults) came) =>
        came.Kept is { } kept ? Results.Json(new KeptAnswer(MillTestPaper.Kind, kept.Code, kept.Version), statusCode: StatusCodes.Status201Created) : MixApi.Refuse(came.Faults);
}
