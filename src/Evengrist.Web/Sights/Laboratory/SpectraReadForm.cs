using System.Globalization;
using Evengrist.Plant.Answers;
using Evengrist.Plant.Spectra;
using Evengrist.Records;
using Evengrist.Records.Laboratory;

namespace Evengrist.Web.Sights.Laboratory;

/// <summary>New spectra to be read with a kept calibration.</summary>
public sealed class SpectraReadForm
{
    /// <summary>Version and code of the calibration, as <c>2 protein</c>.</summary>
    public string? With { get; set; }

    /// <summary>The spectra, where no file was chosen.</summary>
    public string? Text { get; set; }

    /// <summary>The file; it goes before the text.</summary>
    public IFormFile? File { get; set; }

    /// <summary>The readings; null where there are faults.</summary>
    public PlsReadingsAnswer? Answer { get; private set; }

    /// <summary>Every fault.</summary>
    public IReadOnlyList<string> Faults { get; private set; } = [];

    /// <summary>Reads the spectra.</summary>
    public void Read(Mill mill)
    {
        (Text, var fault) = PostedText.Of(File, Text, "fewer spectra");
        var parts = (With ?? "").Split(' ', 2);
        var kept = parts.Length == 2 && int.TryParse(parts[0], NumberStyles.None, CultureInfo.InvariantCulture, out var version) && version > 0 ? SpectralCalibrations.Find(mill, parts[1], version) : null;
        Faults =
        [
            .. fault is null ? Array.Empty<string>() : [fault],
            .. kept is not null ? Array.Empty<string>() : ["Choose a calibration that is kept."],
            .. string.IsNullOrWhiteSpace(Text) && fault is null ? ["There are no spectra: choose a file, or paste its text."] : Array.Empty<string>(),
        ];
        if (Faults.Count == 0)
        {
            var read = SpectraTable.Read(Text!).Then(table => PlsReadingsAnswer.Of(kept!.Calibration, table));
            (Answer, Faults) = (read.Ok ? read.Value : null, [.. read.Faults.Select(f => $"{f}")]);
        }
    }
}
