using System.ComponentModel;
using Evengrist.Bins.Storage;
using Evengrist.Ledger;
using Evengrist.Plant;
using Evengrist.Plant.Answers;
using Evengrist.Plant.Cases;
using Evengrist.Records.Bins;
using Evengrist.Web.Sights.Storage;
using Evengrist.Web.Start;
using NodaTime;

namespace Evengrist.Web.Api;

/// <summary>Stored wheat over HTTP: the bins to look at first, a round of cables, and posed cases.</summary>
public static class StorageApi
{
    /// <summary>Adds the questions and the one command.</summary>
    public static void MapStorageApi(this IEndpointRouteBuilder app)
    {
        var bins = app.MapGroup("/api/bins").WithTags("Bins");
        bins.MapGet("storage", Ranked).WithSummary("Every wheat bin judged in store, the ones to look at first in front; advice, with the rule and source of each reason").Produces<BinRiskAnswer[]>().ProducesProblem(StatusCodes.Status400BadRequest);
        bins.MapPost("storage", (Delegate)StorageAsync).WithSummary("Life used, humidity, insects' band and reasons to look for the layers of a posed bin; needs no records").WithDescription(StorageCase.Help.Schema)
            .Accepts<object>("application/json").Produces<BinRiskAnswer>().ProducesProblem(StatusCodes.Status400BadRequest);
        bins.MapPosed<EquilibriumAnswer>("equilibrium", EquilibriumAsync, EquilibriumCase.Help, "Moisture of wheat and humidity of the air round it, each from the other; needs no records");
        bins.MapPost("aeration", (Delegate)AerationAsync).WithSummary("Hours for a cooling front, what posed airs would do, and the pressure; starts no fan, needs no records").WithDescription(AerationCase.Help.Schema)
            .Accepts<object>("application/json").Produces<AerationAnswer>().ProducesProblem(StatusCodes.Status400BadRequest);
        bins.MapPost("{code}/cables", (Delegate)CablesAsync).WithSummary("Record a round of a bin's temperature cables; the same round once more is not recorded again").Accepts<CablesPosed>("application/json")
            .Produces<CablesRecorded>(StatusCodes.Status201Created).Produces<CablesRecorded>().ProducesProblem(StatusCodes.Status400BadRequest).ProducesProblem(StatusCodes.Status409Conflict);
        bins.MapPost("{code}/seen", (Delegate)SeenAsync).WithSummary("Record what was seen of a bin in store: CO₂, live insects in a sample, air blown through; the same once more is not recorded again").Accepts<SeenPosed>("application/json")
            .Produces<SeenRecorded>(StatusCodes.Status201Created).Produces<SeenRecorded>().ProducesProblem(StatusCodes.Status400BadRequest).ProducesProblem(StatusCodes.Status409Conflict);
    }

    private static IResult Ranked(MillDoor door, IClock clock, [Description(ApiMoment.Says)] string? asof) =>
        ApiMoment.Read(asof, door.Mill!.Settings, clock) is { } at ? Results.Ok(StorageSight.Of(door.Mill!, at).Bins.Select(BinRiskAnswer.Of).ToArray()) : ApiMoment.Bad(asof);

    private static Task<IResult> StorageAsync(HttpContext context) =>
        Posed.AnswerAsync(context, StorageCase.Read, c => Parsing.Got(BinRiskAnswer.Of(BinRisk.Of(c.Bin, c.Constants, c.At))));

    private static Task<IResult> EquilibriumAsync(HttpContext context) => Posed.ReplyAsync(context, EquilibriumCase.Read, EquilibriumAnswer.To);

    private static Task<IResult> AerationAsync(HttpContext context) => Posed.AnswerAsync(context, AerationCase.Read, AerationAnswer.To);

    private static async Task<IResult> CablesAsync(HttpRequest request, MillDoor door, IClock clock, string code, [Description("Who records it; demanded.")] string? by)
    {
        var (round, refused) = await ApiBody.ReadAsync<CablesPosed>(request, """{ "at": "2026-01-14T08:00", "points": { "C2 at 4.0 m": 14.5 } }.""");
        if (round is null)
        {
            return refused!;
        }

        var mill = door.Mill!;
        var at = string.IsNullOrWhiteSpace(round.At) ? null : ApiMoment.Read(round.At, mill.Settings, clock);
        var points = round.Points.Select(p => (Text: p.Key, Point: CablePoint.Parse(p.Key), p.Value)).ToArray();
        string[] faults =
        [
            .. string.IsNullOrWhiteSpace(by) ? ["Say who records it: add ?by="] : Array.Empty<string>(),
            .. at is null ? ["\"at\" is the moment of the round, such as 2026-01-14T08:00."] : Array.Empty<string>(),
            .. points.Where(p => p.Point is null).Select(p => $"\"{p.Text}\" is no point: write {CablePoint.Form}."),
        ];
        if (faults.Length > 0)
        {
            return Bad(faults);
        }

        try
        {
            var receipt = new RecordCables(code, at!.Value, [.. points.Select(p => (p.Point!, p.Value))]).In(mill, by!.Trim());
            var answer = new CablesRecorded(code, receipt.Added, receipt.AlreadyKnown);
            return receipt.Added > 0 ? Results.Created($"/api/bins/storage", answer) : Results.Ok(answer);
        }
        catch (LedgerRefusal refusal)
        {
            return Refused(refusal);
        }
    }

