using System.ComponentModel;
using Evengrist.Ledger;
using Evengrist.Records.Tempering;
using Evengrist.Tempering;
using Evengrist.Web.Sights.Tempering;
using Evengrist.Web.Start;
using NodaTime;

namespace Evengrist.Web.Api;

/// <summary>What is recorded at a temper bin, over HTTP.</summary>
internal static class TemperLogApi
{
    private const int Most = 200;

    /// <summary>Adds the list and the entry.</summary>
    public static void MapTemperLog(this RouteGroupBuilder tempering)
    {
        tempering.MapGet("bins/{bin}/log", Show).WithSummary($"What persons recorded at a temper bin, newest first, at most {Most}").Produces<TemperLogLine[]>().ProducesProblem(StatusCodes.Status404NotFound);
        tempering.MapPost("bins/{bin}/log", Keep).WithSummary("Record a start, a stop, a trim of the water or a note at a temper bin; starts nothing and moves no grain")
            .WithDescription($"Texts as a person types them. what: {string.Join(", ", Enum.GetValues<TemperAct>().Where(a => a != TemperAct.None))} or {TemperActForm.Note}; water in L/h, wheat in t/h; at: mill time or with an offset; now when left out. The same key again is the same entry.")
            .Produces<TemperLogLine[]>(StatusCodes.Status201Created).Produces<TemperLogLine[]>().ProducesProblem(StatusCodes.Status400BadRequest).ProducesProblem(StatusCodes.Status404NotFound);
    }

    private static IResult Show(MillDoor door, IClock clock, string bin, [Description(ApiMoment.Says)] string? asof) =>
        ApiMoment.Read(asof, door.Mill!.Settings, clock) is not { } at ? ApiMoment.Bad(asof) : Code(door, bin) is { } code ? Results.Ok(Lines(door, code, at)) : NoSuch(bin);

    private static IResult Keep(MillDoor door, IClock clock, string bin, TemperActForm form, [Description("Who records it; demanded.")] string? by)
    {
        if (Code(door, bin) is not { } code)
        {
            return NoSuch(bin);
        }

        var now = clock.GetCurrentInstant();
        var faults = form.Record(door.Mill!, code, ApiMoment.OrNow(form.At, door.Mill!.Settings, clock), by?.Trim(), "Say who records it: add ?by=", out var receipt);
        return receipt is null ? MixApi.Refuse(faults) : Results.Json(Lines(door, code, now), statusCode: receipt.Added > 0 ? StatusCodes.Status201Created : StatusCodes.Status200OK);
    }

    private static string? Code(MillDoor door, string bin) => door.Mill!.Ask(view => view.Book.Find(bin) is { Kind: PlaceKind.TemperBin } place ? place.Code : null);

    private static TemperLogLine[] Lines(MillDoor door, string bin, Instant at) => [.. TemperLog.Of(door.Mill!, bin, at, Most).Select(Line)];

    private static TemperLogLine Line((FactId Id, Happening Happening, string By) line)
    {
        var entry = TemperEntry.Of(line.Happening);
        return new TemperLogLine(line.Id.Value, line.Happening.At.ToDateTimeOffset(), entry?.Act.ToString() ?? TemperActForm.Note, entry?.TonnesPerHour, entry?.LitresPerHour, line.Happening.Words, line.By);
    }

    private static IResult NoSuch(string bin) => Results.Problem($"There is no temper bin \"{bin}\". GET /api/tempering/bins lists them.", statusCode: StatusCodes.Status404NotFound, title: "No such temper bin");
}

/// <summary>One line of what was recorded at a temper bin.</summary>
/// <param name="Fact">Number of the fact.</param>
/// <param name="At">When.</param>
/// <param name="What">What was done, or Note.</param>
/// <param name="TonnesPerHour">Clean wheat as set, t/h; null where not said.</param>
/// <param name="LitresPerHour">Water as set, L/h; null where not said.</param>
/// <param name="Words">In words.</param>
/// <param name="By">Who recorded it.</param>
public sealed record TemperLogLine(long Fact, DateTimeOffset At, string What, double? TonnesPerHour, double? LitresPerHour, string Words, string By);
