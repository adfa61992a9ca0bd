using System.Text;
using CsCheck;
using Evengrist.Plant;
using Evengrist.Plant.Imports;
using Evengrist.Plant.Tables;

namespace Evengrist.Edge.Tests.Plant;

/// <summary>Nothing a file contains can crash the reading or come in half.</summary>
public sealed class HostileTests
{
    private static readonly ImportKind[] Kinds = Enum.GetValues<ImportKind>();

    private static readonly string[] Words = ["code,kind\n", "a;b\n", "\"", "=1+1", "1e308", "\0", "#", "\r", "\u202E", "[", "]", ",", "from,to,mass [kg],at [UTC]\n"];

    private static readonly (byte[] Bytes, ImportKind Kind)[] Good =
        SmallMill.Files.Select(f => (File.ReadAllBytes(Repository.Sample("small-mill", f.File)), f.Kind)).ToArray();

    [Fact]
    public void Read_AnyBytes_GivesFaultsAndNeverThrows() =>
        Gen.Select(Gen.Byte.Array[0, 400], Gen.Int[0, Kinds.Length - 1]).Sample((bytes, kind) => WholeOrFaults(bytes, Kinds[kind]), iter: 2000);

    [Fact]
    public void Read_AnyText_GivesFaultsAndNeverThrows() =>
        Gen.Select(Gen.OneOf(Gen.String, Gen.OneOf(Words.Select(Gen.Const).ToArray())).Array[0, 30], Gen.Int[0, Kinds.Length - 1])
            .Sample((parts, kind) => WholeOrFaults(Encoding.UTF8.GetBytes(string.Concat(parts)), Kinds[kind]), iter: 2000);

    [Fact]
    public void Read_GoodFileDamaged_GivesAllOrFaultsAndNeverThrows() =>
        Gen.Select(Gen.Int[0, Good.Length - 1], Gen.Select(Gen.Double[0, 1], Gen.Byte, Gen.Int[0, 3]).Array[1, 6]).Sample((file, damages) =>
        {
            var bytes = Good[file].Bytes.ToList();
            foreach (var (where, value, how) in damages.TakeWhile(_ => bytes.Count > 0))
            {
                var at = (int)(where * (bytes.Count - 1));
                switch (how)
                {
                    case 0: bytes[at] = value; break;
                    case 1: bytes.Insert(at, value); break;
                    case 2: bytes.RemoveAt(at); break;
                    default: bytes.RemoveRange(at, Math.Min(value, bytes.Count - at)); break;
                }
            }

            return WholeOrFaults(bytes.ToArray(), Good[file].Kind);
        }, iter: 3000);

    [Fact]
    public void Read_OneBadCell_BringsNothingOfTheFile()
    {
        var text = Encoding.UTF8.GetString(Good[3].Bytes).Replace("M-19,L-0001,FARM,2400", "M-19,L-0001,FARM,-2400", StringComparison.Ordinal);
        var parsed = SmallMill.Read(text, ImportKind.Movements);
        Assert.False(parsed.Ok);
        Assert.Throws<InvalidOperationException>(() => parsed.Value);
    }

    [Fact]
    public void Read_BeyondALimit_IsRefusedAsAWhole()
    {
        const string Heading = "code,kind\n";
        Fault Only(string text, Limits limits) => Assert.Single(SmallMill.Read(text, ImportKind.Bins, new ImportOptions { Limits = limits }).Faults);
        Assert.Contains("rows", Only(Heading + "A,bin\nB,bin\nC,bin\n", new Limits { Rows = 2 }).Expected, StringComparison.Ordinal);
        Assert.Contains("MiB", Only(Heading + "A,bin\n", new Limits { Bytes = 10 }).Expected, StringComparison.Ordinal);
        Assert.Contains("columns", Only("a,b,c\n", new Limits { Columns = 2 }).Expected, StringComparison.Ordinal);
        Assert.Contains("characters", Only(Heading + new string('A', 500) + ",bin\n", new Limits()).Expected, StringComparison.Ordinal);
    }

    [Fact]
    public void Read_MoreFaultsThanListed_SaysSo()
    {
        var text = "code,kind\n" + string.Concat(Enumerable.Range(0, 50).Select(i => $"P{i},nonsense{i}\n"));
        var faults = SmallMill.Read(text, ImportKind.Bins, new ImportOptions { Limits = new Limits { Faults = 10 } }).Faults;
        Assert.Equal(11, faults.Count);
        Assert.Contains("not looked at", faults[^1].Expected, StringComparison.Ordinal);
    }

    [Fact]
    public void Show_HostileText_HoldsNothingATerminalObeys() =>
        Assert.Equal("\\u001b[2J\\u202eabc\\u0000", Fault.Show("\u001b[2J\u202Eabc\0"));

    private static bool WholeOrFaults(byte[] bytes, ImportKind kind)
    {
        var parsed = Import.Read(new MemoryStream(bytes), kind, new ImportOptions());
        return parsed.Ok ? parsed.Value.Drafts.Count > 0 && parsed.Value.Drafts.Count == parsed.Value.Rows.Count : parsed.Faults.Count > 0 && parsed.Faults.All(f => !f.ToString().Any(char.IsControl));
    }
}
