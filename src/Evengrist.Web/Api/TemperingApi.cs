using Evengrist.Plant.Answers;
using Evengrist.Plant.Cases;

namespace Evengrist.Web.Api;

/// <summary>Tempering over HTTP.</summary>
public static class TemperingApi
{
    /// <summary>Adds the questions about tempering.</summary>
    public static void MapTemperingApi(this IEndpointRouteBuilder app) => app.MapGroup("/api/tempering").WithTags("Tempering")
        .MapPosed<TemperWaterAnswer>("water", WaterAsync, TemperWaterCase.Help, "Water by balance in stages, litres an hour, moisture to expect at first break, and the rest by both diffusion laws; opens no valve, needs no records");

    private static Task<IResult> WaterAsync(HttpContext context) => Posed.ReplyAsync(context, TemperWaterCase.Read, TemperWaterAnswer.To);
}
