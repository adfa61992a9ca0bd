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
    public void Export_SentThenALateTruck_DeclaresOnceWhatItMadeWrong()
    {
        using var folder = Mill();
        var file = Path.Combine(folder.Path, "sent.jsonld");
        string[] export = ["epcis", "export", "--from", "2025-06-01T00:00Z", "--until", "2025-07-01T00:00Z", "--out", file, "--data", folder.Path, "--json"];
        Assert.Contains("Nothing was sent yet", Shell.Run("epcis", "sent", "--data", folder.Path).Output, StringComparison.Ordinal);
        Assert.Equal((Exit.NoAnswer, "Nothing was sent to BAKER yet.\n"), Shell.Run("epcis", "sent", "BAKER", "--data", folder.Path) is var none ? (none.Status, none.Error) : default);
        Assert.Equal(Exit.Done, Shell.Run(export).Status);
        Assert.Contains("Nothing was sent yet", Shell.Run("epcis", "sent", "--data", folder.Path).Output, StringComparison.Ordinal); // only looked at

        Assert.Contains("who sends it", Shell.Run([.. export, "--sent-to", "BAKER"]).Error, StringComparison.Ordinal);
        Assert.Contains("at most 60", Shell.Run([.. export, "--sent-to", new string('x', 61), "--by", "Ada"]).Error, StringComparison.Ordinal);
        var (told, wrong) = Sent(Shell.Run([.. export, "--sent-to", "BAKER", "--by", "Ada"]));
        Assert.True(told > 5);
        Assert.Equal(0, wrong);
        Assert.Contains("all of them hold", Shell.Run("epcis", "sent", "baker", "--data", folder.Path).Output, StringComparison.Ordinal);
        Assert.Equal(Exit.NoAnswer, Shell.Run([.. export, "--sent-to", "BAKER", "--by", "Ada", "--outflow", "core"]).Status);

        var late = Path.Combine(folder.Path, "late.csv");
        File.WriteAllLines(late, [.. File.ReadLines(Repository.Sample("small-mill", "intake.csv")).Take(2), "25-0000;2025-06-02 07:00;HF-1;FOLD 9;hard winter;14 120;9 120;2025-06-02 07:20;PIT | LEG;S1;NIR;meter 2;12,4;12,8;0,15;79,2;361;0,6;"]);
        Assert.Equal((Exit.Done, ""), Shell.Run("intake", "import", late, "--data", folder.Path, "--by", "Bo") is var taken ? (taken.Status, taken.Error) : default);
        var would = JsonDocument.Parse(Shell.Run("epcis", "sent", "BAKER", "--data", folder.Path, "--json").Output).RootElement.GetProperty("wrong");
        Assert.True(would.GetArrayLength() > 0);
        Assert.All(would.EnumerateArray(), w => Assert.NotEqual(0, w.GetProperty("correctedBy").GetArrayLength()));
        Assert.Equal(would.GetArrayLength(), Sent(Shell.Run([.. export, "--sent-to", "Baker", "--by", "Ada"])).Wrong);
        Assert.Equal((Exit.Done, ""), Shell.Run("epcis", "check", file) is var check ? (check.Status, check.Error) : default);
        Assert.Equal((0, 0), Sent(Shell.Run([.. export, "--sent-to", "BAKER", "--by", "Ada"])));
        Assert.Contains("3 documents were sent.", Shell.Run("epcis", "sent", "--data", folder.Path).Output, StringComparison.Ordinal);
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

    private static (int New, int Wrong) Sent((int Status, string Output, string Error) run)
    {
        Assert.Equal((Exit.Done, ""), (run.Status, run.Error));
        var answer = JsonDocument.Parse(run.Output).RootElement;
        return (answer.GetProperty("new").GetInt32(), answer.GetProperty("declaredWrong").GetInt32());
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
