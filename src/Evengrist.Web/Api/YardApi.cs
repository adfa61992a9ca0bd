using System.ComponentModel;
using Evengrist.Intake;
using Evengrist.Plant.Answers;
using Evengrist.Plant.Cases;
using Evengrist.Quantities;
using Evengrist.Records.Intake;
using Evengrist.Web.Sights.Trucks;
using Evengrist.Web.Start;
using NodaTime;
using NodaTime.Text;

namespace Evengrist.Web.Api;

/// <summary>A booked slot; state is booked, came or called off.</summary>
public sealed record BookingAnswer(string Slot, DateTimeOffset At, string From, string Class, decimal Tonnes, string State, string? Ticket)
{
    internal static BookingAnswer Of(Booking booking, string? ticket) => new(
        booking.Code, booking.At.ToDateTimeOffset(), booking.From, booking.Class, booking.Tonnes, booking.Cancelled ? "called off" : ticket is null ? "booked" : "came", ticket);
}

/// <summary>A truck in the yard; minutes are whole.</summary>
public sealed record YardTruckAnswer(string Ticket, string Plate, string From, string Class, string State, string Way, int MinutesInState, int MinutesSinceItCame);

/// <summary>The yard at a moment. The wait of a truck that would come now is null where no truck has been through today.</summary>
public sealed record YardNowAnswer(
    DateTimeOffset At, string Day, IReadOnlyList<YardTruckAnswer> InYard, IReadOnlyList<BookingAnswer> Expected, int Came, int WeighedEmpty, int TurnedAway, decimal NetKg,
    int Lanes, double? ServiceMinutes, YardWaitAnswer? ComesNow, YardAnswer? Forecast);

/// <summary>The yard over HTTP: who stands where, who is expected, and the queue of a posed yard.</summary>
internal static class YardApi
{
    /// <summary>Adds the questions and the two commands.</summary>
    public static void MapYard(this RouteGroupBuilder intake)
    {
        intake.MapGet("yard", Now).WithSummary("Trucks in the yard by state, slots expected, sums of the day and the queue forecast").Produces<YardNowAnswer>().ProducesProblem(StatusCodes.Status400BadRequest);
        intake.MapPost("queue", (Delegate)QueueAsync).WithSummary("Forecast the queue of a posed yard; needs no records").WithDescription(YardCase.Help.Schema)
            .Accepts<object>("application/json").Produces<YardAnswer>().ProducesProblem(StatusCodes.Status400BadRequest);
        intake.MapGet("bookings", Booked).WithSummary("Slots of a milling day").Produces<BookingAnswer[]>().ProducesProblem(StatusCodes.Status400BadRequest);
        intake.MapPost("bookings", Book).WithSummary("Book a slot; the same key again is the same booking").Produces<BookingAnswer>(StatusCodes.Status201Created).ProducesProblem(StatusCodes.Status400BadRequest);
        intake.MapPost("bookings/{slot}/call-off", CallOff).WithSummary("Call a slot off; it stays, and says so").Produces<BookingAnswer>().ProducesProblem(StatusCodes.Status400BadRequest).ProducesProblem(StatusCodes.Status404NotFound);
    }

    private static Task<IResult> QueueAsync(HttpContext context) => Posed.AnswerAsync(context, YardCase.Read, YardAnswer.To);

    private static IResult Now(MillDoor door, IClock clock, [Description(ApiMoment.Says)] string? asof)
    {
        var mill = door.Mill!;
        var settings = mill.Settings;
        if (ApiMoment.Read(asof, settings, clock) is not { } at)
        {
            return ApiMoment.Bad(asof);
        }

        var bookings = Bookings.Of(mill);
        var yard = mill.Ask(view => new YardSighting(view.Book, at, bookings, settings).Look());
        return Results.Ok(new YardNowAnswer(
            at.ToDateTimeOffset(), LocalDatePattern.Iso.Format(yard.Day),
            [.. yard.InYard.Select(t => new YardTruckAnswer(t.Truck.Code, t.Truck.Name, t.From, t.Truck.Material, t.State.Words, t.Way, t.MinutesHere, t.MinutesInAll))],
            [.. yard.Expected.Select(b => BookingAnswer.Of(b, null))], yard.Came, yard.Emptied, yard.TurnedAway, yard.Net.Kilograms, yard.Lanes, yard.Median,
            yard.ComesNow is { } wait ? new(wait.Arrives, wait.Minutes, wait.StandardUncertainty) : null, yard.Forecast is YardForecast forecast ? YardAnswer.Of(forecast) : null));
    }

    private static IResult Booked(MillDoor door, [Description("Milling day, 2025-07-09; demanded.")] string? day)
    {
        if (LocalDatePattern.Iso.Parse(day ?? "") is not { Success: true, Value: var asked })
        {
            return Results.Problem($"\"{day}\" is no date. Write it like 2025-07-09.", statusCode: StatusCodes.Status400BadRequest, title: "day is no date");
        }

        var mill = door.Mill!;
        var came = mill.Ask(view => Bookings.Come(view.Book, asked));
        return Results.Ok(Bookings.Of(mill).AllOf(asked, mill.Settings).Select(b => BookingAnswer.Of(b, came.GetValueOrDefault(b.Code))).ToArray());
    }

    private static IResult Book(MillDoor door, IClock clock, BookingForm form, [Description("Who books it; demanded.")] string? by)
    {
        var mill = door.Mill!;
        var at = string.IsNullOrWhiteSpace(form.At) ? null : ApiMoment.Read(form.At, mill.Settings, clock);
        var entry = mill.Ask(view => BookingEntry.Read(form, view.Book, at));
        entry.Typed.Text(form.Key, "a key of your own for the booking, so that a request sent again books no second slot");
        if (string.IsNullOrWhiteSpace(by) || !entry.Typed.IsWhole)
        {
            return TicketStepsApi.Bad(entry.Typed, by);
        }

        var booked = Bookings.Book(mill, entry.Booking!, by.Trim());
        return Results.Created($"/api/intake/bookings?day={LocalDatePattern.Iso.Format(MillingDay.Of(booked.At, mill.Settings.Zone, mill.Settings.DayStart))}", BookingAnswer.Of(booked, null));
    }

    private static IResult CallOff(MillDoor door, string slot, [Description("Who calls it off; demanded.")] string? by)
    {
        if (string.IsNullOrWhiteSpace(by))
        {
            return TicketStepsApi.Bad(new Typed(), by);
        }

        return Bookings.CallOff(door.Mill!, slot, by.Trim()) is { } off ? Results.Ok(BookingAnswer.Of(off, null))
            : Results.Problem($"There is no slot \"{slot}\". /api/intake/bookings?day= lists those of a day.", statusCode: StatusCodes.Status404NotFound, title: "No such slot");
    }
}
