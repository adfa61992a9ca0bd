using System.ComponentModel;
using Evengrist.Intake;
using Evengrist.Ledger;
using Evengrist.Plant;
using Evengrist.Plant.Answers;
using Evengrist.Plant.Cases;
using Evengrist.Web.Sights.Trucks;
using Evengrist.Web.Start;
using NodaTime;
using NodaTime.Text;

namespace Evengrist.Web.Api;

/// <summary>Tickets over HTTP: those of a day, one, a new one, and a settlement posed without records.</summary>
public static class IntakeApi
{
    /// <summary>Adds the questions and the one command.</summary>
    public static void MapIntakeApi(this IEndpointRouteBuilder app)
    {
        var intake = app.MapGroup("/api/intake").WithTags("Intake");
        intake.MapTicketSteps();
        intake.MapYard();
        intake.MapGet("tickets", Day).WithSummary("Trucks of a milling day, settled where a contract is named").Produces<TicketAnswer[]>().ProducesProblem(StatusCodes.Status400BadRequest);
        intake.MapGet("tickets/{ticket}", One).WithSummary("One truck").Produces<TicketAnswer>().ProducesProblem(StatusCodes.Status400BadRequest).ProducesProblem(StatusCodes.Status404NotFound);
        intake.MapPost("tickets", Record).WithSummary("Record a whole truck; numbers are text as a person types them, protein and DON with their basis. Without a ticket number the next of the milling day is given under your station and key")
            .Produces<TicketAnswer>(StatusCodes.Status201Created).Produces<TicketAnswer>().ProducesProblem(StatusCodes.Status400BadRequest).ProducesProblem(StatusCodes.Status409Conflict);
        intake.MapPosed<SettlementAnswer>("settle", SettleAsync, SettlementCase.Help, "Settle a posed load under a posed contract, line by line; needs no records");
        intake.MapGrades();
        intake.MapContracts();
        intake.MapDecisions();
    }

    private static IResult Day(MillDoor door, IClock clock, [Description("Milling day, 2025-07-09; the newest with trucks when left out.")] string? day, [Description(ApiMoment.Says)] string? asof)
    {
        var mill = door.Mill!;
        if (ApiMoment.Read(asof, mill.Settings, clock) is not { } at)
        {
            return ApiMoment.Bad(asof);
        }

        var asked = LocalDatePattern.Iso.Parse(day ?? "");
        if (!string.IsNullOrEmpty(day) && !asked.Success)
        {
            return Results.Problem($"\"{day}\" is no date. Write it like 2025-07-09.", statusCode: StatusCodes.Status400BadRequest, title: "day is no date");
        }

        var (terms, settings) = (Terms.Of(mill), mill.Settings);
        var sight = mill.Ask(view => IntakeDay.Of(new TruckSighting(view.Book, at, terms, settings), at, asked.Success ? asked.Value : null));
        return Results.Ok(sight.Trucks.Select(TicketAnswer.Of).ToArray());
    }

    private static IResult One(MillDoor door, IClock clock, string ticket, [Description(ApiMoment.Says)] string? asof)
    {
        var mill = door.Mill!;
        return ApiMoment.Read(asof, mill.Settings, clock) is not { } at ? ApiMoment.Bad(asof)
            : Look(door, ticket, at) is { } truck ? Results.Ok(TicketAnswer.Of(truck))
            : Results.Problem($"There is no ticket \"{ticket}\" by then. /api/intake/tickets lists those of a day.", statusCode: StatusCodes.Status404NotFound, title: "No such ticket");
    }

    private static IResult Record(MillDoor door, IClock clock, TicketForm ticket, [Description("Who records it; demanded.")] string? by)
    {
        var mill = door.Mill!;
        var (terms, settings) = (Terms.Of(mill), mill.Settings);
        var at = string.IsNullOrWhiteSpace(ticket.At) ? null : ApiMoment.Read(ticket.At, settings, clock);
        var entry = mill.Ask(view => TicketEntry.Read(ticket, view.Book, terms, settings, at, clock.GetCurrentInstant()));
        if (string.IsNullOrWhiteSpace(by) || !entry.Typed.IsWhole)
        {
            return TicketStepsApi.Bad(entry.Typed, by);
        }

        try
        {
            var (number, receipt) = mill.Record(entry, by.Trim());
            var answer = TicketAnswer.Of(Look(door, number, Instant.MaxValue)!);
            return receipt.Added > 0 ? Results.Created($"/api/intake/tickets/{number}", answer) : Results.Ok(answer);
        }
        catch (LedgerRefusal refusal)
        {
            return Results.Problem(TicketRecording.Words(refusal, entry), statusCode: StatusCodes.Status409Conflict, title: "Not recorded", extensions: new Dictionary<string, object?> { ["rule"] = refusal.Rule.ToString() });
        }
    }

    private static async Task<IResult> SettleAsync(HttpContext context)
    {
        NotSettled? refused = null;
        var answer = await Posed.AnswerAsync(context, SettlementCase.Read, posed =>
        {
            var outcome = SettlementModel.Settle(posed.Delivery, posed.Terms);
            refused = outcome as NotSettled;
            return outcome is Settlement settled ? Parsing.Got(SettlementAnswer.Of(settled)) : Parsing.Failed<SettlementAnswer>(Fault.AtPath("$", "", "a load that the contract settles"));
        });
        return refused is null ? answer : Results.Problem(string.Join(" ", refused.Reasons), statusCode: StatusCodes.Status422UnprocessableEntity, title: "Not settled");
    }

    internal static TruckSight? Look(MillDoor door, string ticket, Instant at)
    {
        var mill = door.Mill!;
        var (terms, settings) = (Terms.Of(mill), mill.Settings);
        return mill.Ask(view => view.Book.Find(ticket) is { Kind: PlaceKind.Truck } place ? new TruckSighting(view.Book, at, terms, settings).Look(place) : null);
    }
}
