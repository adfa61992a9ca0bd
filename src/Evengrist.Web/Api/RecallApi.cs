using System.ComponentModel;
using Evengrist.Plant.Answers;
using Evengrist.Plant.Cases;
using Evengrist.Quantities;
using Evengrist.Records.Tracing;
using Evengrist.Tracing.Drill;
using Evengrist.Tracing.Recall;
using Evengrist.Web.Sights.Traces;
using Evengrist.Web.Start;
using NodaTime;

namespace Evengrist.Web.Api;

/// <summary>Recalls over HTTP, on the records and on a posed mill.</summary>
public static class RecallApi
{
    /// <summary>Adds the questions.</summary>
    public static void MapRecallApi(this IEndpointRouteBuilder app)
    {
        var tracing = app.MapGroup("/api/tracing").WithTags("Tracing");
        tracing.MapGet("recall", (MillDoor door, IClock clock, [AsParameters] RecallParameters asked) => Ask(door, clock, asked))
            .WithSummary("What to call back: wide and narrow net with what each takes and may miss, packages bounded for any outflow, what is still unknown").Produces<RecallAnswer>().ProducesProblem(StatusCodes.Status400BadRequest);
        tracing.MapGet("recalls", (MillDoor door) => Recalls.All(door.Mill!)).WithSummary("Recalls that were issued, the newest first").Produces<IReadOnlyList<KeptRecall>>();
        tracing.MapGet("drill", (MillDoor door, IClock clock, [AsParameters] DrillParameters asked) => Drilled(door, clock, asked))
            .WithSummary("What a recall drill would score now, about a code or what a seed picks; keeps nothing").Produces<DrillAnswer>().ProducesProblem(StatusCodes.Status400BadRequest);
        tracing.MapGet("drills", (MillDoor door) => Drills.All(door.Mill!)).WithSummary("Recall drills, the newest first").Produces<IReadOnlyList<KeptDrill>>();
        tracing.MapPost("recall", (Delegate)((HttpContext context) => Posed.AnswerAsync(context, RecallCase.Read, RecallAnswer.Of))).WithDescription(RecallCase.Help.Schema)
            .WithSummary("The same in a posed mill; needs no records").Accepts<object>("application/json").Produces<RecallAnswer>().ProducesProblem(StatusCodes.Status400BadRequest);
    }

    private static IResult Drilled(MillDoor door, IClock clock, DrillParameters asked)
    {
        var settings = door.Mill!.Settings;
        if (ApiMoment.Read(asked.AsOf, settings, clock) is not { } at)
        {
            return ApiMoment.Bad(asked.AsOf);
        }

        var (subject, reason) = Drills.Subject(door.Mill!, asked.Code, asked.Seed, at);
        var fault = asked is { Code: null, Seed: null } ? "Name a code, or give a seed by which a truck or pallet is picked." : reason ?? (asked.Kg is < 0 or > 100_000m ? "A threshold is kilograms from 0 to 100000." : null);
        if (fault is not null)
        {
            return Results.Problem(fault, statusCode: StatusCodes.Status400BadRequest, title: "Not drilled");
        }

        var (score, nothing) = Drills.Score(door.Mill!, subject!.Code, Mass.FromKilograms(asked.Kg ?? 0), asked.Net ?? NetKind.Union, at);
        return score is null ? Results.Problem(nothing, statusCode: StatusCodes.Status400BadRequest, title: "Not drilled") : Results.Ok(new DrillAnswer(subject.Code, score));
    }

    private static IResult Ask(MillDoor door, IClock clock, RecallParameters asked)
    {
        var settings = door.Mill!.Settings;
        if (ApiMoment.Read(asked.AsOf, settings, clock) is not { } at)
        {
            return ApiMoment.Bad(asked.AsOf);
        }

        var ask = asked.ToAsk();
        var answer = RecallVisit.Of(door.Mill!, ask, text => string.IsNullOrWhiteSpace(text) ? null : ApiMoment.Read(text, settings, clock), at);
        return answer.Sight is { } sight ? Results.Ok(RecallAnswer.Of(sight.Outcome, ask.Net) with { TakenFor = sight.Words })
            : Results.Problem(string.Join(" ", answer.Faults), statusCode: StatusCodes.Status400BadRequest, title: "Not answered", extensions: new Dictionary<string, object?> { ["faults"] = answer.Faults });
    }
}

/// <summary>A drill in the query of an address.</summary>
public sealed record DrillParameters
{
    /// <summary>Code.</summary>
    [Description("Code of a truck, pallet or load.")] public string? Code { get; init; }

    /// <summary>Seed.</summary>
    [Description("Picks a truck or pallet of the last year, the same for the same seed.")] public int? Seed { get; init; }

    /// <summary>Threshold.</summary>
    [Description("Threshold in kg; 0 when left out.")] public decimal? Kg { get; init; }

    /// <summary>Net.</summary>
    [Description("The net that is the list: Wide, Union or Narrow; Union when left out.")] public NetKind? Net { get; init; }

    /// <summary>Moment.</summary>
    [Description(ApiMoment.Says)] public string? AsOf { get; init; }
}

/// <summary>What a drill scored.</summary>
/// <param name="Subject">What it was about.</param>
/// <param name="Score">How it went.</param>
public sealed record DrillAnswer(string Subject, DrillScore Score);

/// <summary>A recall in the query of an address.</summary>
public sealed record RecallParameters
{
    /// <summary>What.</summary>
    [Description("What is suspect; semicolons between things. A code or scan, with hours behind it where only those are suspect (B14 2025-09-17T20:00 2025-09-18T02:00); instrument NAME FROM UNTIL; packaging LOT.")] public string? What { get; init; }

    /// <summary>Threshold.</summary>
    [Description("Threshold in kg; 50 when left out.")] public string? Kg { get; init; }

    /// <summary>Chance.</summary>
    [Description("Chance of the narrow net, per cent; 50 when left out.")] public string? Chance { get; init; }

    /// <summary>Net.</summary>
    [Description("Whose packages are listed: wide, union or narrow; union when left out.")] public string? Net { get; init; }

    /// <summary>Order.</summary>
    [Description("unknown: in the bounds temper bins and lines leave in any order too.")] public string? Order { get; init; }

    /// <summary>Belief.</summary>
    [Description("Belief in first in, first out; with core and stirred taken in proportion.")] public string? Fifo { get; init; }

    /// <summary>Belief.</summary>
    [Description("Belief in core first.")] public string? Core { get; init; }

    /// <summary>Belief.</summary>
    [Description("Belief in stirred.")] public string? Stirred { get; init; }

    /// <summary>Moment.</summary>
    [Description(ApiMoment.Says)] public string? AsOf { get; init; }

    internal RecallAsk ToAsk() => new()
    {
        What = (What ?? "").Trim(), ChancePercent = (Chance ?? "").Trim(), NetName = (Net ?? "").Trim(), Order = (Order ?? "").Trim(),
        Numbers = new TraceAsk { Kilograms = (Kg ?? "").Trim(), Weights = [(Fifo ?? "").Trim(), (Core ?? "").Trim(), (Stirred ?? "").Trim()] },
    };
}
