using System.CommandLine;
using Evengrist.Cli.Said;
using Evengrist.Plant.Answers;
using Evengrist.Plant.Cases;
using NodaTime;
using static Evengrist.Cli.Said.Amounts;

namespace Evengrist.Cli.Rooms;

/// <summary>The laboratory.</summary>
internal static class LabRoom
{
    public static Command Of(Voice voice, IClock clock) => new("lab", "Results of the laboratory: whether they go on as they did, what they say of a lot.")
    {
        LabBenchVerbs.Samples(voice, clock),
        LabBenchVerbs.Import(voice, clock),
        Chart(voice),
        LabLimitsVerbs.Of(voice, clock),
        LabConformVerb.Of(voice),
        LabWatchVerb.Of(voice),
        LabValidateVerb.Of(voice),
        LabMillsVerb.Of(voice),
        LabPlsVerbs.Of(voice, clock),
        LabPlanVerb.Of(voice),
        LabLotVerb.Of(voice, clock),
        LabRejudgeVerb.Of(voice, clock),
        LabCertificateVerb.Of(voice, clock),
        LabBakeVerb.Of(voice),
    };

    private static Command Chart(Voice voice)
    {
        var command = new Command("chart", "Control chart of posed values: limits from a stated period, what signals, moving means, cumulative sums, capability, how soon each tells. Releases nothing, needs no records.");
        return PosedVerb.Of<LabChartCase, LabChartAnswer>(command, voice, LabChartCase.Help, LabChartCase.Read, LabChartAnswer.To, answer => Say(answer, voice));
    }

    private static void Say(LabChartAnswer answer, Voice voice)
    {
        voice.Say($"limits from the first {answer.Period}: {Number(answer.Limits.Lower, 4)} – {Number(answer.Limits.Centre, 4)} – {Number(answer.Limits.Upper, 4)}; spread up to {Number(answer.Spreads.Upper, 4)}; one standard deviation {Number(answer.Sigma, 5)} ({answer.SigmaFrom})");
        var table = new TextTable("no", "value", "spread", "moving mean", "sum above", "sum below", "signals");
        foreach (var point in answer.Points)
        {
            table.Add(Number(point.Number, 0), Number(point.Value, 4), Number(point.Spread, 4), Number(point.MovingMean, 4), Number(point.SumAbove, 3), Number(point.SumBelow, 3), string.Join(", ", Signals(point)));
        }

        table.To(voice);
        foreach (var (name, room) in new[] { ("within", answer.Within), ("overall", answer.Overall) })
        {
            if (room is not null)
            {
                voice.Say($"capability {name}: {(room.Cp is null ? "" : $"Cp {Number(room.Cp, 3)} ({Number(room.CpFrom, 3)} to {Number(room.CpTo, 3)}), ")}Cpk {Number(room.Cpk, 3)} ({Number(room.CpkFrom, 3)} to {Number(room.CpkTo, 3)}, 95 %)");
            }
        }

        foreach (var length in answer.RunLengths)
        {
            voice.Say($"{length.What}: a signal after {Number(length.NothingMoved, 0)} values where nothing moved, after {Number(length.AfterOneSigma, 1)} where the mean moved by one standard deviation");
        }

        voice.Say(answer.Remarks);
    }

    private static IEnumerable<string> Signals(ChartPointAnswer point) =>
        [.. point.Rules, .. point.SpreadBeyond ? ["spread"] : Array.Empty<string>(), .. point.MovingMeanBeyond == true ? ["moving mean"] : Array.Empty<string>(), .. point.SumBeyond == true ? ["sum"] : Array.Empty<string>()];
}
