using System.CommandLine;
using Evengrist.Cli.Said;
using Evengrist.Plant.Answers;
using Evengrist.Plant.Cases;
using static Evengrist.Cli.Said.Amounts;

namespace Evengrist.Cli.Rooms;

/// <summary>Many mills beside each other.</summary>
internal static class LabMillsVerb
{
    public static Command Of(Voice voice)
    {
        var command = new Command("mills", "Mills beside each other on one property: capability as reported and of the flour, each laboratory's bias by ring tests, the worst first. Decides nothing, needs no records.");
        return PosedVerb.Of<LabMillsCase, LabMillsAnswer>(command, voice, LabMillsCase.Help, LabMillsCase.Read, LabMillsAnswer.To, answer => Say(answer, voice));
    }

    private static void Say(LabMillsAnswer answer, Voice voice)
    {
        var table = new TextTable("mill", "mean", "±", "Cpk", "95 %", "% out", "laboratory off", "±", "flour's Cpk", "95 %", "% out", "remark");
        foreach (var mill in answer.Mills)
        {
            table.Add(
                mill.Mill, Number(mill.Mean, 3), Number(mill.Deviation, 3), Number(mill.Cpk, 2), Span(mill.CpkFrom, mill.CpkTo), Number(mill.PercentOut, 1), mill.LaboratoryBias is { } bias ? Signed(bias, 3) : "", Number(mill.LaboratoryBiasDeviation, 3),
                Number(mill.FlourCpk, 2), Span(mill.FlourCpkFrom, mill.FlourCpkTo), Number(mill.FlourPercentOut, 1), mill.Remark);
        }

        table.To(voice);
        foreach (var method in answer.Methods)
        {
            voice.Say($"sample {method.Sample}, {method.Laboratories} laboratories: s_r {Number(method.Repeatability, 4)}, s_R {Number(method.Reproducibility, 4)}{(method.Cochran > method.CochranLimit ? "; one laboratory reads much wider than the others (Cochran)" : "")}");
        }
    }

    private static string Span(double? from, double? to) => from is null ? "" : $"{Number(from, 2)} to {Number(to, 2)}";
}
