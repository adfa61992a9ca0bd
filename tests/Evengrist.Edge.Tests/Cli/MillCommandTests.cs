using System.Text.Json;
using Evengrist.Cli;
using Evengrist.Edge.Tests.Plant;

namespace Evengrist.Edge.Tests.Cli;

/// <summary>A mill of one's own through the command line, from the sample files.</summary>
public sealed class MillCommandTests
{
    private static readonly string[][] Files =
    [
        ["bins", "bins.csv"], ["intake", "intake.csv"], ["readings", "readings.csv"], ["movements", "movements.csv"], ["intake", "intake-week-2.xlsx"],
    ];

    [Fact]
    public void Import_SmallMillTwice_AddsNothingTheSecondTime()
    {
        using var folder = NewMill();
        Import(folder);
        var before = Balance(folder);
        foreach (var file in Files)
        {
            var (status, output, error) = Shell.Run([file[0], "import", Repository.Sample("small-mill", file[1]), "--data", folder.Path, "--by", "Bo", "--json"]);
            Assert.Equal((Exit.Done, ""), (status, error));
            Assert.Equal(0, JsonDocument.Parse(output).RootElement.GetProperty("added").GetInt32());
            Assert.Equal(Exit.Done, Shell.Run([file[0], "import", Repository.Sample("small-mill", file[1]), "--data", folder.Path, "--dry-run"]).Status);
        }

        Assert.Equal(before, Balance(folder));
    }

    [Fact]
    public void Balance_SmallMill_IsTheApprovedTable()
    {
        using var folder = NewMill();
        Import(folder);
        Assert.Equal(File.ReadAllText(Path.Combine(Repository.Root, "tests", "Evengrist.Edge.Tests", "Cli", "balance.approved.txt")), Balance(folder));
    }

    [Fact]
    public void DryRun_GoodFile_RecordsNothing()
    {
        using var folder = NewMill();
        var empty = Balance(folder);
        var (status, output, error) = Shell.Run("bins", "import", Repository.Sample("small-mill", "bins.csv"), "--data", folder.Path, "--dry-run");
        Assert.Equal((Exit.Done, "23 rows, no fault found. Nothing was recorded; 0 of the facts are known already.\n", ""), (status, output, error));
        Assert.Equal(empty, Balance(folder));
    }

    [Theory]
    [InlineData("--dry-run")]
    [InlineData("--json")]
    public void Import_FileTheLedgerRefuses_ListsEveryFaultAndRecordsNothing(string flag)
    {
        using var folder = NewMill();
        Import(folder);
        var before = Balance(folder);
        var (status, output, error) = Shell.Run("movements", "import", Repository.Sample("bad", "ledger.csv"), "--data", folder.Path, "--by", "Ada", flag);
        Assert.Equal((Exit.BadInput, ""), (status, output));
        Assert.Equal(8, error.Split('\n', StringSplitOptions.RemoveEmptyEntries).Length);
        Assert.Equal(before, Balance(folder));
    }

    [Fact]
    public void Import_SameTicketWithAnotherWeight_IsRefusedAndSaysBoth()
    {
        using var folder = NewMill();
        Import(folder);
        var changed = File.ReadAllText(Repository.Sample("small-mill", "intake.csv")).Replace("24 380", "24 830", StringComparison.Ordinal);
        var (status, _, error) = Shell.Run("intake", "import", folder.File("changed.csv", changed), "--data", folder.Path, "--by", "Ada");
        Assert.Equal(Exit.BadInput, status);
        Assert.Contains("line 3", error, StringComparison.Ordinal);
        Assert.Contains("15,260 kg and is now 15,710 kg", error, StringComparison.Ordinal);
    }

