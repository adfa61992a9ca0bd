using Evengrist.Plant;
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
        milling.MapPosed<FlowSheetAnswer>("sheet", SheetAsync, FlowSheetCase.Help, "Checks a flow sheet and adds up what it has: passages, roll length, cloth, loops; keeps nothing, needs no records");
        milling.MapPosed<MillBalanceAnswer>("balance", BalanceAsync, BalanceCase.Help, "Extraction on every basis, what is unexplained, where it lies, and which weigher does not fit, of a posed day or month; needs no records");
    }

    private static Task<IResult> SheetAsync(HttpContext context) => Posed.AnswerAsync(context, FlowSheetCase.Read, s => Parsing.Got(FlowSheetAnswer.Of(s)));

    private static Task<IResult> BalanceAsync(HttpContext context) => Posed.ReplyAsync(context, BalanceCase.Read, MillBalanceAnswer.To);
}
