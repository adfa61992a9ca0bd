using System.ComponentModel;
using Evengrist.Laboratory.Charts;
using Evengrist.Records.Laboratory;
using Evengrist.Web.Sights.Laboratory;
using Evengrist.Web.Start;
using NodaTime;

namespace Evengrist.Web.Api;

/// <summary>Charts of the ledger's readings over HTTP: what can be charted, frozen limits, signals and what was done about them.</summary>
internal static class LabChartsApi
{
    private const string Coded = "Code of a chart, as charts lists it: UA WB Protein NIR.";

    /// <summary>Adds showing, freezing and noting.</summary>
    public static void MapLabCharts(this RouteGroupBuilder lab)
    {
        lab.MapGet("charts", Charts).WithSummary("What of the ledger can be charted as of a moment, and the limits in force").Produces<LabChartChoice[]>().ProducesProblem(StatusCodes.Status400BadRequest);
        lab.MapGet("charts/limits", (MillDoor door, [Description(Coded)] string chart) => LabLimitsAnswer.Of(ChartBooks.Limits(door.Mill!)[chart])).WithSummary("Every version of a chart's frozen limits, the newest first").Produces<LabLimitsAnswer[]>();
        lab.MapPost("charts/limits", Freeze).WithSummary("Freeze the limits of a chart from a stated period as the next version; say who with ?by=")
            .WithDescription($"Texts as a person types them: chart, from and until (mill time or with an offset), target, lower, upper, rules ({string.Join(", ", RunRules.Sets.Keys)}; Four when left out), reason. {FrozenLimits.Fewest} readings or more have to lie in the period.")
            .Produces<LabLimitsAnswer[]>(StatusCodes.Status201Created).ProducesProblem(StatusCodes.Status400BadRequest);
        lab.MapGet("charts/signals", Signals).WithSummary("What signals by the frozen limits as of a moment, the newest first, each with what was done about it").Produces<LabSignalAnswer[]>().ProducesProblem(StatusCodes.Status400BadRequest);
        lab.MapPost("charts/actions", Act).WithSummary("Note what was found and done about a signal; it stands beside what was noted before; say who with ?by=")
            .WithDescription("chart, point (when the reading that signals was taken, with an offset or by mill time), done.").Produces<LabSignalAnswer[]>(StatusCodes.Status201Created).ProducesProblem(StatusCodes.Status400BadRequest);
    }

    private static IResult Charts(MillDoor door, IClock clock, [Description(ApiMoment.Says)] string? asof)
    {
        if (ApiMoment.Read(asof, door.Mill!.Settings, clock) is not { } at)
        {
            return ApiMoment.Bad(asof);
        }

        var frozen = ChartBooks.Limits(door.Mill!);
        return Results.Ok(door.Mill!.Ask(view => ChartSeries.Of(view.Book, at)).Select(s => new LabChartChoice(s.Code, s.Place, s.Flour, s.What.ToString(), s.Method, s.Readings.Count, LabLimitsAnswer.Of(frozen[s.Code]).FirstOrDefault())).ToArray());
    }

    private static IResult Freeze(MillDoor door, IClock clock, FreezeForm form, [Description("Who freezes them; demanded.")] string? by)
    {
        Instant? Moment(string? text) => string.IsNullOrWhiteSpace(text) ? null : ApiMoment.Read(text, door.Mill!.Settings, clock);
        var faults = form.Keep(door.Mill!, Moment(form.From), Moment(form.Until), by?.Trim(), "Say who freezes them: add ?by=", clock.GetCurrentInstant());
        return faults.Count > 0 ? MixApi.Refuse(faults) : Results.Json(LabLimitsAnswer.Of(ChartBooks.Limits(door.Mill!).Where(g => g.Key.Equals(form.Chart!.Trim(), StringComparison.OrdinalIgnoreCase)).SelectMany(g => g)), statusCode: StatusCodes.Status201Created);
    }

