using System.ComponentModel;
using Evengrist.Ledger;
using Evengrist.Quantities;
using Evengrist.Web.Sights.Trucks;
using Evengrist.Web.Start;
using NodaTime;

namespace Evengrist.Web.Api;

/// <summary>A ticket step by step over HTTP: opened at the gate, weighed in, sampled, sent somewhere, weighed out.</summary>
internal static class TicketStepsApi
{
    private static readonly (string Path, TicketStep Step, string Summary)[] Steps =
    [
        ("weigh-in", TicketStep.WeighIn, "Weigh a truck full: gross in kg"),
        ("sample", TicketStep.Sample, "Record what the sample of a truck showed; may come in several parts, each under a key of its own"),
        ("send", TicketStep.Send, "Decide where a load goes: accept, discount or divert into a bin by pit and leg, set aside, turn away"),
        ("weigh-out", TicketStep.WeighOut, "Weigh a truck empty: tare in kg; its net is booked into the bin it was sent to"),
    ];

    /// <summary>Adds the steps.</summary>
    public static void MapTicketSteps(this RouteGroupBuilder intake)
    {
        intake.MapPost("arrivals", Open).WithSummary("Open a ticket for a truck at the gate; the next number of the milling day is given. The same station and key again is the same ticket")
            .Produces<TicketAnswer>(StatusCodes.Status201Created).Produces<TicketAnswer>().ProducesProblem(StatusCodes.Status400BadRequest).ProducesProblem(StatusCodes.Status409Conflict);
        foreach (var (path, step, summary) in Steps)
        {
            intake.MapPost("tickets/{ticket}/" + path, (MillDoor door, IClock clock, string ticket, StepForm form, [Description("Who records it; demanded.")] string? by) => Take(door, clock, ticket, step, form, by))
                .WithSummary(summary).WithDescription("Texts as a person types them. seen: the ticket's newest as you last read it; when somebody else has changed the ticket since, nothing is recorded and the answer says what changed. at: mill time or with an offset; now when left out.")
                .Produces<TicketAnswer>().ProducesProblem(StatusCodes.Status400BadRequest).ProducesProblem(StatusCodes.Status404NotFound).ProducesProblem(StatusCodes.Status409Conflict);
        }
    }

    /// <summary>The refusal of what cannot be read or is not all there.</summary>
    public static IResult Bad(Typed typed, string? by)
    {
        string[] faults = [.. typed.Faults.Select(f => f.Fault), .. typed.Missing.Select(m => $"Still needed: {m}."), .. string.IsNullOrWhiteSpace(by) ? ["Say who records it: add ?by="] : Array.Empty<string>()];
        return Results.Problem(string.Join(" ", faults), statusCode: StatusCodes.Status400BadRequest, title: "Not recorded", extensions: new Dictionary<string, object?> { ["faults"] = faults });
    }

    private static IResult Open(MillDoor door, IClock clock, ArrivalForm form, [Description("Who records it; demanded.")] string? by)
    {
        var mill = door.Mill!;
        var (terms, now) = (Terms.Of(mill), clock.GetCurrentInstant());
        var at = string.IsNullOrWhiteSpace(form.At) ? null : ApiMoment.Read(form.At, mill.Settings, clock);
        var entry = mill.Ask(view => ArrivalEntry.Read(form, view.Book, terms, at, now));
        if (string.IsNullOrWhiteSpace(by) || !entry.Typed.IsWhole)
        {
            return Bad(entry.Typed, by);
        }

        try
        {
            var (ticket, receipt) = entry.Record(mill, by.Trim(), now);
            var answer = TicketAnswer.Of(IntakeApi.Look(door, ticket, Instant.MaxValue)!);
            return receipt.Added > 0 ? Results.Created($"/api/intake/tickets/{ticket}", answer) : Results.Ok(answer);
        }
        catch (LedgerRefusal refusal)
        {
            return Refused(refusal);
        }
    }

    private static IResult Take(MillDoor door, IClock clock, string ticket, TicketStep step, StepForm form, string? by)
    {
        var mill = door.Mill!;
        var now = clock.GetCurrentInstant();
        var at = string.IsNullOrWhiteSpace(form.At) ? null : ApiMoment.Read(form.At, mill.Settings, clock);
        var entry = StepEntry.Read(step, form, at, now);
        if (string.IsNullOrWhiteSpace(by) || !entry.Typed.IsWhole)
        {
            return Bad(entry.Typed, by);
        }

        try
        {
            entry.Record(mill, ticket, by.Trim(), now);
            return Results.Ok(TicketAnswer.Of(IntakeApi.Look(door, ticket, Instant.MaxValue)!));
        }
        catch (LedgerRefusal refusal) when (refusal.Rule == LedgerRule.ChangedMeanwhile)
        {
            var changes = TicketChanges.Since(mill, ticket, entry.Seen!.Value, UnitSystem.Si);
            return Results.Problem(refusal.Message, statusCode: StatusCodes.Status409Conflict, title: "Changed meanwhile", extensions: new Dictionary<string, object?>
            {
                ["rule"] = refusal.Rule.ToString(), ["newest"] = changes.Select(c => c.Id.Value).DefaultIfEmpty(entry.Seen.Value.Value).Max(),
                ["changes"] = changes.Select(c => new { fact = c.Id.Value, by = c.Line.Fact.Attribution.By, says = c.Says }).ToArray(),
            });
        }
        catch (LedgerRefusal refusal)
        {
            return refusal.Rule == LedgerRule.UnknownPlace && refusal.Place == ticket
                ? Results.Problem(refusal.Message, statusCode: StatusCodes.Status404NotFound, title: "No such ticket")
                : Refused(refusal);
        }
    }

    private static IResult Refused(LedgerRefusal refusal) => Results.Problem(refusal.Message, statusCode: StatusCodes.Status409Conflict, title: "Not recorded", extensions: new Dictionary<string, object?> { ["rule"] = refusal.Rule.ToString() });
}
