using Evengrist.Plant.Answers;
using Evengrist.Plant.Cases;

namespace Evengrist.Web.Api;

/// <summary>Acceptance sampling over HTTP.</summary>
internal static class LabPlanApi
{
    public static void MapLabPlan(this RouteGroupBuilder lab) => lab.MapPosed<LabPlanAnswer>("plan", PlanAsync, LabPlanCase.Help, "Acceptance sampling of posed questions: operating curves, plans, what a test finds; releases nothing, needs no records");

    private static Task<IResult> PlanAsync(HttpContext context) => Posed.ReplyAsync(context, LabPlanCase.Read, LabPlanAnswer.To);
}
