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
    }

    private static Task<IResult> BalanceAsync(HttpContext context) => Posed.ReplyAsync(context, BalanceCase.Read, MillBalanceAnswer.To);
}
