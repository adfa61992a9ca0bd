using System.CommandLine;
using Evengrist.Cli.Said;
using Evengrist.Laboratory.Conformity;
using Evengrist.Plant.Answers;
using Evengrist.Plant.Cases;
using static Evengrist.Cli.Said.Amounts;

namespace Evengrist.Cli.Rooms;

/// <summary>Whether a lot is inside its limits, and how surely.</summary>
internal static class LabConformVerb
{
    public static Command Of(Voice voice)
    {
        var command = new Command("conform", "Chance that a lot is inside its limits by posed results, guard band, chance that the customer's laboratory finds it outside, risks over all lots. Releases nothing, needs no records.");
        return PosedVerb.Of<LabConformCase, LabConformAnswer>(command, voice, LabConformCase.Help, LabConformCase.Read, LabConformAnswer.To, answer => Say(answer, voice));
    }

    private static void Say(LabConformAnswer answer, Voice voice)
    {
        voice.Say($"judged {Number(answer.Judged, 4)} with a standard uncertainty of {Number(answer.Uncertainty, 4)}: inside with a chance of {Number(answer.Chance, 4)}{(answer.Chance == answer.ChanceByResult ? "" : $" ({Number(answer.ChanceByResult, 4)} by the results alone)")}");
        voice.Say($"results accepted {(answer.AcceptFrom is null ? "" : $"from {Number(answer.AcceptFrom, 4)} ")}{(answer.AcceptTo is null ? "" : $"to {Number(answer.AcceptTo, 4)} ")}(guard band {Number(answer.Guard, 4)}): this one {(answer.Accepted ? "is" : "is not")}");
        if (answer.CustomerRejects is { } rejects)
        {
            voice.Say($"the customer's laboratory finds it outside with a chance of {Number(rejects, 4)}");
        }

        if (answer.Lots is { } lots)
        {
            voice.Say($"of all lots {Number(100 * lots.Inside, 2)} % are inside; {Number(100 * lots.AcceptedOutside, 3)} % are outside and accepted, {Number(100 * lots.RejectedInside, 2)} % inside and turned away");
        }

        foreach (var band in answer.Guards)
        {
            var keeps = $"{(band.Keeps == nameof(RiskOverLots.AcceptedOutside) ? "outside and accepted" : "inside and turned away")} at most {Number(100 * band.Wanted, 3)} %";
            voice.Say(band.Lots is not { } risks ? $"no guard band keeps {keeps}"
                : $"guard band for {keeps}: {Number(band.Guard, 4)}, accepted {(band.AcceptFrom is null ? "" : $"from {Number(band.AcceptFrom, 4)} ")}{(band.AcceptTo is null ? "" : $"to {Number(band.AcceptTo, 4)} ")}({Number(100 * risks.AcceptedOutside, 3)} % outside and accepted, {Number(100 * risks.RejectedInside, 2)} % inside and turned away)");
        }

        voice.Say($"advice: {answer.Advice}. A named person decides.");
        voice.Say(answer.Remarks);
    }
}
