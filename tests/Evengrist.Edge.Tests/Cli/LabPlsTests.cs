using System.Globalization;
using System.Text.Json;
using Evengrist.Cli;

namespace Evengrist.Edge.Tests.Cli;

/// <summary>Calibrations of spectra through the command line, on invented spectra in which each constituent adds its own band.</summary>
public sealed class LabPlsTests
{
    private static string Csv(int samples, Func<int, string>? reference = null, int channels = 20) => string.Join('\n',
    [
        "id,protein,truck," + string.Join(',', Enumerable.Range(0, channels).Select(c => $"w{1100 + (2 * c)}")),
        .. Enumerable.Range(0, samples).Select(i => $"s{i},{reference?.Invoke(i) ?? Protein(i).ToString(CultureInfo.InvariantCulture)},t{i / 2}," + string.Join(',', Enumerable.Range(0, channels).Select(c => Value(i, c).ToString("R", CultureInfo.InvariantCulture)))),
    ]);

    private static double Protein(int i) => 10 + (i * 7 % 11 * 0.3);

    private static double Value(int i, int c) => 0.3 + (0.01 * Protein(i) * Math.Exp(-Math.Pow((c - 7) / 3.0, 2))) + (0.02 * (12 + (i * 5 % 13 * 0.2)) * Math.Exp(-Math.Pow((c - 13) / 4.0, 2))) + (1e-5 * Math.Sin((i + 1) * (c + 2) * 5.1));

