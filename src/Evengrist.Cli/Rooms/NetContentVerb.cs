using System.CommandLine;
using Evengrist.Cli.Said;
using Evengrist.Plant.Answers;
using Evengrist.Plant.Cases;
using static Evengrist.Cli.Said.Amounts;

namespace Evengrist.Cli.Rooms;

/// <summary>Net weights against their label.</summary>
internal static class NetContentVerb
{
    public static Command Of(Voice voice)
    {
        var command = new Command("netcontent", "Net weights of a sample against the label by the rules of the United States or the European Union, and the fill that keeps them. Releases nothing, needs no records.");
        return PosedVerb.Of<NetContentCase, NetContentAnswer>(command, voice, NetContentCase.Help, NetContentCase.Read, NetContentAnswer.To, answer => Say(answer, voice));
    }

    private static void Say(NetContentAnswer answer, Voice voice)
    {
        if (answer.American is { } us)
        {
            voice.Say($"{Number(us.Plan.Size, 0)} weighed: mean error {Number(us.MeanError, 4)} {answer.Unit}, standard deviation {Number(us.Deviation, 4)}, error limit {Number(us.ErrorLimit, 4)} (factor {Number(us.Plan.Factor, 3)})");
            voice.Say($"average: {us.Average}; short by more than {Number(us.Variation, 4)} {answer.Unit}: {Number(us.Short, 0)} of up to {Number(us.Plan.Allowed, 0)} allowed; the lot {(us.Passes ? "passes" : "does not pass")}");
        }

        if (answer.European is { } eu)
        {
            voice.Say($"mean {Number(eu.Mean, 4)} {answer.Unit}, standard deviation {Number(eu.Deviation, 4)}; at least {Number(eu.LeastMean, 4)} is asked: {(eu.IsMeanEnough ? "reached" : "not reached")}");
            voice.Say($"below T1 ({Number(eu.First, 4)} {answer.Unit}): {Number(eu.Inadequate, 0)}, {eu.Count}; below T2 ({Number(eu.Second, 4)} {answer.Unit}): {Number(eu.BelowSecond, 0)}; the batch {(eu.Passes ? "passes" : "does not pass")}");
        }

        if (answer.Fill is { } fill)
        {
            voice.Say($"fill to aim at: {Number(fill.ToAim, 4)} {answer.Unit} with a standard deviation of {Number(fill.Deviation, 4)}, {Number(fill.Giveaway, 4)} {answer.Unit} or {Number(fill.GiveawayPercent, 3)} % above the label (the average asks for {Number(fill.ByAverage, 4)}, each package for {Number(fill.ByEach, 4)}, when sold)");
        }

        voice.Say(answer.Remarks);
    }
}
