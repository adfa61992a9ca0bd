using Evengrist.Planning.Milling;
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
        milling.MapMillTests();
        milling.MapPosed<MillSolveAnswer>("solve", SolveAsync, MillSolveCase.Help, "Every passage and stream of a posed mill ±, tuned to its tests where there are some, and what settings tried on paper would change; mills drawn and solved whole where samples are asked for; needs no records");
        milling.MapPosed<MillFitAnswer>("fit", FitAsync, MillSolveCase.Help, "What the posed tests of a mill say of it: factors on the model ±, measured figures beside the model's; needs no records");
        milling.MapPosed<MillDriftAnswer>("drift", DriftAsync, MillSolveCase.Help, "What drifted in a posed mill by its dated tests: wear, rolls moved, torn cloths, chokes, wet feed; what it costs a day, what to measure next; needs no records");
        milling.MapPosed<MillSuggestAnswer>("suggest", SuggestAsync, MillSolveCase.Help, "The best small sets of moves of gaps, air, cloths and flow for a wish to a posed mill, each with its change ± and the chance to get it; needs no records");
        milling.MapPosed<MillBalanceAnswer>("balance", BalanceAsync, BalanceCase.Help, "Extraction on every basis, what is unexplained, where it lies, and which weigher does not fit, of a posed day or month; needs no records");
        milling.MapPosed<FlowNetAnswer>("reconcile", ReconcileAsync, FlowNetCase.Help, "Adjusts measured streams and shares so that every place balances, finds what was not measured, and names what does not fit; needs no records");
        milling.MapPosed<ClockAnswer>("clock", ClockAsync, ClockCase.Help, "When what was changed arrives at the end of each stage of a posed way, and a dead time and stirred time from posed readings about a change; needs no records");
    }

    private static Task<IResult> SolveAsync(HttpContext context) => Posed.ReplyAsync(context, MillSolveCase.Read, posed => MillSolveAnswer.To(posed, spec => DrawRun.Draw(spec, stop: context.RequestAborted)));

    private static Task<IResult> FitAsync(HttpContext context) => Posed.ReplyAsync(context, MillSolveCase.Read, MillFitAnswer.To);

    private static Task<IResult> DriftAsync(HttpContext context) => Posed.ReplyAsync(context, MillSolveCase.Read, MillDriftAnswer.To);

    private static Task<IResult> SuggestAsync(HttpContext context) => Posed.ReplyAsync(context, MillSolveCase.Read, posed => MillSuggestAnswer.To(posed, spec => SuggestSolver.Solve(spec, context.RequestAborted)));

    private static Task<IResult> BalanceAsync(HttpContext context) => Posed.ReplyAsync(context, BalanceCase.Read, MillBalanceAnswer.To);

    private static Task<IResult> ClockAsync(HttpContext context) => Posed.ReplyAsync(context, ClockCase.Read, ClockAnswer.To);

    private static Task<IResult> ReconcileAsync(HttpContext context) => Posed.ReplyAsync(context, FlowNetCase.Read, FlowNetAnswer.To);
}
