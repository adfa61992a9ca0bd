using System.CommandLine;
using Evengrist.Cli.Said;
using Evengrist.Plant.Answers;
using Evengrist.Plant.Cases;
using static Evengrist.Cli.Said.Amounts;

namespace Evengrist.Cli.Rooms;

/// <summary>Acceptance sampling of posed questions.</summary>
internal static class LabPlanVerb
{
    public static Command Of(Voice voice)
    {
        var command = new Command("plan", "Acceptance sampling: operating curves, plans for two points or of a table, by attributes, by variables, one by one, with three classes, and what a test finds. Releases nothing, needs no records.");
        return PosedVerb.Of<LabPlanCase, LabPlanAnswer>(command, voice, LabPlanCase.Help, LabPlanCase.Read, LabPlanAnswer.To, answer => Say(answer, voice));
    }

    private static void Say(LabPlanAnswer answer, Voice voice)
    {
        if (answer.Curve is { } curve)
        {
            var table = new TextTable("bad %", "accepted %", "goes out %", "looked at");
            foreach (var point in curve)
            {
                table.Add(Number(100 * point.Share, 2), Number(100 * point.Accepted, 2), Number(100 * point.Outgoing, 3), Number(point.Inspected, 0));
            }

            table.To(voice);
        }

        if (answer.Designs is { } d)
        {
            voice.Say(d.Attributes is { } a ? $"by attributes: look at {Number(a.Size, 0)}, accept with up to {Number(a.Accept, 0)} bad" : "by attributes: no plan of a size that can be; put the points further apart");
            voice.Say($"by variables: {Number(d.SigmaKnown.Size, 0)} with a known standard deviation, {Number(d.SigmaUnknown.Size, 0)} with that of the sample; accept where the limit lies {Number(d.SigmaKnown.Factor, 4)} standard deviations from the mean or more");
            voice.Say($"one by one: accept at up to {Number(d.Sequential.Slope, 5)} n − {Number(d.Sequential.AcceptOffset, 4)} bad, reject from {Number(d.Sequential.Slope, 5)} n + {Number(d.Sequential.RejectOffset, 4)}; at the soonest {Number(d.Sequential.FewestToAccept, 0)} good in a row accept");
        }

        if (answer.Table is { } plan)
        {
            voice.Say($"letter {plan.Letter}, {plan.Severity}: {(plan.Size is null ? "no lot is accepted by sampling" : $"look at {Number(plan.Size, 0)}, accept with up to {Number(plan.Accept, 0)} bad, reject from {Number(plan.Reject, 0)}")}");
        }

        if (answer.Variables is { } v)
        {
            voice.Say($"by variables: measure {Number(v.Size, 0)}, accept where the limit lies {Number(v.Factor, 2)} of their standard deviations from the mean or more");
        }

        if (answer.ThreeClassChance is { } chance)
        {
            voice.Say($"three classes: accepted with {Number(100 * chance, 2)} %");
        }

        if (answer.Found is { } f)
        {
            voice.Say(
            [
                .. f.Units is null ? Array.Empty<string>() : [$"{Number(f.Units, 0)} units so that a bad one is among them"],
                .. f.Found is null ? Array.Empty<string>() : [$"the portions hold a cell with {Number(100 * f.Found, 2)} %"],
                .. f.PerGramFound is null ? Array.Empty<string>() : [$"what is found with the asked chance: {Number(f.PerGramFound, 5)} cells to a gram"],
                .. f.LeastMean is null ? Array.Empty<string>() : [$"the mean count lies from {Number(f.LeastMean, 2)} to {Number(f.MostMean, 2)}, 95 %"],
            ]);
        }

        voice.Say(answer.Remarks);
    }
}
