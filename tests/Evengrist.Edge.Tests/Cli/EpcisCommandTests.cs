using System.Text.Json;
using Evengrist.Cli;
using Evengrist.Edge.Tests.Plant;

namespace Evengrist.Edge.Tests.Cli;

/// <summary>Events for others and of others through the command line.</summary>
public sealed class EpcisCommandTests
{
    [Fact]
    public void Export_ThenCheckAndImport_GivesEachEventOnce()
    {
        using var folder = Mill();
        var (all, lot) = (Path.Combine(folder.Path, "all.jsonld"), Path.Combine(folder.Path, "lot.jsonld"));
        var (status, output, error) = Shell.Run("epcis", "export", "--from", "2025-06-01T00:00Z", "--until", "2025-07-01T00:00Z", "--out", all, "--data", folder.Path, "--json");
        Assert.Equal((Exit.Done, ""), (status, error));
        var written = JsonDocument.Parse(output).RootElement.GetProperty("events").GetInt32();
        Assert.Equal(Exit.Done, Shell.Run("epcis", "export", "25-0001", "--out", lot, "--data", folder.Path).Status);

        (status, output, error) = Shell.Run("epcis", "check", lot, "--json");
        Assert.Equal((Exit.Done, ""), (status, error));
        var ofLot = JsonDocument.Parse(output).RootElement.GetProperty("events").GetArrayLength();
        Assert.InRange(ofLot, 1, written - 1);

        Assert.Equal((ofLot, 0), Import(folder, lot));
        Assert.Equal((written - ofLot, ofLot), Import(folder, all)); // the way of the lot is part of what happened
        Assert.Equal((0, written), Import(folder, all));
        Assert.Contains($"{written} events.", Shell.Run("epcis", "events", "--data", folder.Path).Output, StringComparison.Ordinal);
    }

    [Fact]
    public void Keys_Kept_NameWhatIsWritten()
    {
        using var folder = Mill();
        var (keys, file) = (Path.Combine(folder.Path, "keys.json"), Path.Combine(folder.Path, "out.jsonld"));
        File.WriteAllText(keys, """{"site":"9521234000013"}""");
        Assert.Equal((Exit.Done, "Kept as version 1.\n", ""), Shell.Run("epcis", "keys", "--in", keys, "--by", "Ada", "--data", folder.Path));
        Assert.Equal(Exit.Done, Shell.Run("epcis", "export", "25-0001", "--out", file, "--data", folder.Path).Status);
        Assert.Contains("https://id.gs1.org/414/9521234000013/254/PIT", File.ReadAllText(file), StringComparison.Ordinal);
        File.WriteAllText(keys, """{"site":"9521234000014"}""");
        Assert.Contains("right check digit", Shell.Run("epcis", "keys", "--in", keys, "--by", "Ada", "--data", folder.Path).Error, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("--from", "epcis", "export", "--out", "x.jsonld")]
    [InlineData("--from", "epcis", "export", "25-0001", "--from", "2025-06-01T00:00Z", "--out", "x.jsonld")]
    [InlineData("--out", "epcis", "export", "25-0001")]
    [InlineData("no place with the code", "epcis", "export", "25-9999", "--out", "x.jsonld")]
    [InlineData("the file", "epcis", "check", "/no/such/file")]
    public void Called_Wrongly_SaysWhat(string words, params string[] args)
    {
        using var folder = Mill();
        string[] told = [.. args.Select(a => a == "x.jsonld" ? Path.Combine(folder.Path, a) : a), .. args[1] == "check" ? Array.Empty<string>() : ["--data", folder.Path]];
        var (status, _, error) = Shell.Run(told);
        Assert.Equal(Exit.BadInput, status);
        Assert.Contains(words, error, StringComparison.Ordinal);
    }

    [Fact]
    public void Import_FaultyDocument_ListsEveryFaultAndTakesNothing()
    {
        using var folder = Mill();
        var file = Path.Combine(folder.Path, "bad.jsonld");
        File.WriteAllText(file, """{"@context":"a:b","type":"EPCISDocument","schemaVersion":"2.0","creationDate":"2025-01-01T00:00:00Z","epcisBody":{"eventList":[{"type":"ObjectEvent"},{"type":"Nonsense"}]}}""");
        var (status, _, error) = Shell.Run("epcis", "import", file, "--by", "Ada", "--data", folder.Path);
        Assert.Equal(Exit.BadInput, status);
        Assert.Contains("$.epcisBody.eventList[0].eventTime", error, StringComparison.Ordinal);
        Assert.Contains("$.epcisBody.eventList[1].type: read \"Nonsense\"", error, StringComparison.Ordinal);
        Assert.Contains("No events were taken in yet", Shell.Run("epcis", "events", "--data", folder.Path).Output, StringComparison.Ordinal);
    }

    private static (int Added, int Known) Import(Folder folder, string file)
    {
        var (status, output, error) = Shell.Run("epcis", "import", file, "--by", "Ada", "--data", folder.Path, "--json");
        Assert.Equal((Exit.Done, ""), (status, error));
        var answer = JsonDocument.Parse(output).RootElement;
        return (answer.GetProperty("added").GetInt32(), answer.GetProperty("alreadyKnown").GetInt32());
    }

    internal static Folder Mill()
    {
        var folder = new Folder();
        Assert.Equal(Exit.Done, Shell.Run("mill", "new", "--name", "Small Mill", "--zone", "Europe/Paris", "--data", folder.Path).Status);
        foreach (var (room, file) in new[] { ("bins", "bins.csv"), ("intake", "intake.csv"), ("readings", "readings.csv"), ("movements", "movements.csv") })
        {
            Assert.Equal(Exit.Done, Shell.Run(room, "import", Repository.Sample("small-mill", file), "--data", folder.Path, "--by", "Bo").Status);
        }

        return folder;
    }
}
