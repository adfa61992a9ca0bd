using System.CommandLine;
using Evengrist.Cli.Said;
using Evengrist.Plant.Answers;
using Evengrist.Plant.Cases;
using static Evengrist.Cli.Said.Amounts;

namespace Evengrist.Cli.Rooms;

/// <summary>When what was changed at a gate arrives.</summary>
internal static class ClockVerb
{
    public static Command Of(Voice voice)
    {
        var command = new Command("clock", "When what was changed arrives at the end of each stage of a posed way, and a dead time and stirred time from posed readings about a change. Needs no records.");
        return PosedVerb.Of<ClockCase, ClockAnswer>(command, voice, ClockCase.Help, ClockCase.Read, ClockAnswer.To, answer => Say(answer, voice));
    }

    private static void Say(ClockAnswer answer, Voice voice)
    {
        if (answer.Stages.Count > 0)
        {
            voice.Say("hours of running since the change, ± k = 2");
            var table = new TextTable(["at the end of", .. answer.Stages[0].Arrivals.SelectMany(a => new[] { $"{Number(100 * a.Share, 0)} % new", "±" })]);
            foreach (var stage in answer.Stages)
            {
                table.Add([stage.Name, .. stage.Arrivals.SelectMany(a => new[] { Number(a.Hours, 2), Number(a.PlusMinus, 2) })]);
            }

            table.To(voice);
        }

        if (answer.Readings is { } step)
        {
            voice.Say($"by {step.Count} readings: dead time {Number(step.DelayHours, 2)} ± {Number(step.DelayPlusMinus, 2)} h, stirred "
                + (step.IsSharp ? $"too little to tell, {Number(step.StirredHours + step.StirredPlusMinus, 2)} h at most" : $"{Number(step.StirredHours, 2)} ± {Number(step.StirredPlusMinus, 2)} h") + $"; from {Number(step.Before, 3)} to {Number(step.After, 3)}");
        }

        voice.Say(answer.Remarks);
    }
}
