using System.ComponentModel;
using Evengrist.Plant.Answers;
using Evengrist.Plant.Cases;
using Evengrist.Records.Tempering;
using Evengrist.Web.Sights.Tempering;
using Evengrist.Web.Start;
using NodaTime;

namespace Evengrist.Web.Api;

/// <summary>Tempering over HTTP.</summary>
public static class TemperingApi
{
    /// <summary>Adds the questions about tempering.</summary>
    public static void MapTemperingApi(this IEndpointRouteBuilder app)
    {
        var tempering = app.MapGroup("/api/tempering").WithTags("Tempering");
        tempering.MapPosed<TemperWaterAnswer>("water", WaterAsync, TemperWaterCase.Help, "Water by balance in stages, litres an hour, moisture to expect at first break, and the rest by both diffusion laws; opens no valve, needs no records");
        tempering.MapGet("bins", Bins).WithSummary("Every temper bin: first and last wheat, when it is ready, water let in against the balance, moisture to expect at first break; advice, not tuned to a mill")
            .Produces<TemperBinAnswer[]>().ProducesProblem(StatusCodes.Status400BadRequest);
        tempering.MapTemperLog();
    }

    private static Task<IResult> WaterAsync(HttpContext context) => Posed.ReplyAsync(context, TemperWaterCase.Read, TemperWaterAnswer.To);

    private static IResult Bins(
        MillDoor door, IClock clock, [Description(ApiMoment.Says)] string? asof, [Description("Air in the mill: dry, mild or damp; mild when left out.")] string? season,
        [Description("Temperature of the wheat, °C, 0 to 50; as read in the bin, or 25, when left out.")] string? celsius, [Description("Evaporation to first break, % of the tempered mass, 0 to 5; the mill's own, or 0, when left out.")] string? evaporation)
    {
        var mill = door.Mill!;
        if (ApiMoment.Read(asof, mill.Settings, clock) is not { } at)
        {
            return ApiMoment.Bad(asof);
        }

        var board = TemperBoard.Of(mill, at, KeepTemperAims.Newest(mill).Aims, key => key switch { "season" => season, "celsius" => celsius, _ => evaporation });
        return board.Fields.Faults.Count == 0 ? Results.Ok(board.Bins.Select(TemperBinAnswer.Of).ToArray())
            : Results.Problem(string.Join(" ", board.Fields.Faults), statusCode: StatusCodes.Status400BadRequest, title: "The question cannot be read", extensions: new Dictionary<string, object?> { ["faults"] = board.Fields.Faults });
    }
}