    private static async Task<IResult> SeenAsync(HttpRequest request, MillDoor door, IClock clock, string code, [Description("Who records it; demanded.")] string? by)
    {
        var (posed, refused) = await ApiBody.ReadAsync<SeenPosed>(request, """{ "at": "2026-01-14T08:00", "carbonDioxidePpm": 620, "liveWeevils": 0, "otherLiveInsects": 1, "hours": 40, "m3PerMinTonne": 0.104, "how": "head of the bin" }; all but at may be left out.""");
        if (posed is null)
        {
            return refused!;
        }

        var mill = door.Mill!;
        var at = string.IsNullOrWhiteSpace(posed.At) ? null : ApiMoment.Read(posed.At, mill.Settings, clock);
        string[] faults =
        [
            .. string.IsNullOrWhiteSpace(by) ? ["Say who records it: add ?by="] : Array.Empty<string>(),
            .. at is null ? ["\"at\" is the moment, such as 2026-01-14T08:00."] : Array.Empty<string>(),
            .. posed.LiveWeevils is null != posed.OtherLiveInsects is null ? ["Insects: give both counts, 0 where none was found."] : Array.Empty<string>(),
            .. posed.Hours is not (null or (> 0 and <= 5000)) ? ["\"hours\" lie above 0 and are at most 5000."] : Array.Empty<string>(),
            .. posed.M3PerMinTonne is not (null or (> 0 and <= 10)) || (posed.Hours is null && posed.M3PerMinTonne is not null) ? ["\"m3PerMinTonne\" lies above 0, is at most 10, and goes with hours."] : Array.Empty<string>(),
        ];
        if (faults.Length > 0)
        {
            return Bad(faults);
        }

        try
        {
            var receipt = new RecordSeen(posed.Key ?? $"{code} seen {at!.Value.ToUnixTimeTicks()}", code, at!.Value)
            {
                CarbonDioxidePpm = posed.CarbonDioxidePpm, Insects = posed.LiveWeevils is { } weevils ? (weevils, posed.OtherLiveInsects!.Value) : null,
                Aeration = posed.Hours is { } hours ? new AerationRun(hours, posed.M3PerMinTonne) : null, Words = (posed.How ?? "").Trim(),
            }.In(mill, by!.Trim());
            var answer = new SeenRecorded(code, receipt.Added, receipt.AlreadyKnown);
            return receipt.Added > 0 ? Results.Created($"/api/bins/storage", answer) : Results.Ok(answer);
        }
        catch (LedgerRefusal refusal)
        {
            return Refused(refusal);
        }
    }

    private static IResult Bad(string[] faults) =>
        Results.Problem(string.Join(" ", faults), statusCode: StatusCodes.Status400BadRequest, title: "Not recorded", extensions: new Dictionary<string, object?> { ["faults"] = faults });

    private static IResult Refused(LedgerRefusal refusal) =>
        Results.Problem(refusal.Message, statusCode: StatusCodes.Status409Conflict, title: "Not recorded", extensions: new Dictionary<string, object?> { ["rule"] = refusal.Rule.ToString() });
}

/// <summary>What was seen of a bin in store; what is left out was not looked at. Dated, for air, when the fans stopped.</summary>
public sealed record SeenPosed(string At)
{
    /// <summary>The sender's own key, so that the same sent twice is one.</summary>
    public string? Key { get; init; }

    /// <summary>CO₂ in the bin's air, ppm by volume.</summary>
    public decimal? CarbonDioxidePpm { get; init; }

    /// <summary>Live weevils in the sample.</summary>
    public int? LiveWeevils { get; init; }

    /// <summary>Other live insects of stored grain in the sample.</summary>
    public int? OtherLiveInsects { get; init; }

    /// <summary>Hours of air.</summary>
    public double? Hours { get; init; }

    /// <summary>Airflow, m³/min for each tonne.</summary>
    public double? M3PerMinTonne { get; init; }

    /// <summary>How it was read or sampled, or why air was blown.</summary>
    public string? How { get; init; }
}

/// <summary>What became of what was seen.</summary>
public sealed record SeenRecorded(string Bin, int Added, int AlreadyKnown);

/// <summary>A round of cables: when, and °C by point, such as <c>"C2 at 4.0 m": 14.5</c>.</summary>
public sealed record CablesPosed(string At, IReadOnlyDictionary<string, decimal> Points);

/// <summary>What became of a round.</summary>
public sealed record CablesRecorded(string Bin, int Added, int AlreadyKnown);
