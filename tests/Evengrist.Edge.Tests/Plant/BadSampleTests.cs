using Evengrist.Plant.Imports;

namespace Evengrist.Edge.Tests.Plant;

/// <summary>Each bad file says exactly what <c>samples/bad/what-is-said.txt</c> writes down for it.</summary>
public sealed class BadSampleTests
{
    private static readonly Dictionary<string, string[]> Written = Read();

    public static TheoryData<string> Files => new(Written.Keys);

    [Theory]
    [MemberData(nameof(Files))]
    public void Import_BadFile_SaysWhatIsWrittenDown(string headline)
    {
        var (file, kind) = headline.Split(" as ") is [var f, var k] ? (f, Enum.Parse<ImportKind>(k, ignoreCase: true)) : throw new InvalidDataException(headline);
        var parsed = SmallMill.ReadFile(Repository.Sample("bad", file), kind);
        var faults = parsed.Ok ? Rehearsal.Of(SmallMill.Book(), parsed.Value, "Ada", SmallMill.Recorded) : parsed.Faults;
        Assert.Equal(Written[headline], faults.Select(f => f.ToString()));
    }

    [Fact]
    public void Samples_EveryBadFile_IsWrittenDown() => Assert.Equal(
        Directory.GetFiles(Repository.Sample("bad")).Select(Path.GetFileName).Where(f => f != "what-is-said.txt").Order(StringComparer.Ordinal),
        Written.Keys.Select(k => k.Split(" as ")[0]).Distinct().Order(StringComparer.Ordinal));

    private static Dictionary<string, string[]> Read()
    {
        var blocks = new Dictionary<string, List<string>>();
        foreach (var line in File.ReadLines(Repository.Sample("bad", "what-is-said.txt")).Where(l => l.Length > 0 && l[0] != '#'))
        {
            if (line.StartsWith("  ", StringComparison.Ordinal))
            {
                blocks.Last().Value.Add(line.Trim());
            }
            else
            {
                blocks.Add(line, []);
            }
        }

        return blocks.ToDictionary(b => b.Key, b => b.Value.ToArray());
    }
}
