using System.Globalization;
using Evengrist.Laboratory.Calibration;
using Evengrist.Laboratory.Validation;
using Evengrist.Plant.Cases;
using Evengrist.Records;
using Evengrist.Records.Laboratory;
using NodaTime;

namespace Evengrist.Web.Sights.Laboratory;

/// <summary>Bias or slope of a kept calibration, as typed: tested first, then set; on the page and over HTTP.</summary>
public sealed class AdjustForm
{
    /// <summary><c>look</c> or <c>keep</c>.</summary>
    public string? Do { get; set; }

    /// <summary>Version and code of the calibration, as <c>2 protein</c>.</summary>
    public string? With { get; set; }

    /// <summary>The pairs as CSV, where no file was chosen.</summary>
    public string? Pairs { get; set; }

    /// <summary>The file; it goes before the text.</summary>
    public IFormFile? File { get; set; }

    /// <summary><c>Bias</c> or <c>SlopeAndBias</c>.</summary>
    public string? Set { get; set; }

    /// <summary>Why.</summary>
    public string? Why { get; set; }

    /// <summary>The test; null where the pairs have faults.</summary>
    public ValidationOutcome? Test { get; private set; }

    /// <summary>Every fault.</summary>
    public IReadOnlyList<string> Faults { get; private set; } = [];

    /// <summary>The version kept under a name as <c>2 protein</c>; null where there is none.</summary>
    public static KeptCalibration? Kept(Mill mill, string? with)
    {
        var parts = (with ?? "").Trim().Split(' ', 2);
        return parts.Length == 2 && int.TryParse(parts[0], NumberStyles.None, CultureInfo.InvariantCulture, out var version) && version > 0 ? SpectralCalibrations.Find(mill, parts[1], version) : null;
    }

    /// <summary>Tests the pairs, and keeps the calibration as set where asked to.</summary>
    /// <param name="mill">The mill.</param>
    /// <param name="by">Who; null or empty where nobody is named.</param>
    /// <param name="nameless">What is said then.</param>
    /// <param name="now">The present moment.</param>
    /// <returns>The new version; null where none was kept.</returns>
    public KeptCalibration? Act(Mill mill, string? by, string nameless, Instant now)
    {
        (Pairs, var fault) = PostedText.Of(File, Pairs, "fewer pairs");
        var kept = Kept(mill, With);
        Faults =
        [
            .. fault is null ? Array.Empty<string>() : [fault],
            .. kept is not null ? Array.Empty<string>() : ["Choose a calibration that is kept."],
            .. string.IsNullOrWhiteSpace(Pairs) && fault is null ? ["There are no pairs: choose a file, or paste its text."] : Array.Empty<string>(),
        ];
        if (Faults.Count > 0)
        {
            return null;
        }

        var read = CalibrationPairs.Of(Pairs!);
        if (!read.Ok)
        {
            Faults = [.. read.Faults.Select(f => $"{f}")];
            return null;
        }

        var kind = Enum.TryParse<AdjustmentKind>(Set, out var named) && named.ToString() == Set ? named : AdjustmentKind.None;
        var adjust = new AdjustCalibration(kept!, read.Value.Reference, read.Value.Read, kind, Why ?? "");
        Test = adjust.Test(out var faults);
        Faults = faults.Count > 0 ? faults : Do == "keep" && string.IsNullOrWhiteSpace(by) ? [nameless] : [];
        if (Faults.Count > 0 || Do != "keep")
        {
            return null;
        }

        var made = adjust.In(mill, by!, now, out faults);
        Faults = faults;
        return made;
    }
}
