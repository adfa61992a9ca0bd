using System.CommandLine;
using System.Text;
using Evengrist.Cli.Said;
using Evengrist.Laboratory.Calibration;
using Evengrist.Laboratory.Validation;
using Evengrist.Plant;
using Evengrist.Plant.Answers;
using Evengrist.Plant.Cases;
using NodaTime;

namespace Evengrist.Cli.Rooms;

/// <summary>Bias or slope of a calibration in a file.</summary>
internal static class LabPlsAdjustVerb
{
    public static Command Of(Voice voice, IClock clock)
    {
        Option<string?> Words(string name, string says, string help = "FILE") => new(name) { Description = says, HelpName = help };
        var (calibration, pairs, to) = (Words("--calibration", "the calibration, as calibrate wrote it"), Words("--pairs", "CSV with the headings reference and read"), Words("--out", "write the calibration as set to a new file; left out, the pairs are tested alone"));
        var (set, by, why) = (Words("--set", "bias or slope", "WHAT"), Words("--by", "who decides it", "NAME"), Words("--why", "why it is set", "WORDS"));
        var json = new Option<bool>("--json") { Description = "answer in JSON, and nothing else on standard output" };
        calibration.Required = pairs.Required = true;
        var command = new Command("adjust", $"Tests samples that reference and calibration both read, after ISO 12099, and sets bias or slope in a further file: {AdjustmentModel.Fewest} pairs or more.") { calibration, pairs, set, by, why, to, json };
        command.SetAction(asked =>
        {
            var known = LabPlsVerbs.Calibration(asked.GetValue(calibration)!);
            using var text = new StreamReader(Files.Open(asked.GetValue(pairs)!), Encoding.UTF8);
            var read = CalibrationPairs.Of(text.ReadToEnd());
            var spec = read.Ok ? AdjustmentModel.Test(known, read.Value.Reference, read.Value.Read) : throw new BadInput(read.Faults);
            if (spec.Faults() is { Count: > 0 } faults)
            {
                throw new BadInput([.. faults.Select(f => Fault.Told("--pairs", f))]);
            }

            var found = ValidationModel.Of(spec);
            if (asked.GetValue(to) is { } file)
            {
                var kind = asked.GetValue(set) switch { "bias" => AdjustmentKind.Bias, "slope" => AdjustmentKind.SlopeAndBias, var other => throw new BadInput(new Fault(null, null, "--set", Fault.Show(other ?? ""), "bias, or slope for slope and bias")) };
                var adjusted = AdjustmentModel.Adjusted(known, found, kind, clock.GetCurrentInstant(), asked.GetValue(by) ?? "", asked.GetValue(why) ?? "", out var against) ?? throw new BadInput([.. against.Select(f => Fault.Told("adjust", f))]);
                LabPlsVerbs.Write(file, CalibrationJson.Write(adjusted));
            }

            return voice.Answer(asked.GetValue(json), LabValidateAnswer.Of(found), answer => LabValidateVerb.Say(answer, voice));
        });
        return command;
    }
}
