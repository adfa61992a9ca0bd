using System.Globalization;
using Evengrist.Laboratory.Calibration;
using Evengrist.Plant.Cases;

namespace Evengrist.Web.Sights.Laboratory;

/// <summary>A calibration as it is asked for on the page: looked at first, then kept.</summary>
public sealed class CalibrationForm
{
    /// <summary>Treatments that are offered.</summary>
    public static IReadOnlyList<(string Key, string Words, IReadOnlyList<PretreatmentStep> Steps)> Treatments { get; } =
    [
        ("none", "none", []),
        ("snv", "SNV: each spectrum by its own mean and spread", [new StandardNormalVariate()]),
        ("msc", "MSC: each spectrum on the mean of the set", [new ScatterCorrection()]),
        ("d1", "first derivative, 11 channels", [new SavitzkyGolay(5, 2, 1)]),
        ("d1snv", "first derivative, then SNV", [new SavitzkyGolay(5, 2, 1), new StandardNormalVariate()]),
        ("d2", "second derivative, 11 channels", [new SavitzkyGolay(5, 2, 2)]),
    ];

    /// <summary><c>look</c> or <c>keep</c>.</summary>
    public string? Do { get; set; }

    /// <summary>The spectra, where no file was chosen.</summary>
    public string? Text { get; set; }

    /// <summary>The file; it goes before the text.</summary>
    public IFormFile? File { get; set; }

    /// <summary>Heading of the references.</summary>
    public string? Property { get; set; }

    /// <summary>Their unit.</summary>
    public string? Unit { get; set; }

    /// <summary>Their basis.</summary>
    public string? Basis { get; set; }

    /// <summary>The reference method.</summary>
    public string? Method { get; set; }

    /// <summary>One of <see cref="Treatments"/>.</summary>
    public string? Treatment { get; set; }

    /// <summary>Factors up to which is looked.</summary>
    public string? Most { get; set; }

    /// <summary>Factors to take; empty to choose.</summary>
    public string? Factors { get; set; }

    /// <summary><c>ten</c> segments or <c>one</c> left out at a time.</summary>
    public string? Segments { get; set; }

    /// <summary>Heading of what belongs together.</summary>
    public string? Group { get; set; }

    /// <summary>Each how manieth sample is kept back; empty for none.</summary>
    public string? Every { get; set; }

    /// <summary>Names of samples to leave out, by commas.</summary>
    public string? LeaveOut { get; set; }

    /// <summary>What came of it; null where nothing could.</summary>
    public CalibrationOutcome? Made { get; private set; }

    /// <summary>Every fault.</summary>
    public IReadOnlyList<string> Faults { get; private set; } = [];

    /// <summary>Takes the file into the text, and calibrates.</summary>
    public void Read()
    {
        List<string> faults = [];
        (Text, var fault) = PostedText.Of(File, Text, "fewer spectra, or fewer channels,");
        var (most, factors, every) = (Whole(Most, "Factors up to", faults) ?? 12, Whole(Factors, "Factors to take", faults), Whole(Every, "Kept back each", faults));
        if (fault is not null)
        {
            faults.Add(fault);
        }
        else if (string.IsNullOrWhiteSpace(Text))
        {
            faults.Add("There are no spectra: choose a file, or paste its text.");
        }

        if (string.IsNullOrWhiteSpace(Property))
        {
            faults.Add("Name the property: the heading of the column of references.");
        }

        Faults = faults;
        if (faults.Count > 0)
        {
            return;
        }

        var posed = new PlsCase(Property!.Trim())
        {
            Spectra = Text, Unit = Unit?.Trim() ?? "%", Basis = Basis?.Trim() ?? "", Method = Method?.Trim() ?? "", Treatment = Treatments.FirstOrDefault(t => t.Key == Treatment, Treatments[0]).Steps, MostFactors = most, Factors = factors,
            LeaveOneOut = Segments == "one", Group = string.IsNullOrWhiteSpace(Group) ? null : Group.Trim(), KeepBack = every is { } each ? new() { Every = each } : null,
            LeaveOut = [.. (LeaveOut ?? "").Split(',', StringSplitOptions.TrimEntries | StringSplitOptions.RemoveEmptyEntries)],
        };
        var spec = posed.Pose();
        Faults = [.. spec.Faults.Select(f => Words($"{f}"))];
        Made = spec.Ok ? CalibrationModel.Of(spec.Value) : null;
        if (spec.Ok && Made is null)
        {
            Faults = ["The spectra, treated, hold nothing that goes with the property. Look at the treatment, and whether the references belong to the spectra."];
        }
    }

    // On the page there are fields where a posted case has paths.
    private static string Words(string fault) => fault.Replace("$.property", "Property", StringComparison.Ordinal).Replace("$.group", "Belongs together", StringComparison.Ordinal).Replace("$.leaveOut", "Leave out", StringComparison.Ordinal)
        .Replace("$.keepBack", "Kept back each", StringComparison.Ordinal).Replace("under leaveOut", "under “Leave out”", StringComparison.Ordinal).Replace("$: ", "", StringComparison.Ordinal);

    private static int? Whole(string? text, string what, List<string> faults)
    {
        if (string.IsNullOrWhiteSpace(text))
        {
            return null;
        }

        if (int.TryParse(text.Trim(), NumberStyles.None, CultureInfo.InvariantCulture, out var whole))
        {
            return whole;
        }

        faults.Add($"{what}: a whole number is needed; read “{text.Trim()}”.");
        return null;
    }
}
