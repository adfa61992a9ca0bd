using System.Text.Json;
using Evengrist.Cli;
using Evengrist.Edge.Tests.Web;
using Evengrist.Ledger;
using NodaTime;

namespace Evengrist.Edge.Tests.Cli;

/// <summary>Limits of charts through the command line, in a tiny mill.</summary>
public sealed class LabLimitsTests
{
    [Fact]
    public void Limits_FrozenAndShown_AndRefused()
    {
        using var folder = new Folder();
        var path = Path.Combine(folder.Path, "mill.db");
        using (var mill = TinyMill.Open(path))
        {
            mill.Record([.. Enumerable.Range(0, 12).Select(h => new Measure($"m{h}", "B01", Instant.FromUtc(2025, 6, 15, 11, 0) + Duration.FromHours(h), Property.Moisture, 13m + (h % 3 / 10m), "%", default, "oven"))], "Ada", "test");
        }

        string[] freeze = ["lab", "limits", "freeze", "--chart", "b01 moisture oven", "--from", "2025-06-15T11:00:00Z", "--until", "2025-06-15T23:00:00Z", "--by", "Ada", "--reason", "first", "--data", path];
        var (status, output, error) = Shell.Run(freeze);
        Assert.Equal((Exit.Done, ""), (status, error));
        Assert.Contains("B01 Moisture oven: version 1 from 12 readings, centre 13.100", output, StringComparison.Ordinal);
        var line = JsonDocument.Parse(Shell.Run("lab", "limits", "show", "--data", path, "--json").Output).RootElement.EnumerateArray().Single(l => l.GetProperty("chart").GetString() == "B01 Moisture oven");
        Assert.Equal((1, "Ada", "first"), (line.GetProperty("version").GetInt32(), line.GetProperty("by").GetString(), line.GetProperty("reason").GetString()));
        Assert.Contains("There are 2 readings in that period", Shell.Run([.. freeze.Select(a => a.Replace("T23:", "T13:", StringComparison.Ordinal))]).Error, StringComparison.Ordinal);
        Assert.Contains("begins before it ends", Shell.Run([.. freeze.Select(a => a.Replace("T23:", "T09:", StringComparison.Ordinal))]).Error, StringComparison.Ordinal);
        Assert.Contains("Nothing can be charted as \"B77", Shell.Run([.. freeze.Select(a => a.Replace("b01", "B77", StringComparison.Ordinal))]).Error, StringComparison.Ordinal);
        Assert.Contains("Four, One, Eight", Shell.Run([.. freeze, "--rules", "seven"]).Error, StringComparison.Ordinal);
    }
}
