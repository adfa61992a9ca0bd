using System.ComponentModel;
using Evengrist.Intake.Paying;
using Evengrist.Intake.Trade;
using Evengrist.Ledger;
using Evengrist.Plant.Answers.Paying;
using Evengrist.Quantities;
using Evengrist.Records.Intake;
using Evengrist.Web.Sights.Paying;
using Evengrist.Web.Start;
using NodaTime;

namespace Evengrist.Web.Api;

/// <summary>Statements, the season report, certificates, receipt records and payments over HTTP.</summary>
public static class PayingApi
{
    private const string SaysDay = "A milling day, 2025-07-09; the crop year of the moment looked at when left out.";

    /// <summary>Adds the questions and commands.</summary>
    public static void MapPayingApi(this IEndpointRouteBuilder app)
    {
        var intake = app.MapGroup("/api/intake").WithTags("Intake");
        intake.MapGet("statement", Statement).WithSummary("What a grower delivered over a span, ticket by ticket, and what is left to pay").Produces<StatementAnswer[]>().ProducesProblem(StatusCodes.Status400BadRequest).ProducesProblem(StatusCodes.Status404NotFound);
        intake.MapGet("season-report", Season).WithSummary("Quality and value by field, district and variety").Produces<SeasonAnswer[]>().ProducesProblem(StatusCodes.Status400BadRequest);
        intake.MapGet("certificates", Certificates).WithSummary("Scales and meters with their certificates and the tickets that may not be settled").Produces<InstrumentAnswer[]>().ProducesProblem(StatusCodes.Status400BadRequest);
        intake.MapGet("receipts", Receipts).WithSummary("Receipt records (21 CFR 1.337) of a span, each with what is missing").Produces<ReceiptRecord[]>().ProducesProblem(StatusCodes.Status400BadRequest);
        intake.MapPost("tickets/{ticket}/payments", Pay).WithSummary("Pay an advance, or settle finally where none is given").Produces<PaidTicketAnswer>(StatusCodes.Status201Created).ProducesProblem(StatusCodes.Status400BadRequest).ProducesProblem(StatusCodes.Status409Conflict);
        intake.MapPost("tickets/{ticket}/void", Void).WithSummary("Void a ticket; it stays and says so").Produces<PaidTicketAnswer>().ProducesProblem(StatusCodes.Status400BadRequest).ProducesProblem(StatusCodes.Status409Conflict);
        PaperPosts.Map<Certificate>(intake, "certificates", Certificate.Kind, "Keep the certificate of a scale or meter");
        PaperPosts.Map<Party>(intake, "parties", Party.Kind, "Keep the name and address of a grower or carrier");
        PaperPosts.Map<FieldSheet>(intake, "fields", FieldSheet.Kind, "Keep whose a field is, its district, hectares and variety");
        PaperPosts.Map<Vehicle>(intake, "vehicles", Vehicle.Kind, "Keep who hauls with a plate");
    }

    private static IResult Statement(
        MillDoor door, IClock clock, [Description("Code or name of the grower.")] string? grower, [Description(SaysDay)] string? from, [Description(SaysDay)] string? until, [Description(ApiMoment.Says)] string? asof) =>
        Ask(door, clock, from, until, asof, (sight, span) => string.IsNullOrWhiteSpace(grower) ? Bad(["Say which grower: add ?grower="])
            : sight.Statements(grower, span) is { Count: > 0 } found ? Results.Ok(found.Select(StatementAnswer.Of).ToArray())
            : Results.Problem($"No load of \"{grower}\" came from {span}. /api/intake/season-report lists what did.", statusCode: StatusCodes.Status404NotFound, title: "No such grower"));

    private static IResult Season(MillDoor door, IClock clock, [Description(SaysDay)] string? from, [Description(SaysDay)] string? until, [Description(ApiMoment.Says)] string? asof) =>
        Ask(door, clock, from, until, asof, (sight, span) => Results.Ok(sight.Season(span).Select(SeasonAnswer.Of).ToArray()));

    private static IResult Certificates(MillDoor door, IClock clock, [Description(ApiMoment.Says)] string? asof) =>
        Ask(door, clock, null, null, asof, (sight, _) => Results.Ok(sight.Instruments().Select(InstrumentAnswer.Of).ToArray()));

