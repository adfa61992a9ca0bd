using System.ComponentModel;
using Evengrist.Web.Sights;
using Evengrist.Web.Start;
using NodaTime;

namespace Evengrist.Web.Api;

/// <summary>Facts and the balance, over HTTP.</summary>
public static class LedgerApi
{
    /// <summary>Adds the questions about the ledger.</summary>
    public static void MapLedgerApi(this IEndpointRouteBuilder app)
    {
        var ledger = app.MapGroup("/api/ledger").WithTags("Ledger");
        ledger.MapGet("facts", Facts).WithSummary("Facts with who recorded them, newest first, a page at a time")
            .Produces<FactsAnswer>().ProducesProblem(StatusCodes.Status400BadRequest);
        ledger.MapGet("balance", Balance).WithSummary("In, out and stock of every kind of place; the sum over all places is zero")
            .Produces<BalanceAnswer>().ProducesProblem(StatusCodes.Status400BadRequest);
    }

    private static IResult Facts(
        MillDoor door, [Description("Code of a place.")] string? place, [Description("place, connection, movement, reading or happening.")] string? sort,
        [Description("Recorded by.")] string? by, [Description("Words in it.")] string? text,
        [Description("Number of a fact: those recorded before it.")] long? before, [Description("How many, 1 to 1000; 50 when left out.")] int? size)
    {
        if (new LedgerFilter(place, sort, by, text, null, before) is var filter && sort is not null && filter.SortRead is null)
        {
            return Results.Problem($"\"{sort}\" is no sort of fact. Say place, connection, movement, reading or happening.", statusCode: StatusCodes.Status400BadRequest, title: "sort is no sort of fact");
        }

        var page = door.Mill!.Facts(filter.ToQuestion(size ?? 50));
        return Results.Ok(FactsAnswer.Of(FactSight.Of(door.Mill!, page.Lines, Quantities.UnitSystem.Si), page));
    }

    private static IResult Balance(MillDoor door, IClock clock, [Description(ApiMoment.Says)] string? asof)
    {
        var mill = door.Mill!;
        return ApiMoment.Read(asof, mill.Settings, clock) is { } at
            ? Results.Ok(BalanceAnswer.Of(mill.Ask(view => BalanceSight.Of(view.Book, at)), at))
            : ApiMoment.Bad(asof);
    }
}