    [Fact]
    public void Calibration_MadeWrittenAndUsed_ReadsNewSpectra()
    {
        using var folder = new Folder();
        var spectra = folder.File("spectra.csv", Csv(40));
        var posed = folder.File("case.json", """{ "property": "protein", "basis": "12mb", "mostFactors": 5, "factors": 2, "group": "truck", "keepBack": { "every": 4 }, "treatment": [ { "kind": "savitzkyGolay", "half": 2, "degree": 2, "derivative": 1 } ] }""");
        var kept = Path.Combine(folder.Path, "calibration.json");
        var (status, output, error) = Shell.Run("lab", "pls", "calibrate", "--in", posed, "--spectra", spectra, "--out", kept);
        Assert.Equal("", error);
        Assert.Equal(Exit.Done, status);
        Assert.Contains("protein [% 12mb], 30 samples, treatment Savitzky-Golay, derivative 1, 5 channels, degree 2: 2 factors", output, StringComparison.Ordinal);
        Assert.Contains("10 samples were kept back to validate: 20 or more", output, StringComparison.Ordinal);
        var read = JsonDocument.Parse(Shell.Run("lab", "pls", "predict", "--calibration", kept, "--spectra", spectra, "--json").Output).RootElement.GetProperty("readings");
        Assert.Equal(40, read.GetArrayLength());
        Assert.All(read.EnumerateArray().Index(), r => Assert.Equal(Protein(r.Index), r.Item.GetProperty("value").GetDouble(), 0.1));
        Assert.Contains("nothing that is there is overwritten", Shell.Run("lab", "pls", "calibrate", "--in", posed, "--spectra", spectra, "--out", kept).Error, StringComparison.Ordinal);
        // Its bias set by pairs it read, in a further file; too few pairs, no reason, and columns that are not there are refused.
        string Pairs(int count) => "sample;reference;read\n" + string.Join('\n', Enumerable.Range(0, count).Select(i => string.Create(CultureInfo.InvariantCulture, $"s{i};{Protein(i) - 0.3};{read[i].GetProperty("value").GetDouble()}")));
        var (pairs, few, set) = (folder.File("pairs.csv", Pairs(20)), folder.File("few.csv", Pairs(9)), Path.Combine(folder.Path, "set.json"));
        Assert.Contains("advice: set the bias alone", Shell.Run("lab", "pls", "adjust", "--calibration", kept, "--pairs", pairs).Output, StringComparison.Ordinal);
        string[] adjust = ["lab", "pls", "adjust", "--calibration", kept, "--set", "bias", "--by", "Ada", "--why", "new lamp", "--out", set, "--pairs"];
        Assert.Contains("There are 9 pairs", Shell.Run([.. adjust, few]).Error, StringComparison.Ordinal);
        Assert.Contains("Say why it is set", Shell.Run([.. adjust.Select(a => a == "new lamp" ? "" : a), pairs]).Error, StringComparison.Ordinal);
        Assert.Contains("headings are missing: reference, read", Shell.Run([.. adjust, folder.File("bad.csv", "sample\nx\n")]).Error, StringComparison.Ordinal);
        Assert.False(File.Exists(set));
        Assert.Equal(Exit.Done, Shell.Run([.. adjust, pairs]).Status);
        var moved = JsonDocument.Parse(Shell.Run("lab", "pls", "predict", "--calibration", set, "--spectra", spectra, "--json").Output).RootElement.GetProperty("readings");
        Assert.Equal(read[5].GetProperty("value").GetDouble() - 0.3, moved[5].GetProperty("value").GetDouble(), 0.02);
        // Another axis, and something that is no calibration.
        var other = folder.File("other.csv", Csv(3, null, 12));
        Assert.Contains("not on the axis of the calibration: there are 12 channels, not 20", Shell.Run("lab", "pls", "predict", "--calibration", kept, "--spectra", other).Error, StringComparison.Ordinal);
        Assert.Contains("--calibration", Shell.Run("lab", "pls", "predict", "--calibration", posed, "--spectra", spectra).Error, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("""{ "property": "ash" }""", "one of the file's columns: protein, truck")]
    [InlineData("""{ "property": "protein", "group": "lorry" }""", "$.group")]
    [InlineData("""{ "property": "protein", "leaveOut": [ "s99" ] }""", "$.leaveOut")]
    [InlineData("""{ "property": "protein", "mostFactors": 39 }""", "39 factors need 41")]
    [InlineData("""{ "property": "protein", "keepBack": { "every": 1 } }""", "$.keepBack")]
    [InlineData("""{ "property": "protein", "treatment": [ { "kind": "savitzkyGolay", "half": 12, "degree": 2, "derivative": 1 } ] }""", "take a narrower one")]
    [InlineData("""{ "property": "protein", "treatment": [ { "kind": "magic" } ] }""", "\"magic\" is no kind that is known there")]
    [InlineData("""{ "property": "protein", "from": 3000 }""", "fewer than 2 channels")]
    [InlineData("""{ "mostFactors": 3 }""", "property must be there")]
    public void Cases_ThatCannotBe_NameTheFault(string posed, string says)
    {
        using var folder = new Folder();
        var (status, _, error) = Shell.Run("lab", "pls", "calibrate", "--in", folder.File("case.json", posed), "--spectra", folder.File("spectra.csv", Csv(40)));
        Assert.Equal(Exit.BadInput, status);
        Assert.Contains(says, error, StringComparison.Ordinal);
    }

    [Fact]
    public void Reference_ThatIsMissing_IsNamedByLineAndColumnOrLeftOut()
    {
        using var folder = new Folder();
        var spectra = folder.File("spectra.csv", Csv(30, i => i == 4 ? "" : i == 9 ? "eleven" : null!));
        var error = Shell.Run("lab", "pls", "calibrate", "--in", folder.File("one.json", """{ "property": "protein", "mostFactors": 3 }"""), "--spectra", spectra).Error;
        Assert.Contains("line 6, column 2 (protein): read nothing; expected the reference as a number; or name s4 under leaveOut", error, StringComparison.Ordinal);
        Assert.Contains("line 11, column 2 (protein): read \"eleven\"", error, StringComparison.Ordinal);
        var (status, output, _) = Shell.Run("lab", "pls", "calibrate", "--in", folder.File("two.json", """{ "property": "protein", "mostFactors": 3, "leaveOut": [ "s4", "s9" ] }"""), "--spectra", spectra);
        Assert.Equal(Exit.Done, status);
        Assert.Contains("28 samples", output, StringComparison.Ordinal);
    }
}
