using Evengrist.Plant.Answers;
using Evengrist.Plant.Cases;

namespace Evengrist.Web.Api;

/// <summary>The laboratory over HTTP.</summary>
public static class LabApi
{
    /// <summary>Adds the questions about results.</summary>
    public static void MapLabApi(this IEndpointRouteBuilder app)
    {
        var lab = app.MapGroup("/api/lab").WithTags("Laboratory");
        lab.MapPosed<LabChartAnswer>("chart", ChartAsync, LabChartCase.Help, "Control chart of posed values: limits from a stated period, what signals, moving means, cumulative sums, capability; releases nothing, needs no records");
        lab.MapPosed<LabConformAnswer>("conform", ConformAsync, LabConformCase.Help, "Chance that a lot is inside its limits by posed results, guard band, chance that the customer's laboratory finds it outside, risks over all lots; releases nothing, needs no records");
        lab.MapLabCharts();
        lab.MapLabTables();
        lab.MapLabBench();
        lab.MapLabBake();
        lab.MapLabWatch();
        lab.MapLabPls();
        lab.MapLabCalibrations();
        lab.MapFlourLots();
        lab.MapCertificates();
        lab.MapLabPlan();
    }

    private static Task<IResult> ChartAsync(HttpContext context) => Posed.ReplyAsync(context, LabChartCase.Read, LabChartAnswer.To);

    private static Task<IResult> ConformAsync(HttpContext context) => Posed.ReplyAsync(context, LabConformCase.Read, LabConformAnswer.To);
}
