using System.CommandLine;
using Evengrist.Cli.Said;
using Evengrist.Plant.Answers;
using Evengrist.Plant.Cases;
using static Evengrist.Cli.Said.Amounts;

namespace Evengrist.Cli.Rooms;

/// <summary>Whether the meter moved or the wheat.</summary>
internal static class LabWatchVerb
{
    public static Command Of(Voice voice)
    {
        var command = new Command("watch", "Meter or wheat: whether the instrument moved, the flour, both or nothing, by posed pairs of reference and instrument; start, size ± and how many pairs more. Sets no bias, needs no records.");
        return PosedVerb.Of<LabWatchCase, LabWatchAnswer>(command, voice, LabWatchCase.Help, LabWatchCase.Read, LabWatchAnswer.To, answer => Say(answer, voice));
    }

    private static void Say(LabWatchAnswer answer, Voice voice)
    {
        voice.Say(answer switch
        {
            { Sure: true, StartedAfter: { } after } => $"verdict: {answer.Verdict}, started between pairs {after} and {after + 1} (stands since pair {answer.Since})",
            { Sure: true } => $"verdict: {answer.Verdict}",
            _ => $"{answer.Verdict}{(answer.More is { } more ? $", take {more} more" : "")}",
        });
        var table = new TextTable("what", "probability", "started after pair", "how surely", "size", "±");
        foreach (var rival in answer.Rivals)
        {
            table.Add(rival.What, Number(rival.Probability, 4), Number(rival.After, 0), Number(rival.StartProbability, 2), rival.Size is { } size ? Signed(size, 3) : "", Number(rival.SizeDeviation, 3));
        }

        table.To(voice);
        voice.Say(answer.Evidence);
    }
}
