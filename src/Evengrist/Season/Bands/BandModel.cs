namespace Evengrist.Season.Bands;

/// <summary>Designs bands: the edges at which a harvest, parted into a number of bins, is worth most.</summary>
/// <remarks>
/// A dynamic programme over all edges: worth(k bands up to j) = max over i of worth(k − 1 up to i) + t·price(mean quality of i..j), in each class of falling number, then
/// over how the bins are shared among the classes. Exact for the prices given and the steps of the grid. Model: docs/model/season-bands.md.
/// </remarks>
public static class BandModel
{
    /// <summary>The best bands for 1, 2, … bins; as many as there are bins, or fewer where the grid holds no more.</summary>
    /// <param name="spec">The harvest.</param>
    /// <param name="pricePerTonne">What a t of a quality and moisture is worth, money: of its class, kept apart.</param>
    /// <exception cref="ArgumentException">The spec has faults: see <see cref="BandFaults"/>.</exception>
    public static IReadOnlyList<BandDesign> Design(BandSpec spec, Func<SeasonQuality, double, double> pricePerTonne)
    {
        ArgumentNullException.ThrowIfNull(pricePerTonne);
        var grid = Grid(spec);
        var classes = Enumerable.Range(0, grid.Classes).Select(c => ClassOf(grid, c, spec.Bins, pricePerTonne)).ToArray();
        var designs = new List<BandDesign>();
        for (var bins = Math.Max(1, grid.Classes); bins <= spec.Bins; bins++)
        {
            if (Share(classes, bins) is { } best)
            {
                designs.Add(new BandDesign([.. best.Cuts.SelectMany((cuts, c) => Bands(grid, c, cuts))], best.Worth));
            }
        }

        return designs;
    }

    /// <summary>The habit beside it: bands of even tonnes, by protein alone.</summary>
    public static BandDesign Even(BandSpec spec, int bins, Func<SeasonQuality, double, double> pricePerTonne)
    {
        ArgumentNullException.ThrowIfNull(pricePerTonne);
        ArgumentOutOfRangeException.ThrowIfLessThan(bins, 1);
        var grid = Grid(spec with { FallingNumberEdges = [] });
        var total = grid.Band(0, 0, grid.Cells, false)!.Tonnes;
        var cuts = new List<int> { 0 };
        for (var i = 1; i < grid.Cells && cuts.Count < bins; i++)
        {
            if ((grid.Band(0, 0, i, false)?.Tonnes ?? 0) >= total * cuts.Count / bins)
            {
                cuts.Add(i);
            }
        }

        cuts.Add(grid.Cells);
        HarvestBand[] bands = [.. Bands(grid, 0, [.. cuts])];
        return new BandDesign(bands, bands.Sum(b => b.Tonnes * pricePerTonne(b.Quality, b.MoisturePercent)));
    }

    /// <summary>A design with the one more edge of protein that is worth most; null where no band can be parted further. The year with it cannot cost more: two bands can be drawn as one.</summary>
    public static BandDesign? Split(BandSpec spec, BandDesign design, Func<SeasonQuality, double, double> pricePerTonne)
    {
        ArgumentNullException.ThrowIfNull(spec);
        ArgumentNullException.ThrowIfNull(design);
        ArgumentNullException.ThrowIfNull(pricePerTonne);
        var grid = Grid(design.Bands.Any(b => b.FallingNumberFrom > 0 || double.IsFinite(b.FallingNumberTo)) ? spec : spec with { FallingNumberEdges = [] });
        double Worth(HarvestBand band) => band.Tonnes * pricePerTonne(band.Quality, band.MoisturePercent);
        (double Gain, int At, HarvestBand Lower, HarvestBand Upper)? best = null;
        for (var n = 0; n < design.Bands.Count; n++)
        {
            var band = design.Bands[n];
            var (fnClass, first, last) = (grid.ClassFrom(band.FallingNumberFrom), grid.CellFrom(band.From), double.IsFinite(band.To) ? grid.CellFrom(band.To) : grid.Cells);
            for (var cut = first + 1; cut < last; cut++)
            {
                if (grid.Band(fnClass, first, cut, false) is { } lower && grid.Band(fnClass, cut, last, false) is { } upper && Worth(lower) + Worth(upper) - Worth(band) is var gain && !(gain <= best?.Gain))
                {
                    best = (gain, n, grid.Band(fnClass, first, cut, true)!, grid.Band(fnClass, cut, last, true)!);
                }
            }
        }

        return best is var (_, at, low, high) ? new BandDesign([.. design.Bands.Take(at), low, high, .. design.Bands.Skip(at + 1)], double.NaN) : null;
    }

    private static HarvestGrid Grid(BandSpec spec) =>
        BandFaults.Of(spec) is { Count: > 0 } faults ? throw new ArgumentException(string.Join(" ", faults), nameof(spec)) : new HarvestGrid(spec);

    private static IEnumerable<HarvestBand> Bands(HarvestGrid grid, int fnClass, int[] cuts) =>
        Enumerable.Range(0, cuts.Length - 1).Select(i => grid.Band(fnClass, cuts[i], cuts[i + 1], true)).OfType<HarvestBand>();

    // For each number of bands of one class of falling number, the best cuts and what it is worth.
    private static (double Worth, int[] Cuts)[] ClassOf(HarvestGrid grid, int fnClass, int most, Func<SeasonQuality, double, double> price)
    {
        var n = grid.Cells;
        var worth = new double[n + 1, n + 1];
        for (var i = 0; i < n; i++)
        {
            for (var j = i + 1; j <= n; j++)
            {
                worth[i, j] = grid.Band(fnClass, i, j, false) is { } band ? band.Tonnes * price(band.Quality, band.MoisturePercent) : 0;
            }
        }

        var count = Math.Min(most, n);
        var best = new double[count + 1, n + 1];
        var from = new int[count + 1, n + 1];
        for (var j = 1; j <= n; j++)
        {
            best[1, j] = worth[0, j];
        }

        for (var k = 2; k <= count; k++)
        {
            for (var j = k; j <= n; j++)
            {
                best[k, j] = double.NegativeInfinity;
                for (var i = k - 1; i < j; i++)
                {
                    if (best[k - 1, i] + worth[i, j] is var value && value > best[k, j])
                    {
                        (best[k, j], from[k, j]) = (value, i);
                    }
                }
            }
        }

        return [.. Enumerable.Range(1, count).Select(k =>
        {
            var cuts = new int[k + 1];
            for (var (at, left) = (n, k); left > 0; left--)
            {
                (cuts[left], at) = (at, from[left, at]);
            }

            return (best[k, n], cuts);
        })];
    }

    // Shares bins out among the classes of falling number: each gets at least one.
    private static (double Worth, int[][] Cuts)? Share((double Worth, int[] Cuts)[][] classes, int bins)
    {
        (double Worth, int[][] Cuts)? best = null;
        void Try(int c, int left, double worth, List<int[]> cuts)
        {
            if (c == classes.Length)
            {
                if (left == 0 && (best is null || worth > best.Value.Worth))
                {
                    best = (worth, [.. cuts]);
                }

                return;
            }

            for (var k = 1; k <= Math.Min(classes[c].Length, left - (classes.Length - c - 1)); k++)
            {
                Try(c + 1, left - k, worth + classes[c][k - 1].Worth, [.. cuts, classes[c][k - 1].Cuts]);
            }
        }

        Try(0, bins, 0, []);
        return best;
    }
}