    private static IResult Receipts(MillDoor door, IClock clock, [Description(SaysDay)] string? from, [Description(SaysDay)] string? until, [Description(ApiMoment.Says)] string? asof) =>
        Ask(door, clock, from, until, asof, (sight, span) => Results.Ok(sight.Loads(span).Select(l => l.Receipt()).ToArray()));

    private static IResult Pay(MillDoor door, IClock clock, string ticket, PayBody body, [Description("Who pays it out; demanded.")] string? by)
    {
        AdvanceRule? rule = body.AdvancePercent is { } percent ? new PercentOfPay(percent)
            : body.AdvancePerTonne is { } each ? Priced(each, body.Currency ?? door.Mill!.Settings.Currency)
            : null;
        return Act(door, clock, ticket, by, body.AdvancePerTonne is not null && rule is null ? ["The currency is three capital letters, like USD."] : [],
            at => new PayTickets([ticket], rule, at).In(door.Mill!, by!.Trim()), StatusCodes.Status201Created);
    }

    private static IResult Void(MillDoor door, IClock clock, string ticket, VoidBody body, [Description("Who voids it; demanded.")] string? by) =>
        Act(door, clock, ticket, by, string.IsNullOrWhiteSpace(body.Reason) ? ["Say why: add a reason."] : [], at => new VoidTicket(ticket, body.Reason!, at).In(door.Mill!, by!.Trim()), StatusCodes.Status200OK);

    private static FixedPerTonne? Priced(decimal each, string currency) => currency.Length == 3 && currency.All(char.IsAsciiLetterUpper) ? new FixedPerTonne(Money.Of(each, currency)) : null;

    private static IResult Act(MillDoor door, IClock clock, string ticket, string? by, IReadOnlyList<string> faults, Action<Instant> act, int done)
    {
        string[] all = [.. faults, .. string.IsNullOrWhiteSpace(by) ? ["Say who does it: add ?by="] : Array.Empty<string>()];
        if (all.Length > 0)
        {
            return Bad(all);
        }

        try
        {
            act(ApiMoment.Read(null, door.Mill!.Settings, clock)!.Value);
        }
        catch (LedgerRefusal refusal)
        {
            return Results.Problem(refusal.Message, statusCode: StatusCodes.Status409Conflict, title: "Not recorded", extensions: new Dictionary<string, object?> { ["rule"] = refusal.Rule.ToString() });
        }

        var answer = PaidTicketAnswer.Of(PaymentAccount.Of(TradeSight.Of(door.Mill!, Instant.MaxValue.Minus(Duration.FromDays(2))).Load(ticket)!));
        return Results.Json(answer, statusCode: done);
    }

    private static IResult Ask(MillDoor door, IClock clock, string? from, string? until, string? asof, Func<TradeSight, SeasonSpan, IResult> answer)
    {
        var mill = door.Mill!;
        if (ApiMoment.Read(asof, mill.Settings, clock) is not { } at)
        {
            return ApiMoment.Bad(asof);
        }

        var sight = TradeSight.Of(mill, at);
        var asked = SpanAsk.Of(from, until, sight.Day);
        return asked.Faults.Count > 0 ? Bad(asked.Faults) : answer(sight, asked.Span);
    }

    private static IResult Bad(IReadOnlyList<string> faults) =>
        Results.Problem(string.Join(" ", faults), statusCode: StatusCodes.Status400BadRequest, title: "Not understood", extensions: new Dictionary<string, object?> { ["faults"] = faults });
}

/// <summary>How to pay. An advance as a part of the pay or as money for a tonne of net; neither settles finally.</summary>
/// <param name="AdvancePercent">Per cent of the provisional pay.</param>
/// <param name="AdvancePerTonne">Money for each tonne of net.</param>
/// <param name="Currency">Currency of <paramref name="AdvancePerTonne"/>; the mill's own when left out.</param>
public sealed record PayBody(decimal? AdvancePercent = null, decimal? AdvancePerTonne = null, string? Currency = null);

/// <summary>Why a ticket is voided.</summary>
/// <param name="Reason">In words; demanded.</param>
public sealed record VoidBody(string? Reason = null);
