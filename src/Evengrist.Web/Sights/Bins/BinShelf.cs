using Evengrist.Bins;
using Evengrist.Bins.BestBin;
using Evengrist.Bins.Shape;
using Evengrist.Intake.Carrying;
using Evengrist.Records;
using Evengrist.Records.Intake;

namespace Evengrist.Web.Sights.Bins;

/// <summary>What is kept about bins beside their facts, the newest of each: shapes, pack factors, bands, and what a tonne is worth.</summary>
public sealed class BinShelf
{
    private readonly Dictionary<string, (Paper Paper, BinShape Shape)> shapes = new(StringComparer.OrdinalIgnoreCase);
    private readonly Dictionary<string, (Paper Paper, PackFactor Pack)> packs = new(StringComparer.OrdinalIgnoreCase);
    private readonly Dictionary<string, (Paper Paper, BinBand Band)> bands = new(StringComparer.OrdinalIgnoreCase);

    /// <summary>What a tonne is worth; null where nothing is kept.</summary>
    public BandValues? Values { get; private init; }

    /// <summary>What routes carry over into the next load.</summary>
    public CarryOverSpec CarryOver { get; private init; } = new();

    /// <summary>Reads the shelves. A paper that cannot be read counts as none; the page of its bin says so.</summary>
    public static BinShelf Of(Mill mill)
    {
        ArgumentNullException.ThrowIfNull(mill);
        var shelf = new BinShelf { Values = mill.Papers(BinPapers.Values).Newest(BinPapers.HouseValues) is { } paper && BinPapers.TryReadValues(paper.Json, out var values, out _) ? values : null, CarryOver = HouseRulesShelf.Of(mill).CarryOver };
        foreach (var kept in mill.Papers(BinPapers.Shape).All())
        {
            Keep(shelf.shapes, kept, BinPapers.TryReadShape(kept.Json, out var shape, out _), shape);
        }

        foreach (var kept in mill.Papers(BinPapers.Calibration).All())
        {
            Keep(shelf.packs, kept, BinPapers.TryReadCalibration(kept.Json, out var pack, out _), pack);
        }

        foreach (var kept in mill.Papers(BinPapers.Band).All())
        {
            Keep(shelf.bands, kept, BinPapers.TryReadBand(kept.Json, out var band, out _), band);
        }

        return shelf;
    }

    /// <summary>The shape of a bin; null where none is kept.</summary>
    public BinShape? ShapeOf(string bin) => shapes.TryGetValue(bin, out var kept) ? kept.Shape : null;

    /// <summary>The pack factor of a bin; the one from memory where none is kept.</summary>
    public PackFactor PackOf(string bin) => packs.TryGetValue(bin, out var kept) ? kept.Pack : PackFactor.FromMemory;

    /// <summary>The house band of a bin; null where none is kept.</summary>
    public BinBand? BandOf(string bin) => bands.TryGetValue(bin, out var kept) ? kept.Band : null;

    /// <summary>The papers kept about a bin, with what they are.</summary>
    public IEnumerable<(string What, Paper Paper)> PapersOf(string bin)
    {
        (string, Paper?)[] papers = [("shape", shapes.GetValueOrDefault(bin).Paper), ("pack factor", packs.GetValueOrDefault(bin).Paper), ("band", bands.GetValueOrDefault(bin).Paper)];
        return papers.Where(p => p.Item2 is not null).Select(p => (p.Item1, p.Item2!));
    }

    // Versions come in order, so that the newest stays.
    private static void Keep<T>(Dictionary<string, (Paper, T)> kept, Paper paper, bool reads, T? what)
        where T : class
    {
        if (reads && what is not null)
        {
            kept[paper.Code] = (paper, what);
        }
    }
}
