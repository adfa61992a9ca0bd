using Evengrist.Cli;

namespace Evengrist.Edge.Tests.Cli;

/// <summary>Samples and exported results through the command line.</summary>
public sealed class LabBenchCommandTests
{
    [Fact]
    public void Import_OfAMillWithoutTheSample_NamesTheLine()
    {
        using var folder = new Folder();
        var mill = Path.Combine(folder.Path, "own.db");
        Assert.Equal(Exit.Done, Shell.Run("mill", "new", "--data", mill).Status);
        var file = folder.File("results.csv", "sample;measured;property;value;method;basis\nS-1;2026-01-14 10:36;protein;11.8;combustion;14mb\n");
        var (status, _, error) = Shell.Run("lab", "import", file, "--data", mill, "--dry-run");
        Assert.Equal(Exit.BadInput, status);
        Assert.Contains("line 2: There is no sample \"S-1\"", error, StringComparison.Ordinal);
        var broken = Shell.Run("lab", "import", folder.File("broken.csv", "sample;value\n1;2\n"), "--data", mill, "--by", "Ada");
        Assert.Equal(Exit.BadInput, broken.Status);
        Assert.Contains("headings are missing: measured, property, method", broken.Error, StringComparison.Ordinal);
        var (listed, output, _) = Shell.Run("lab", "samples", "--data", mill, "--json");
        Assert.Equal((Exit.Done, "[]"), (listed, output.Trim()));
    }
}
