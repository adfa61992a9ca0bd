using System.CommandLine;
using Evengrist.Cli.Said;
using Evengrist.Plant.Answers;
using Evengrist.Plant.Cases;
using static Evengrist.Cli.Said.Amounts;

namespace Evengrist.Cli.Rooms;

/// <summary>Streams and weighers against one another.</summary>
internal static class ReconcileVerb
{
    public static Command Of(Voice voice)
    {
        var command = new Command("reconcile", "Adjusts measured streams and shares so that every place balances, finds what was not measured, and names the measurement that does not fit. Needs no records.");
        return PosedVerb.Of<FlowNetCase, FlowNetAnswer>(command, voice, FlowNetCase.Help, FlowNetCase.Read, FlowNetAnswer.To, answer => Say(answer, voice));
    }

    private static void Say(FlowNetAnswer answer, Voice voice)
    {
        var check = answer.Check;
        voice.Say(answer.Fits switch
        {
            true => $"the measurements go together: misfit {Number(check.Squares, 2)} of at most {Number(check.Critical, 2)} with {check.Freedom} checks",
            false => $"the measurements do NOT go together: misfit {Number(check.Squares, 2)}, at most {Number(check.Critical, 2)} with {check.Freedom} checks is believed",
            null => "nothing checks the measurements against one another",
        });
        foreach (var suspect in check.Suspects)
        {
            voice.Say($"look first at {suspect.Name}: z = {Number(suspect.Z, 1)}{(suspect.Bias is { } bias ? $", off by {Number(bias, 4)} ± {Number(suspect.BiasPlusMinus, 4)} if it is the one" : "")}{(suspect.Alike.Count > 0 ? $"; nothing tells it from {string.Join(", ", suspect.Alike)}" : "")}");
        }

        var table = new TextTable("what", "measured", "reconciled", "± (k = 2)", "z", "standing");
        foreach (var value in answer.Rest.Count > 0 ? answer.Rest : check.Values)
        {
            table.Add(value.Name, Number(value.Measured, 4), Number(value.Reconciled, 4), Number(value.PlusMinus, 4), Number(value.Z, 2), value.Standing);
        }

        table.To(voice);
        if (answer.Rest.Count > 0)
        {
            voice.Say("the table is without what was named");
        }
    }
}
