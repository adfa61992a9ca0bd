using System.ComponentModel;
using Evengrist.Plant;
using Evengrist.Plant.Answers;
using Evengrist.Plant.Cases;
using Evengrist.Quantities;
using Evengrist.Tracing;
using Evengrist.Tracing.Structure;
using Evengrist.Web.Sights.Traces;
using Evengrist.Web.Start;
using NodaTime;

namespace Evengrist.Web.Api;

/// <summary>Traces over HTTP, on the records and on a posed mill.</summary>
public static class TracingApi
{
    /// <summary>Adds the questions.</summary>
    public static void MapTracingApi(this IEndpointRouteBuilder app)
    {
        var tracing = app.MapGroup("/api/tracing").WithTags("Tracing");
        tracing.MapGet("reach", (MillDoor door, IClock clock, [AsParameters] TraceParameters asked) => Ask(door, clock, asked, (tracer, question, beliefs) => ReachAnswer.Of(tracer.Reach(question, beliefs))))
            .WithSummary("What a truck, field, lot or span of hours has reached: packages, customers, and where the rest is").Produces<ReachAnswer>().ProducesProblem(StatusCodes.Status400BadRequest);
        tracing.MapGet("roots", (MillDoor door, IClock clock, [AsParameters] TraceParameters asked) => Ask(door, clock, asked, (tracer, question, beliefs) => RootsAnswer.Of(tracer.Roots(question, beliefs))))
            .WithSummary("Where a pallet, load, bin's content or span of hours came from: shares by truck and field").Produces<RootsAnswer>().ProducesProblem(StatusCodes.Status400BadRequest);
        tracing.MapPost("reach", (Delegate)((HttpContext context) => Posed.AnswerAsync(context, TraceCase.Read, TraceAnswer.Reach))).WithDescription(TraceCase.Help.Schema)
            .WithSummary("The same in a posed mill; needs no records").Accepts<object>("application/json").Produces<ReachAnswer>().ProducesProblem(StatusCodes.Status400BadRequest);
        tracing.MapPost("roots", (Delegate)((HttpContext context) => Posed.AnswerAsync(context, TraceCase.Read, TraceAnswer.Roots))).WithDescription(TraceCase.Help.Schema)
            .WithSummary("The same in a posed mill; needs no records").Accepts<object>("application/json").Produces<RootsAnswer>().ProducesProblem(StatusCodes.Status400BadRequest);
        tracing.MapGet("structure", Practice).WithSummary("How large a recall would be for a truck of a span, as the mill works today: expected and worst, under each way bins may empty and under any").Produces<PracticeAnswer>().ProducesProblem(StatusCodes.Status400BadRequest);
        tracing.MapPost("structure", (Delegate)((HttpContext context) => Posed.AnswerAsync(context, StructureCase.Read, c => Parsing.Got(StructureAnswer.Of(c))))).WithDescription(StructureCase.Help.Schema)
            .WithSummary("Ways of keeping lots apart beside each other, on paper; needs no records").Accepts<object>("application/json").Produces<StructureAnswer>().ProducesProblem(StatusCodes.Status400BadRequest);
    }

    private static IResult Practice(
        MillDoor door, IClock clock, [Description("Trucks that came from then on; 180 days before the end when left out.")] string? from, [Description("Trucks that came before then; the moment looked at when left out.")] string? until,
        [Description("Kilograms of a truck in a package up to which the package does not count; 0 when left out.")] decimal? kg, [Description("Most trucks to trace, 1 to 1000; 100 when left out.")] int? most, [Description(ApiMoment.Says)] string? asof)
    {
        var (mill, settings) = (door.Mill!, door.Mill!.Settings);
        if (ApiMoment.Read(asof, settings, clock) is not { } at)
        {
            return ApiMoment.Bad(asof);
        }

        var end = string.IsNullOrWhiteSpace(until) ? at : ApiMoment.Read(until, settings, clock);
        var begin = string.IsNullOrWhiteSpace(from) ? end - Duration.FromDays(180) : ApiMoment.Read(from, settings, clock);
        if (begin is null || end is null || end <= begin || kg is < 0m or > 1_000_000m || most is < 1 or > 1000)
        {
            return Results.Problem("Give from and a later until as moments, kg from 0 to 1 000 000, and most from 1 to 1000.", statusCode: StatusCodes.Status400BadRequest, title: "Not traced");
        }

        // Truck by truck: others are served in between.
        var work = mill.Ask(view => new PracticeModel(view.Book, new PracticeQuestion(begin.Value, end.Value, at) { Threshold = Mass.FromKilograms(kg ?? 0), MostTraced = most ?? 100 }));
        while (mill.Ask(view => work.Step(view.Book, view.Tracer())))
        {
        }

        return Results.Ok(PracticeAnswer.Of(work.Outcome()));
    }

    private static IResult Ask<T>(MillDoor door, IClock clock, TraceParameters asked, Func<Tracer, TraceQuestion, IReadOnlyList<Belief>, T> answer)
    {
        var (mill, ask) = (door.Mill!, asked.ToAsk());
        var settings = mill.Settings;
        if (ApiMoment.Read(asked.AsOf, settings, clock) is not { } at)
        {
            return ApiMoment.Bad(asked.AsOf);
        }

        IReadOnlyList<string> faults = [];
        var answered = mill.Ask(view => ask.Resolve(view.Book, text => ApiMoment.Read(text, settings, clock), at, out faults) is { } question ? (object?)answer(view.Tracer(), question, ask.Beliefs) : null);
        return answered is not null ? Results.Ok(answered)
            : Results.Problem(string.Join(" ", faults), statusCode: StatusCodes.Status400BadRequest, title: "Not traced", extensions: new Dictionary<string, object?> { ["faults"] = faults });
    }
}

/// <summary>A trace in the query of an address.</summary>
public sealed record TraceParameters
{
    /// <summary>Code.</summary>
    [Description("Code of a truck, field, pallet, additive lot, bin, mill unit or customer.")] public string? Code { get; init; }

    /// <summary>From.</summary>
    [Description("Only what left the place from then on.")] public string? From { get; init; }

    /// <summary>Until.</summary>
    [Description("Only what left the place before then.")] public string? Until { get; init; }

    /// <summary>Threshold.</summary>
    [Description("Threshold in kg: packages with less under every hypothesis are counted, not listed; 50 when left out.")] public string? Kg { get; init; }

    /// <summary>Belief.</summary>
    [Description("Belief in first in, first out; with core and stirred taken in proportion; 0.7, 0.2, 0.1 when all are left out.")] public string? Fifo { get; init; }

    /// <summary>Belief.</summary>
    [Description("Belief in core first.")] public string? Core { get; init; }

    /// <summary>Belief.</summary>
    [Description("Belief in stirred.")] public string? Stirred { get; init; }

    /// <summary>Moment.</summary>
    [Description(ApiMoment.Says)] public string? AsOf { get; init; }

    internal TraceAsk ToAsk() => new()
    {
        Code = (Code ?? "").Trim(), From = (From ?? "").Trim(), Until = (Until ?? "").Trim(), Kilograms = (Kg ?? "").Trim(), Weights = [(Fifo ?? "").Trim(), (Core ?? "").Trim(), (Stirred ?? "").Trim()],
    };
}
