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
        ledger.MapGet("balance", Balance).WithSummary("In, out and stock of every kind of place; the sum over all places is zero")
            .Produces<BalanceAnswer>().ProducesProblem(StatusCodes.Status400BadRequest);
    }

    private static IResult Balance(MillDoor door, IClock clock, [Description(ApiMoment.Says)] string? asof)
    {
        var mill = door.Mill!;
        return ApiMoment.Read(asof, mill.Settings, clock) is { } at
            ? Results.Ok(BalanceAnswer.Of(mill.Ask(view => BalanceSight.Of(view.Book, at)), at))
            : ApiMoment.Bad(asof);
    }
}