    private static IResult Signals(MillDoor door, IClock clock, [Description(Coded)] string chart, [Description(ApiMoment.Says)] string? asof) => ApiMoment.Read(asof, door.Mill!.Settings, clock) is not { } at ? ApiMoment.Bad(asof)
        : ChartSight.Of(door.Mill!, chart, at) is var sight && sight.Code != chart ? MixApi.Refuse([$"There is no chart \"{chart}\" as of then. GET /api/lab/charts lists them."])
        : Results.Ok(LabSignalAnswer.Of(sight, ChartBooks.Actions(door.Mill!, chart)));

    private static IResult Act(MillDoor door, IClock clock, ChartActionForm form, [Description("Who did it; demanded.")] string? by)
    {
        var (mill, chart) = (door.Mill!, (form.Chart ?? "").Trim());
        var point = string.IsNullOrWhiteSpace(form.Point) ? null : ApiMoment.Read(form.Point, mill.Settings, clock);
        if (point is null)
        {
            return MixApi.Refuse(["Give point: when the reading that signals was taken, as the signals list it."]);
        }

        // The chart as it was when the reading came: later readings push it off the newest that are drawn.
        var sight = ChartSight.Of(mill, chart, point.Value);
        var faults = sight.Code != chart ? [$"There is no chart \"{chart}\" as of then. GET /api/lab/charts lists them."] : form.Keep(mill, sight, point, by?.Trim(), "Say who did it: add ?by=");
        return faults.Count > 0 ? MixApi.Refuse(faults) : Results.Json(LabSignalAnswer.Of(sight, ChartBooks.Actions(mill, chart)), statusCode: StatusCodes.Status201Created);
    }
}

/// <summary>What can be charted.</summary>
/// <param name="Code">What it is known by.</param>
/// <param name="Place">The place.</param>
/// <param name="Flour">The flour a unit made; empty elsewhere.</param>
/// <param name="What">The property.</param>
/// <param name="Method">The method.</param>
/// <param name="Readings">How many readings.</param>
/// <param name="Limits">The limits in force; null where none are frozen.</param>
public sealed record LabChartChoice(string Code, string Place, string Flour, string What, string Method, int Readings, LabLimitsAnswer? Limits);

/// <summary>A version of frozen limits, per cent on 14 % moisture where the property has a basis.</summary>
public sealed record LabLimitsAnswer(int Version, DateTimeOffset From, DateTimeOffset Until, int Readings, double Centre, double Sigma, double? Target, double? Lower, double? Upper, IReadOnlyList<string> Rules, string Reason, string By, DateTimeOffset Kept)
{
    internal static LabLimitsAnswer[] Of(IEnumerable<(FrozenLimits Limits, int Version, string By, Instant Kept)> versions) => [.. versions.Select(v => new LabLimitsAnswer(
        v.Version, v.Limits.From.ToDateTimeOffset(), v.Limits.Until.ToDateTimeOffset(), v.Limits.Count, v.Limits.Centre, v.Limits.Sigma, v.Limits.Target, v.Limits.Lower, v.Limits.Upper, [.. v.Limits.Rules.Select(r => r.ToString())], v.Limits.Reason, v.By, v.Kept.ToDateTimeOffset()))];
}

/// <summary>A signal and what was done about it.</summary>
/// <param name="At">When the reading was taken.</param>
/// <param name="Value">The reading.</param>
/// <param name="Signal">What signals, in words.</param>
/// <param name="Actions">What was done, in the order it was noted.</param>
public sealed record LabSignalAnswer(DateTimeOffset At, double Value, string Signal, LabActionAnswer[] Actions)
{
    internal static LabSignalAnswer[] Of(ChartSight sight, IReadOnlyList<(ChartAction Action, string By, Instant Kept)> actions)
    {
        var beside = actions.Reverse().ToLookup(a => a.Action.Point);
        return [.. sight.Signals.Select(s => new LabSignalAnswer(s.At.ToDateTimeOffset(), s.Value, s.Words, [.. beside[s.At].Select(a => new LabActionAnswer(a.Action.Done, a.By, a.Kept.ToDateTimeOffset()))]))];
    }
}

/// <summary>What was done about a signal.</summary>
/// <param name="Done">In words.</param>
/// <param name="By">Who.</param>
/// <param name="Kept">When it was noted.</param>
public sealed record LabActionAnswer(string Done, string By, DateTimeOffset Kept);
