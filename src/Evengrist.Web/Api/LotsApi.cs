using System.ComponentModel;
using Evengrist.Streams.Additions;
using Evengrist.Web.Sights.Streams;
using Evengrist.Web.Start;
using NodaTime;

namespace Evengrist.Web.Api;

/// <summary>What is left of additives, over HTTP.</summary>
internal static class LotsApi
{
    /// <summary>Adds the list and the entry.</summary>
    public static void MapLots(this RouteGroupBuilder streams)
    {
        streams.MapGet("additions/stock", Show).WithSummary("What is left of each additive and lot, kg, and until when it lasts").Produces<AdditiveStockAnswer[]>().ProducesProblem(StatusCodes.Status400BadRequest);
        streams.MapPost("additions/stock", Keep).WithSummary("Record what was delivered or counted of a lot; a new lot is opened with it. Books no movement")
            .WithDescription("Texts as a person types them: kilograms, plusMinus (k = 2, kg), how; additive for a new lot; at: mill time or with an offset, now when left out. The same key again is the same entry.")
            .Produces<AdditiveStockAnswer[]>(StatusCodes.Status201Created).Produces<AdditiveStockAnswer[]>().ProducesProblem(StatusCodes.Status400BadRequest);
    }

    private static IResult Show(MillDoor door, IClock clock, [Description(ApiMoment.Says)] string? asof) => ApiMoment.Read(asof, door.Mill!.Settings, clock) is { } at ? Results.Ok(All(door, at)) : ApiMoment.Bad(asof);

    private static IResult Keep(MillDoor door, IClock clock, LotForm form, [Description("Who records it; demanded.")] string? by)
    {
        var now = clock.GetCurrentInstant();
        var faults = form.Record(door.Mill!, ApiMoment.OrNow(form.At, door.Mill!.Settings, clock), by?.Trim(), "Say who records it: add ?by=", out var receipt);
        return receipt is null ? MixApi.Refuse(faults) : Results.Json(All(door, now), statusCode: receipt.Added > 0 ? StatusCodes.Status201Created : StatusCodes.Status200OK);
    }

    private static AdditiveStockAnswer[] All(MillDoor door, Instant at) => door.Mill!.Ask(view => AdditiveStock.Of(view.Book, at).Select(AdditiveStockAnswer.Of).ToArray());
}

/// <summary>What is left of an additive.</summary>
/// <param name="Additive">The additive.</param>
/// <param name="LeftKilograms">Left over all lots, kg; null where nothing was delivered or counted.</param>
/// <param name="KilogramsPerDay">Fed a day over the last 14 days, kg.</param>
/// <param name="LastsUntil">Until when it lasts at that; null where it cannot be said.</param>
/// <param name="Lots">Lots that are not used up.</param>
public sealed record AdditiveStockAnswer(string Additive, double? LeftKilograms, double KilogramsPerDay, DateTimeOffset? LastsUntil, IReadOnlyList<LotStockAnswer> Lots)
{
    internal static AdditiveStockAnswer Of(AdditiveStock stock) => new(
        stock.Additive, stock.LeftKilograms, stock.KilogramsPerDay, stock.LastsUntil?.ToDateTimeOffset(),
        [.. stock.Lots.Select(l => new LotStockAnswer(l.Lot.Code, (double?)l.Found?.Value * 1000, l.Found?.At.ToDateTimeOffset(), l.Found?.Method, l.FedSince, l.LeftKilograms, 2 * l.StandardUncertainty))]);
}

/// <summary>What is left of a lot.</summary>
/// <param name="Lot">Its code.</param>
/// <param name="FoundKilograms">Delivered or counted last, kg; null where nothing was.</param>
/// <param name="FoundAt">When.</param>
/// <param name="How">How.</param>
/// <param name="FedSinceKilograms">Fed since, or in all where nothing was found, kg.</param>
/// <param name="LeftKilograms">Left, kg; below 0 where more was fed than found.</param>
/// <param name="PlusMinus">Its ±, k = 2, kg; null where not known.</param>
public sealed record LotStockAnswer(string Lot, double? FoundKilograms, DateTimeOffset? FoundAt, string? How, double FedSinceKilograms, double? LeftKilograms, double? PlusMinus);
