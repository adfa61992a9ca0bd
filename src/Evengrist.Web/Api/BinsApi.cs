using System.ComponentModel;
using Evengrist.Bins;
using Evengrist.Bins.Shape;
using Evengrist.Ledger;
using Evengrist.Plant.Answers;
using Evengrist.Plant.Cases;
using Evengrist.Web.Sights;
using Evengrist.Web.Sights.Bins;
using Evengrist.Web.Sights.Season;
using Evengrist.Web.Sights.Trucks;
using Evengrist.Web.Start;
using NodaTime;

namespace Evengrist.Web.Api;

/// <summary>What lies where, over HTTP.</summary>
public static class BinsApi
{
    /// <summary>Adds the questions about bins.</summary>
    public static void MapBinsApi(this IEndpointRouteBuilder app)
    {
        var bins = app.MapGroup("/api/bins").WithTags("Bins");
        bins.MapGet("", All).WithSummary("Every wheat, temper and flour bin with its stock").Produces<BinAnswer[]>().ProducesProblem(StatusCodes.Status400BadRequest);
        bins.MapGet("{code}/content", Content).WithSummary("What lies in a wheat bin under one hypothesis of outflow, and what comes out next under each")
            .Produces<ContentAnswer>().ProducesProblem(StatusCodes.Status400BadRequest).ProducesProblem(StatusCodes.Status404NotFound);
        bins.MapGet("best", Best).WithSummary("Which bin is best for a recorded truck's load, as things stood when it came").Produces<BestBinAnswer>()
            .ProducesProblem(StatusCodes.Status400BadRequest).ProducesProblem(StatusCodes.Status404NotFound).ProducesProblem(StatusCodes.Status422UnprocessableEntity);
        bins.MapPost("{code}/calibration", (Delegate)KeepCalibrationAsync).WithSummary("Find a bin's pack factor from weigh-outs and keep it as a paper").WithDescription(WeighOutCase.Help.Schema)
            .Accepts<object>("application/json").Produces<WeighOutAnswer>().ProducesProblem(StatusCodes.Status400BadRequest).ProducesProblem(StatusCodes.Status404NotFound).ProducesProblem(StatusCodes.Status422UnprocessableEntity);
        bins.MapPosed<SoundingAnswer>("sound", SoundAsync, SoundingCase.Help, "Tonnes from a posed sounding, with ± and against the ledger, or the level of so many tonnes; needs no records");
        bins.MapPosed<BestBinAnswer>("best", BestAsync, BestBinCase.Help, "Which posed bin is best for a posed load, and why the others cannot take it; needs no records");
        bins.MapPosed<WeighOutAnswer>("calibrate", CalibrateAsync, WeighOutCase.Help, "The pack factor of a posed bin from weighing it out; needs no records");
    }

    private static IResult Best(MillDoor door, YearDesk desk, IClock clock, [Description("Ticket of the truck; demanded.")] string? ticket, [Description(ApiMoment.Says)] string? asof)
    {
        var mill = door.Mill!;
        if (string.IsNullOrWhiteSpace(ticket))
        {
            return Results.Problem("Say whose load it is: ?ticket= and the truck's ticket. A load that is not recorded is posed with POST.", statusCode: StatusCodes.Status400BadRequest, title: "No ticket is named");
        }

        if (ApiMoment.Read(asof, mill.Settings, clock) is not { } at)
        {
            return ApiMoment.Bad(asof);
        }

        var (shelf, terms, settings) = (BinShelf.Of(mill), Terms.Of(mill), mill.Settings);
        return mill.Ask(view =>
        {
            if (view.Book.Find(ticket) is not { Kind: PlaceKind.Truck } place || new TruckSighting(view.Book, at, terms, settings).Look(place) is not { } truck)
            {
                return Results.Problem($"There is no ticket \"{ticket}\" by then.", statusCode: StatusCodes.Status404NotFound, title: "No such ticket");
            }

            var (load, remarks) = BestBinSight.LoadOf(place.Material, truck.Net, LoadQuality.Of(view.Book, place.Id, at));
            return load is null ? Results.Problem(string.Join(" ", remarks), statusCode: StatusCodes.Status422UnprocessableEntity, title: "Nothing to rank by")
                : Posed.Result(BestBinAnswer.Of(BestBinSight.Of(view, shelf, load, truck.Bin is null ? at : truck.At, remarks, desk.WorthOf(mill, load, truck.Bin is null ? at : truck.At)).Outcome));
        });
    }