    [Fact]
    public void Tracing_PalletOfTheSmallMill_NamesItsFieldsAndTheSharesAddUp()
    {
        using var folder = NewMill();
        Import(folder);
        var (status, output, _) = Shell.Run("tracing", "roots", "p-0002", "--data", folder.Path, "--json");
        Assert.Equal(Exit.Done, status);
        var roots = JsonDocument.Parse(output).RootElement.GetProperty("roots").EnumerateArray().ToArray();
        Assert.Equal(1, roots.Sum(r => r.GetProperty("share").GetProperty("expected").GetDouble()), 1e-6);
        Assert.Contains(roots, r => r.GetProperty("truck").GetString() == "25-0001" && r.GetProperty("origin").GetString() == "HF-1");
        Assert.Equal(Exit.Done, Shell.Run("tracing", "reach", "25-0001", "HF-1", "--data", folder.Path).Status);

        // The same by recall: the truck's pallet is in every net, and what is named twice counts once.
        var recall = JsonDocument.Parse(Shell.Run("tracing", "recall", "25-0001", "HF-1", "--threshold", "0", "--data", folder.Path, "--json").Output).RootElement;
        Assert.Contains("P-0002", recall.GetProperty("packages").EnumerateArray().Select(p => p.GetProperty("code").GetString()));
        Assert.Contains("still unknown", Shell.Run("tracing", "recall", "25-0001", "--data", folder.Path).Output, StringComparison.Ordinal);
    }

    [Fact]
    public void Run_WhatCannotBe_IsRefusedWithAReason()
    {
        using var folder = NewMill();
        void Refused(string said, params string[] args)
        {
            var (status, output, error) = Shell.Run(args);
            Assert.Equal((Exit.BadInput, ""), (status, output));
            Assert.Contains(said, error, StringComparison.Ordinal);
        }

        Refused("who records this", "bins", "import", Repository.Sample("small-mill", "bins.csv"), "--data", folder.Path);
        Refused("evengrist mill new", "ledger", "balance", "--data", Path.Combine(folder.Path, "elsewhere"));
        Refused("no mill lies yet", "mill", "new", "--data", folder.Path);
        Refused("a file that can be read", "bins", "import", "nowhere.csv", "--data", folder.Path, "--by", "Ada");
        Refused("tz database", "bins", "import", Repository.Sample("small-mill", "bins.csv"), "--zone", "Moon", "--data", folder.Path, "--by", "Ada");
        Refused("one of --data and --postgres", "ledger", "balance", "--data", folder.Path, "--postgres", "Host=x");
        Refused("There is no place", "tracing", "roots", "NOTHING", "--data", folder.Path);
        Refused("--help", "bins", "levitate");
        Refused("no pallet, lot or place", "tracing", "recall", "NOTHING", "--data", folder.Path);
        Refused("either what is suspect", "tracing", "recall", "--data", folder.Path);
        Refused("codes to look for", "tracing", "roots", "--data", folder.Path);
    }

    [Theory]
    [InlineData("reset")]
    [InlineData("load")]
    public void Demo_OverAMillOfOnesOwn_IsRefusedAndLeavesItAsItIs(string verb)
    {
        using var folder = NewMill();
        Import(folder);
        var before = Balance(folder);
        var (status, output, error) = Shell.Run("demo", verb, "--data", Path.Combine(folder.Path, "mill.db"));
        Assert.Equal((Exit.BadInput, ""), (status, output));
        Assert.Contains("left as it is", error, StringComparison.Ordinal);
        Assert.Equal(before, Balance(folder));
    }

    [Fact]
    public void Open_FileThatIsNoMill_SaysSoAndLeavesItAsItIs()
    {
        using var folder = new Folder();
        var path = folder.File("mill.db", "this is a shopping list, not a database, and long enough to be read as one by mistake");
        var (status, output, error) = Shell.Run("ledger", "balance", "--data", folder.Path);
        Assert.Equal((Exit.BadInput, ""), (status, output));
        Assert.NotEmpty(error);
        Assert.StartsWith("this is a shopping list", File.ReadAllText(path), StringComparison.Ordinal);
    }

    private static Folder NewMill()
    {
        var folder = new Folder();
        Assert.Equal(Exit.Done, Shell.Run("mill", "new", "--data", folder.Path, "--name", "Small mill", "--zone", "Europe/Paris").Status);
        return folder;
    }

    private static void Import(Folder folder)
    {
        foreach (var file in Files)
        {
            Assert.Equal((Exit.Done, ""), Shell.Run([file[0], "import", Repository.Sample("small-mill", file[1]), "--data", folder.Path, "--by", "Ada"]) is var run ? (run.Status, run.Error) : default);
        }
    }

    private static string Balance(Folder folder) => Shell.Run("ledger", "balance", "--all", "--data", folder.Path).Output;
}
