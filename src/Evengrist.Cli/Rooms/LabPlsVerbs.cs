using System.CommandLine;
using System.Text;
using Evengrist.Cli.Said;
using Evengrist.Laboratory.Calibration;
using Evengrist.Plant;
using Evengrist.Plant.Answers;
using Evengrist.Plant.Cases;
using Evengrist.Plant.Spectra;
using NodaTime;
using static Evengrist.Cli.Said.Amounts;

namespace Evengrist.Cli.Rooms;

/// <summary>Calibrations of spectra: making one, and reading spectra with one.</summary>
internal static class LabPlsVerbs
{
    public static Command Of(Voice voice, IClock clock) => new("pls", "Calibrations of spectra by partial least squares.") { Calibrate(voice), Read(voice), LabPlsAdjustVerb.Of(voice, clock) };

    private static Command Calibrate(Voice voice)
    {
        var (posed, spectra) = (new PosedVerb(), Spectra("spectra with references, CSV or JCAMP-DX, where the case holds none"));
        var kept = new Option<string?>("--out") { Description = "write the calibration to a new file, to read spectra with", HelpName = "FILE" };
        var command = new Command("calibrate", "Calibrates spectra against a reference method: errors by the number of factors, outliers, samples kept back. Releases nothing, needs no records.") { spectra, kept };
        posed.AddTo(command, PlsCase.Help);
        command.SetAction(asked =>
        {
            var file = asked.GetValue(spectra) is { } name ? Table(name) : null;
            var reply = posed.Ask(asked, PlsCase.Read, c => c.Pose(file).Then(spec => Parsing.Got(PlsAnswer.To(spec))));
            if (reply.Answer is not { } answer)
            {
                return voice.NoAnswer(reply.Reasons);
            }

            if (asked.GetValue(kept) is { } to)
            {
                Write(to, answer.Calibration.GetRawText());
            }

            return voice.Answer(posed.Json(asked), answer, a => Say(a, voice));
        });
        return command;
    }

    private static Command Read(Voice voice)
    {
        var (calibration, spectra) = (new Option<string>("--calibration") { Description = "the calibration, as calibrate wrote it", HelpName = "FILE", Required = true }, Spectra("the spectra, CSV or JCAMP-DX"));
        var json = new Option<bool>("--json") { Description = "answer in JSON, and nothing else on standard output" };
        spectra.Required = true;
        var command = new Command("predict", "Reads new spectra with a calibration: each value ± and whether it lies outside. What lies outside releases and prices nothing by itself.") { calibration, spectra, json };
        command.SetAction(asked =>
        {
            var read = PlsReadingsAnswer.Of(Calibration(asked.GetValue(calibration)!), Table(asked.GetValue(spectra)!));
            return voice.Answer(asked.GetValue(json), read.Ok ? read.Value : throw new BadInput(read.Faults), answer => Say(answer, voice));
        });
        return command;
    }

    /// <summary>A calibration as calibrate wrote it.</summary>
    internal static SpectralCalibration Calibration(string name)
    {
        using var text = new StreamReader(Files.Open(name), Encoding.UTF8);
        return CalibrationJson.TryRead(text.ReadToEnd(), out var known, out var faults) ? known : throw new BadInput([.. faults.Select(f => Fault.Told("--calibration", f))]);
    }

    private static Option<string?> Spectra(string says) => new("--spectra") { Description = says, HelpName = "FILE" };

    private static SpectraTable Table(string name)
    {
        using var stream = name == "-" ? Console.OpenStandardInput() : Files.Open(name);
        var table = SpectraTable.Read(stream);
        return table.Ok ? table.Value : throw new BadInput(table.Faults);
    }

    /// <summary>Writes a new file; one that is there stays.</summary>
    internal static void Write(string path, string text)
    {
        try
        {
            using var file = new StreamWriter(new FileStream(path, FileMode.CreateNew, FileAccess.Write));
            file.Write(text);
        }
        catch (Exception refused) when (refused is IOException or UnauthorizedAccessException or ArgumentException or NotSupportedException)
        {
            throw new BadInput(new Fault(null, null, "--out", Fault.Show(path), "the name of a new file in a folder that can be written to; nothing that is there is overwritten"));
        }
    }

    private static void Say(PlsAnswer answer, Voice voice)
    {
        var unit = $"{answer.Unit} {answer.Basis}".Trim();
        voice.Say($"{answer.Property} [{unit}], {answer.Samples} samples, treatment {answer.Treatment}: {answer.Factors} factors (one standard error {answer.OneStandardError}, first minimum {answer.FirstMinimum}, least {answer.Least})");
        voice.Say($"SEC {Number(answer.Errors.Calibration, 4)}, SECV {Number(answer.Errors.CrossValidation, 4)}{(answer.Errors.Prediction is { } sep ? $", SEP {Number(sep, 4)}, bias {Number(answer.Errors.Bias, 4)} (reference − foretold) on {answer.KeptBack.Count} kept back" : "")}");
        var curve = new TextTable("factors", "RMSEC", "RMSECV", "RMSEP", "spectra %");
        foreach (var e in answer.Curve)
        {
            curve.Add(Number(e.Factors, 0), Number(e.Calibration, 5), Number(e.CrossValidation, 5), Number(e.Validation, 5), Number(e.SpectraExplainedPercent, 3));
        }

        curve.To(voice);
        foreach (var f in answer.Findings.Where(f => f.IsOutlying))
        {
            voice.Say($"look at {f.Id}: reference {Number(f.Reference, 3)}, foretold by the others {Number(f.CrossValidated, 3)}{(f.FarInScores ? $"; far from the set, H {Number(f.GlobalH, 2)}" : "")}{(f.FarInResidual ? "; spectrum not known" : "")}{(f.FarInProperty ? "; the reference or the label may be wrong" : "")}");
        }

        voice.Say(answer.Remarks);
    }

    private static void Say(PlsReadingsAnswer answer, Voice voice)
    {
        var table = new TextTable("id", $"{answer.Property} [{$"{answer.Unit} {answer.Basis}".Trim()}]", "±", "H", "outside");
        foreach (var r in answer.Readings)
        {
            table.Add(r.Id, Number(r.Value, 3), Number(r.StandardUncertainty, 3), Number(r.GlobalH, 2), string.Join(", ", r.Outside));
        }

        table.To(voice);
        voice.Say(answer.Remarks);
    }
}
