using Evengrist.Planning.Season;
using Evengrist.Planning.Season.Bands;
using Evengrist.Planning.Season.Lots;
using Evengrist.Plant.Answers;
using Evengrist.Plant.Cases;
using Evengrist.Season.ChangeOver;

namespace Evengrist.Web.Api;

/// <summary>The crop year over HTTP: posed, without records.</summary>
internal static class SeasonApi
{
    public static void MapSeason(this IEndpointRouteBuilder api)
    {
        var season = api.MapGroup("/api/season").WithTags("Season");
        season.MapPosed<SeasonAnswer>("plan", PlanAsync, SeasonCase.Help, "Plan a posed crop year; needs no records");
        season.MapPosed<SeasonValueAnswer>("value", ValueAsync, SeasonValueCase.Help, "What a wheat is worth to a posed crop year; needs no records");
        season.MapPosed<SeasonPromiseAnswer>("promise", PromiseAsync, SeasonPromiseCase.Help, "Through which week each flour of a posed crop year is on target, and how surely; needs no records");
        season.MapPosed<SeasonBandsAnswer>("bands", BandsAsync, SeasonBandsCase.Help, "Part a posed harvest into bands; needs no records");
        season.MapPosed<ChangeOverAnswer>("change-over", ChangeOverAsync, ChangeOverCase.Help, "Lay a posed change of crop out; needs no records");
    }

    private static Task<IResult> PromiseAsync(HttpContext context) =>
        Posed.ReplyAsync(context, SeasonPromiseCase.Read, c =>
        {
            var (promise, plan) = SeasonQuestions.Promise(c.Season, c.Of, stop: context.RequestAborted);
            return SeasonPromiseAnswer.Of(promise, plan);
        });

    private static Task<IResult> BandsAsync(HttpContext context) =>
        Posed.ReplyAsync(context, SeasonBandsCase.Read, c => SeasonBandsAnswer.Of(BandRun.Reckon(c.Harvest, c.Season, c.EndValuePerTonne, stop: context.RequestAborted), row => BandBinning.Share(row, c.Bins)));

    private static Task<IResult> ChangeOverAsync(HttpContext context) => Posed.ReplyAsync(context, ChangeOverCase.Read, c => ChangeOverAnswer.Of(ChangeOverModel.Lay(c.Change), c));

    private static Task<IResult> PlanAsync(HttpContext context) =>
        Posed.ReplyAsync(context, SeasonCase.Read, c => SeasonAnswer.Of(SeasonQuestions.Plan(c.Season, c.Millable, c.GapPercent, c.Seconds, context.RequestAborted)));

    private static Task<IResult> ValueAsync(HttpContext context) =>
        Posed.ReplyAsync(context, SeasonValueCase.Read, c => SeasonValueAnswer.Of(SeasonPlanner.Linear(c.Season, stop: context.RequestAborted), c.Lot is { } lot ? LotRun.Reckon(lot, c.Season, stop: context.RequestAborted) : null, c));
}
