using System.CommandLine;
using Evengrist.Cli.Said;
using Evengrist.Plant.Answers;
using Evengrist.Plant.Cases;
using static Evengrist.Cli.Said.Amounts;

namespace Evengrist.Cli.Rooms;

/// <summary>The balance of a mill over a span.</summary>
internal static class MillBalanceVerb
{
    public static Command Of(Voice voice)
    {
        var command = new Command("balance", "Extraction on every basis, what is unexplained and where it lies, and which weigher does not fit, of a posed day or month. Needs no records.");
        return PosedVerb.Of<BalanceCase, MillBalanceAnswer>(command, voice, BalanceCase.Help, BalanceCase.Read, MillBalanceAnswer.To, answer => Say(answer, voice));
    }

    private static void Say(MillBalanceAnswer answer, Voice voice)
    {
        voice.Say($"to first break {Number(answer.FirstBreakTonnes, 1)} t");
        var table = new TextTable("flour for a hundred of", "weighed %", "±", "reconciled %", "±");
        foreach (var e in answer.Extractions)
        {
            table.Add(e.Basis, Number(e.Percent, 2), Number(e.PlusMinus, 2), Number(e.ReconciledPercent, 2), Number(e.ReconciledPlusMinus, 2));
        }

        table.To(voice);
        voice.Say($"wheat before cleaning for flour {Number(answer.BushelsPerHundredweight, 2)} bu/cwt");
        voice.Say($"evaporation + unweighed {Number(answer.UnexplainedTonnes, 1)} ± {Number(answer.UnexplainedPlusMinus, 1)} t, {Number(answer.UnexplainedPercent, 1)} %: {(answer.IsUsual ? "usual" : "NOT usual")} ({answer.UsualBand})");
        var losses = new TextTable("of that", "t", "±");
        foreach (var loss in answer.Losses)
        {
            losses.Add(loss.Name, Number(loss.Tonnes, 2), Number(loss.PlusMinus, 2));
        }

        losses.To(voice);
        if (answer.DryClosurePercent is { } closure)
        {
            voice.Say($"dry matter out of a hundred in {Number(closure, 2)}");
        }

        if (answer.KilowattHoursPerTonneFlour is { } energy)
        {
            voice.Say($"electricity {Number(energy, 1)} kWh/t of flour, {Number(answer.KilowattHoursPerTonneWheat, 1)} kWh/t of wheat before cleaning");
        }

        if (answer.Check is { Freedom: > 0 } check)
        {
            voice.Say($"misfit {Number(check.Squares, 2)} of at most {Number(check.Critical, 2)} with {check.Freedom} checks");
        }

        voice.Say(answer.Remarks);
    }
}
