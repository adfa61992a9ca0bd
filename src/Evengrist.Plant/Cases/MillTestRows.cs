using Evengrist.Milling.Learning;
using Evengrist.Milling.OnPaper;
using Evengrist.Quantities;
using NodaTime;

namespace Evengrist.Plant.Cases;

/// <summary>The rows of one test as they come.</summary>
internal sealed class MillTestRows
{
    private static readonly string[] Whole = ["by", "flow", "moisture", "wheat ash", "wheat protein", "basis", "hardness", "falling number", "sheet", "remark"];
    private static readonly string[] Kinds = ["release", "sieve", "stream", "gap", "air", "cloth"];
    private readonly FileLine first;
    private readonly string unit;
    private readonly int sheet;
    private readonly Basis basis = Basis.At14;
    private readonly PosedWheat wheat;
    private readonly Dictionary<string, double> releases = new(StringComparer.Ordinal), gaps = new(StringComparer.Ordinal), airs = new(StringComparer.Ordinal);
    private readonly List<SieveReading> sieves = [];
    private readonly List<PosedStream> streams = [];
    private readonly List<ClothChange> cloths = [];

    public MillTestRows(FileLine first, Instant taken, string unit, int newest)
    {
        (this.first, TakenAt, this.unit) = (first, taken, unit);
        if (first["basis"].Length > 0 && !Basis.TryParse(first["basis"], out basis))
        {
            first.Fault("basis", "dry, 12mb, 14mb or another");
        }

        var version = first.Number("sheet") ?? newest;
        if (version is not (>= 1 and <= 100_000) || version != Math.Floor(version))
        {
            first.Fault("sheet", "the number of a version, such as 1");
            version = newest;
        }

        sheet = (int)version;
        wheat = new PosedWheat(first.Needed("flow"), first.Needed("moisture"), first.Needed("wheat ash"), first.Needed("wheat protein"), basis);
        wheat = wheat with { Hardness = first.Number("hardness") ?? wheat.Hardness, FallingNumber = first.Number("falling number") ?? wheat.FallingNumber };
    }

    public Instant TakenAt { get; }

    public int Line => first.Line;

    /// <summary>What is said of the test again in a later row is the same, or a fault.</summary>
    public void Agree(FileLine line)
    {
        foreach (var heading in Whole.Where(h => line[h].Length > 0 && line[h] != first[h]))
        {
            line.Fault(heading, $"\"{first[heading]}\" as in line {Line}, or nothing: it is said of the test as a whole");
        }
    }

    public void Add(FileLine line)
    {
        var (kind, at) = (line["kind"].ToLowerInvariant(), line["at"]);
        if (!Kinds.Contains(kind))
        {
            line.Fault("kind", string.Join(", ", Kinds[..^1]) + " or cloth");
            return;
        }

        if (at.Length == 0)
        {
            line.Fault("at", "the code of a passage or a stream on the flow sheet");
            return;
        }

        var value = line.Needed("value");
        var once = kind switch
        {
            "release" => releases.TryAdd(at, value),
            "gap" => gaps.TryAdd(at, value),
            "air" => airs.TryAdd(at, value),
            _ => true,
        };
        if (!once)
        {
            line.Fault("at", $"the {kind} of {at} once in a test: give the mean");
        }

        switch (kind)
        {
            case "sieve": sieves.Add(new SieveReading(at, line.Needed("opening"), value)); break;
            case "stream": streams.Add(new PosedStream(at, value) { AshPercent = line.Number("ash"), ProteinPercent = line.Number("protein") }); break;
            case "cloth": cloths.Add(new ClothChange(at, line.Needed("opening"), value)); break;
        }
    }

    public MillTestPaper Paper() => new(unit, TakenAt, first["by"], sheet, wheat)
    {
        Basis = basis, Remark = first["remark"], Releases = releases, Sieves = sieves, Streams = streams,
        Set = new SheetChange { GapMicrometres = gaps, AirMetresPerSecond = airs, Cloths = cloths },
    };
}
