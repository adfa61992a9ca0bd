using Evengrist.Plant.Answers;
using Evengrist.Plant.Cases;

namespace Evengrist.Web.Api;

/// <summary>Milling over HTTP.</summary>
public static class MillingApi
{
    /// <summary>Adds the questions about the mill.</summary>
    public static void MapMillingApi(this IEndpointRouteBuilder app)
    {
        var milling = app.MapGroup("/api/milling").WithTags("Milling");
        milling.MapFlowSheets();
        milling.MapPosed<MillBalanceAnswer>("balance", BalanceAsync, BalanceCase.Help, "Extraction on every basis, what is unexplained, where it lies, and which weigher does not fit, of a posed day or month; needs no records");
        milling.MapPosed<ClockAnswer>("clock", ClockAsync, ClockCase.Help, "When what was changed arrives at the end of each stage of a posed way, and a dead time and stirred time from posed readings about a change; needs no records");
    }

    private static Task<IResult> BalanceAsync(HttpContext context) => Posed.ReplyAsync(context, BalanceCase.Read, MillBalanceAnswer.To);

    private static Task<IResult> ClockAsync(HttpContext context) => Posed.ReplyAsync(context, ClockCase.Read, ClockAnswer.To);
}