    private static async Task<IResult> KeepCalibrationAsync(HttpContext context, MillDoor door, string code, [Description("Who keeps it; demanded.")] string? by)
    {
        var mill = door.Mill!;
        if (string.IsNullOrWhiteSpace(by))
        {
            return Results.Problem("Say who keeps it: ?by=name.", statusCode: StatusCodes.Status400BadRequest, title: "Nobody is named");
        }

        if (mill.Ask(view => view.Book.Find(code) is { Kind: PlaceKind.Bin } place ? place.Code : null) is not { } bin)
        {
            return Results.Problem($"There is no wheat bin with the code \"{code}\". /api/bins lists all bins.", statusCode: StatusCodes.Status404NotFound, title: "No such bin");
        }

        return await Posed.ReplyAsync(context, WeighOutCase.Read, posed =>
        {
            if (PackFactorModel.Of(posed.Shape, posed.WeighOuts) is PackFactorFound found)
            {
                mill.Papers(BinPapers.Calibration).KeepNext(bin, BinPapers.Write(found.Factor), by);
            }

            return WeighOutAnswer.To(posed);
        });
    }

    private static Task<IResult> SoundAsync(HttpContext context) => Posed.ReplyAsync(context, SoundingCase.Read, SoundingAnswer.To);

    private static Task<IResult> BestAsync(HttpContext context) => Posed.ReplyAsync(context, BestBinCase.Read, BestBinAnswer.To);

    private static Task<IResult> CalibrateAsync(HttpContext context) => Posed.ReplyAsync(context, WeighOutCase.Read, WeighOutAnswer.To);

    private static IResult All(MillDoor door, IClock clock, [Description(ApiMoment.Says)] string? asof)
    {
        var mill = door.Mill!;
        return ApiMoment.Read(asof, mill.Settings, clock) is not { } at ? ApiMoment.Bad(asof) : Results.Ok(mill.Ask(view =>
        {
            var sighting = new BinSighting(view, at);
            return view.Book.Places.Where(p => p.Kind is PlaceKind.Bin or PlaceKind.TemperBin or PlaceKind.FlourBin).Select(p => BinAnswer.Of(sighting.Glance(p), at)).ToArray();
        }));
    }

    private static IResult Content(
        MillDoor door, IClock clock, [Description("Code of a wheat bin.")] string code,
        [Description("How grain is supposed to leave: fifo, core or stirred; fifo when left out.")] string? outflow, [Description(ApiMoment.Says)] string? asof)
    {
        var mill = door.Mill!;
        if (ApiMoment.Read(asof, mill.Settings, clock) is not { } at)
        {
            return ApiMoment.Bad(asof);
        }

        if (OutflowWords.Read(outflow ?? Outflow.FirstInFirstOut.Code()) is not { } chosen)
        {
            return Results.Problem($"\"{outflow}\" is no hypothesis. Say fifo, core or stirred.", statusCode: StatusCodes.Status400BadRequest, title: "outflow is no hypothesis");
        }

        mill.Warm();
        var content = mill.Ask(view => view.Book.Find(code) is { Kind: PlaceKind.Bin } place ? ContentAnswer.Of(new BinSighting(view, at).Look(place, chosen), chosen.Code(), at) : null);
        return content is null
            ? Results.Problem($"There is no wheat bin with the code \"{code}\". /api/bins lists all bins.", statusCode: StatusCodes.Status404NotFound, title: "No such bin")
            : Results.Ok(content);
    }
}
