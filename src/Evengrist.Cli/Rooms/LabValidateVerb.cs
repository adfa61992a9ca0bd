using System.CommandLine;
using Evengrist.Cli.Said;
using Evengrist.Plant.Answers;
using Evengrist.Plant.Cases;
using static Evengrist.Cli.Said.Amounts;

namespace Evengrist.Cli.Rooms;

/// <summary>How an instrument agrees with the reference, and what to set.</summary>
internal static class LabValidateVerb
{
    public static Command Of(Voice voice)
    {
        var command = new Command("validate", "Bias, slope and error of an instrument against reference results of the same samples, each with its test, and what to set. Sets nothing, needs no records.");
        return PosedVerb.Of<LabValidateCase, LabValidateAnswer>(command, voice, LabValidateCase.Help, LabValidateCase.Read, LabValidateAnswer.To, answer => Say(answer, voice));
    }

    internal static void Say(LabValidateAnswer answer, Voice voice)
    {
        var found = answer.Found;
        voice.Say($"{found.Count} samples; reference less instrument: bias {Signed(found.Bias, 4)} ({(found.IsBiased ? "more than" : "within")} chance, {Number(found.BiasLimit, 4)}), RMSEP {Number(found.Rmsep, 4)}, SEP {Number(found.Sep, 4)}{(found.SepLimit is { } most ? $" (at most {Number(most, 4)})" : "")}");
        voice.Say($"slope {Number(found.Slope, 4)}, intercept {Number(found.Intercept, 4)}: t {Number(found.SlopeT, 3)} {(found.IsSloped ? "above" : "within")} {Number(found.SlopeLimit, 3)}; RPD {Number(found.Rpd, 2)}, range over SEP {Number(found.Rer, 1)} (guides only)");
        voice.Say($"advice: {answer.Decision}. A named person decides.");
        voice.Say(found.Remarks);
    }
}
