using System.ComponentModel;
using Evengrist.Packing.Dispatch;
using Evengrist.Plant;
using Evengrist.Plant.Answers;
using Evengrist.Plant.Cases;
using Evengrist.Records.Packing.Rework;
using Evengrist.Web.Sights.Rework;
using Evengrist.Web.Start;
using NodaTime;

namespace Evengrist.Web.Api;

/// <summary>Rework over HTTP.</summary>
public static class ReworkApi
{
    /// <summary>Adds it.</summary>
    public static void MapReworkApi(this IEndpointRouteBuilder app)
    {
        var rework = app.MapGroup("/api/rework").WithTags("Rework");
        rework.MapPosed<ReworkAdviceAnswer>("posed", context => Posed.AnswerAsync(context, ReworkCase.Read, c => Parsing.Got(ReworkAdviceAnswer.Of(c.Totes, c.Run, c.Rules))), ReworkCase.Help, "Which posed tote to feed into a run, how much and how long; needs no records");
        rework.MapGet("", Ask).WithSummary("Totes of the ledger beside a run of a flour, the oldest first").Produces<ReworkAdviceAnswer>().ProducesProblem(StatusCodes.Status400BadRequest);
        rework.MapPost("{act}", Do).WithSummary($"An act with a tote: {string.Join(", ", ReworkForm.Acts)}; say who with ?by=")
            .WithDescription("""{ "tote": "R-…", "packages": "P-… P-…", "allergens": "soy", "reason": "…", "bin": "F-WB", "kilograms": "500", "at": "2026-01-14T10:40", "until": "…" }; only the fields of the act count""").Produces<ReworkDone>().ProducesProblem(StatusCodes.Status400BadRequest);
    }

    private static IResult Ask(MillDoor door, IClock clock, [Description("flour of the run")] string? into, [Description("its flow, t/h; as the ledger had it in the last 24 hours when left out")] double? rate, [Description(ApiMoment.Says)] string? asof)
    {
        if (ApiMoment.Read(asof, door.Mill!.Settings, clock) is not { } at)
        {
            return ApiMoment.Bad(asof);
        }

        if (string.IsNullOrWhiteSpace(into) || rate is not (null or (> 0 and <= 1000)))
        {
            return MixApi.Refuse([string.IsNullOrWhiteSpace(into) ? "Say into which flour: add ?into=" : "A flow lies above 0 to 1000 t/h."], "Not asked rightly");
        }

        var run = ReworkLedger.Run(door.Mill, into, at);
        return Results.Ok(ReworkAdviceAnswer.Of(ReworkLedger.Of(door.Mill, at).Select(t => t.Tote), run with { TonnesPerHour = rate ?? run.TonnesPerHour }, KeepReworkRules.Newest(door.Mill).Rules));
    }

    private static IResult Do(MillDoor door, IClock clock, string act, ReworkForm form, string? by)
    {
        var (done, findings) = form.Do(door.Mill!, act.ToLowerInvariant(), by, text => ApiMoment.Read(text, door.Mill!.Settings, clock), clock.GetCurrentInstant());
        return done ? Results.Ok(new ReworkDone(act, [.. findings.Select(f => new FindingAnswer(f.Weight.ToString(), f.Words))])) : MixApi.Refuse([.. findings.Where(f => f.Weight != FindingWeight.Caution).Select(f => f.Words)], "Not done");
    }
}

/// <summary>An act with a tote that was done.</summary>
/// <param name="Act">Which.</param>
/// <param name="Findings">What was said of it.</param>
public sealed record ReworkDone(string Act, IReadOnlyList<FindingAnswer> Findings);
