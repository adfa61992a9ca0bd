using Evengrist.Cli;
using Evengrist.Ledger;
using Evengrist.Packing.Codes;
using Evengrist.Packing.Products;
using Evengrist.Quantities;
using Evengrist.Records;
using Evengrist.Records.Packing;
using NodaTime;

namespace Evengrist.Edge.Tests.Cli;

/// <summary>Checkweighers' files and labels of the ledger through the command line.</summary>
public sealed class ContentCommandTests
{
    private static readonly Instant At = Plant.SmallMill.Recorded - Duration.FromHours(3);

    [Fact]
    public void Import_AFileTwice_AddsItOnceAndShowsIt()
    {
        using var folder = new Folder();
        var data = Laid(folder);
        var rows = string.Concat(Enumerable.Range(0, 60).Select(i => FormattableString.Invariant($"{At + Duration.FromSeconds(i)};L1;WB-25;{25.19m + (i % 7 * 0.004m)};\n")));
        var file = folder.File("weights.csv", "moment;line;product;gross [kg];rejected\n" + rows);
        Assert.Contains("could be kept; none was", Shell.Run("packing", "content", "import", file, "--data", data, "--dry-run").Output, StringComparison.Ordinal);
        Assert.Contains("60 kept, 0 known already", Shell.Run("packing", "content", "import", file, "--data", data, "--by", "Ada").Output, StringComparison.Ordinal);
        Assert.Contains("0 kept, 60 known already", Shell.Run("packing", "content", "import", file, "--data", data, "--by", "Ada").Output, StringComparison.Ordinal);
        var (status, output, _) = Shell.Run("packing", "content", "show", "--data", data, "--law", "US");
        Assert.Equal(Exit.Done, status);
        Assert.Contains("WB-25", output, StringComparison.Ordinal);
        var wrong = Shell.Run("packing", "content", "import", folder.File("bad.csv", "moment;line;product;gross [g]\n2026-01-14 10:36;L9;WB-25;25200\n"), "--data", data, "--by", "Ada");
        Assert.Equal(Exit.BadInput, wrong.Status);
        Assert.Contains("line 2, column 2", wrong.Error, StringComparison.Ordinal);
    }

    [Fact]
    public void Label_OfAPallet_IsNumberedAndHeldAgainstTheLedger()
    {
        using var folder = new Folder();
        var (data, target) = (Laid(folder), Path.Combine(folder.Path, "label.svg"));
        var refused = Shell.Run("gs1", "label", "--pallet", "P-1", "--by", "Ada", "--packs", "39", "--out", target, "--data", data);
        Assert.Equal(Exit.BadInput, refused.Status);
        Assert.Contains("by the ledger 40", refused.Error, StringComparison.Ordinal);
        Assert.Contains("(00)095212340000000426", Shell.Run("gs1", "label", "--pallet", "p-1", "--by", "Ada", "--out", target, "--data", data).Output, StringComparison.Ordinal); // serial 42: worked case of docs/model/codes.md
        Assert.True(File.Exists(target));
        Assert.Contains("GLN 9521234000013", Shell.Run("gs1", "number", "9521234", "--location", "1").Output, StringComparison.Ordinal);
    }

    private static string Laid(Folder folder)
    {
        var data = Path.Combine(folder.Path, "own.db");
        Assert.Equal(Exit.Done, Shell.Run("mill", "new", "--data", data).Status);
        using var mill = Mill.Open(MillOptions.InFile(data), SystemClock.Instance);
        Assert.Empty(Products.Keep(mill, new Product("WB-25", "White bread flour, 25 kg", "WB", PackKind.Bag, 25_000) { PerPallet = 40, TareGrams = 180, PackedAs = "40 × 25 kg", PackGtin = "9521234002017", Label = new("3", "Ada", At) }, "Ada").Faults);
        KeepUnitNumbering.Keep(mill, new UnitNumbering("9521234") { First = 42 }, "Ada");
        mill.Record([
            new OpenPlace("g", "GAIN", PlaceKind.Gain), new OpenPlace("l", "L1", PlaceKind.PackingLine), new OpenPlace("p", "P-1", PlaceKind.Pallet, "40 × 25 kg", "WB"),
            new Move("m1", "GAIN", "L1", Mass.FromTonnes(1), At), new Move("m2", "L1", "P-1", Mass.FromTonnes(1), At),
        ], "Ada", "test");
        return data;
    }
}
