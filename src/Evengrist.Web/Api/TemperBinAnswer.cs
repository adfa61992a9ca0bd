using Evengrist.Tempering;
using Evengrist.Web.Sights.Tempering;

namespace Evengrist.Web.Api;

/// <summary>What lies in a temper bin, how it has rested, and what to expect at first break. Advice: it opens no valve.</summary>
/// <param name="Bin">Its code.</param>
/// <param name="Tonnes">What lies there with its water, t.</param>
/// <param name="NextHardness">How hard most of the wheat that leaves next is, in words.</param>
/// <param name="NewestHardness">How hard most of the wheat that ran in last is.</param>
/// <param name="FirstIn">When the oldest by first in first out went in; null where nothing lies there.</param>
/// <param name="LastIn">When the newest went in.</param>
/// <param name="MixedUntil">When the newest of what is mixed at the outlet went in; null without a stirred stage.</param>
/// <param name="RestHours">Rest wanted of what leaves next, by the longer law, h; null where no hardness is kept for its class.</param>
/// <param name="RestHoursSoaking">By the soaking law, h.</param>
/// <param name="RestHoursDrying">By the drying law, h.</param>
/// <param name="FirstReady">When the first wheat is ready.</param>
/// <param name="LastReady">When the last is.</param>
/// <param name="ShortOfRestHours">By how much what leaves is short of its rest, h; null where it is not, or nothing leaves.</param>
/// <param name="TonnesPerHourIn">What runs in, t/h.</param>
/// <param name="TonnesPerHourOut">What runs out, t/h.</param>
/// <param name="WaterLitresPerHour">Water let in now, by the ledger, L/h at 1 kg to the litre.</param>
/// <param name="WaterAskedLitresPerHour">Water the balance asks of it; null where it cannot be said.</param>
/// <param name="NewestAimPercent">Aim at first break of what ran in last, per cent wet basis; null where no hardness is kept for its class.</param>
/// <param name="NextAimPercent">The same of what leaves next.</param>
/// <param name="NextPercent">Moisture to expect at first break of what leaves next, per cent wet basis; null where no moisture was read.</param>
/// <param name="NextPlusMinus">Its ±, k = 2, points.</param>
public sealed record TemperBinAnswer(
    string Bin, decimal Tonnes, string NextHardness, string NewestHardness, DateTimeOffset? FirstIn, DateTimeOffset? LastIn, DateTimeOffset? MixedUntil, double? RestHours, double? RestHoursSoaking, double? RestHoursDrying, DateTimeOffset? FirstReady, DateTimeOffset? LastReady,
    double? ShortOfRestHours, double TonnesPerHourIn, double TonnesPerHourOut, double WaterLitresPerHour, double? WaterAskedLitresPerHour, double? NewestAimPercent, double? NextAimPercent, double? NextPercent, double? NextPlusMinus)
{
    internal static TemperBinAnswer Of(TemperBinSight bin)
    {
        var next = bin.Next.AtFirstBreak;
        return new TemperBinAnswer(
            bin.Place.Code, bin.Queue.Stock.Tonnes, bin.Next.Hardness.Words(), bin.Newest.Hardness.Words(), bin.Queue.FirstIn?.ToDateTimeOffset(), bin.Queue.LastIn?.ToDateTimeOffset(), bin.Queue.MixedUntil?.ToDateTimeOffset(), bin.Next.Rest?.LongerHours, bin.Next.Rest?.SoakingHours, bin.Next.Rest?.DryingHours,
            bin.Window?.FirstReady.ToDateTimeOffset(), bin.Window?.LastReady.ToDateTimeOffset(), bin.Short?.TotalHours, bin.Queue.TonnesPerHourIn, bin.Queue.TonnesPerHourOut, bin.SeenLitresPerHour, bin.AskedLitresPerHour, bin.Newest.Advice?.Percent, bin.Next.Advice?.Percent,
            next?.Percent, 2 * next?.StandardUncertainty);
    }
}
