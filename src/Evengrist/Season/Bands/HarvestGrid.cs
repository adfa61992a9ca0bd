using Evengrist.Ledger;
using MathNet.Numerics.Distributions;

namespace Evengrist.Season.Bands;

/// <summary>A harvest laid out by what its trucks read, with what they truly are.</summary>
/// <remarks>
/// Of a district true protein is normal with its spread from truck to truck, a reading is the truth plus a normal error, so what reads r is truly
/// μ + σ²/(σ² + s²)·(r − μ) on the mean. Falling number is normal and independent of protein; its mean is taken over liquefaction numbers. Model: docs/model/season-bands.md.
/// </remarks>
internal sealed class HarvestGrid
{
    private readonly BandSpec spec;
    private readonly HarvestCell[][] upTo;

    public HarvestGrid(BandSpec spec)
    {
        this.spec = spec;
        Properties = [.. spec.Parts.SelectMany(p => p.Quality.Values.Keys).Distinct().Where(p => spec.Parts.Where(x => x.Tonnes > 0).All(x => x.Quality.TryGet(p, out _))).Order()];
        double Reach(int way) => spec.Parts.Where(p => p.Tonnes > 0).Select(p => Protein(p).Mean + (way * 4 * Read(p))).Aggregate(way < 0 ? Math.Min : Math.Max);
        var first = Math.Floor(Reach(-1) / spec.Step);
        var count = Math.Max(1, (int)(Math.Ceiling(Reach(1) / spec.Step) - first));
        Edges = [.. Enumerable.Range(0, count + 1).Select(i => (first + i) * spec.Step)];
        Classes = spec.FallingNumberEdges.Count + 1;
        upTo = [.. Enumerable.Range(0, Classes).Select(Cumulate)];
    }

    public Property[] Properties { get; }

    public double[] Edges { get; }

    public int Cells => Edges.Length - 1;

    public int Classes { get; }

    /// <summary>The cell that begins at an edge of protein; the first one for no edge.</summary>
    public int CellFrom(double edge) => double.IsFinite(edge) ? Enumerable.Range(0, Edges.Length).MinBy(i => Math.Abs(Edges[i] - edge)) : 0;

    /// <summary>The class of falling number that begins at an edge; the first one for none.</summary>
    public int ClassFrom(double edge) => edge > 0 ? spec.FallingNumberEdges.TakeWhile(e => e < edge - 1e-9).Count() + 1 : 0;

    /// <summary>The band of cells from one up to another, in a class of falling number; null where next to nothing is in it.</summary>
    public HarvestBand? Band(int fnClass, int from, int to, bool strays)
    {
        var cell = upTo[fnClass][to].Less(upTo[fnClass][from]);
        if (cell.Tonnes < 1e-6)
        {
            return null;
        }

        var values = new Dictionary<Property, SeasonValue>();
        for (var p = 0; p < Properties.Length; p++)
        {
            var basis = Properties[p] == Property.Protein ? spec.Basis : Properties[p].NeedsBasis() ? spec.Parts[0].Quality.Values[Properties[p]].Basis : default;
            values[Properties[p]] = new SeasonValue(SeasonScale.FromScale(Properties[p], cell.Sums[p] / cell.Weights[p], basis), 0, basis);
        }

        var (low, high) = (from == 0 ? double.NegativeInfinity : Edges[from], to == Cells ? double.PositiveInfinity : Edges[to]);
        return new HarvestBand(
            low, high, fnClass == 0 ? 0 : spec.FallingNumberEdges[fnClass - 1], fnClass == Classes - 1 ? double.PositiveInfinity : spec.FallingNumberEdges[fnClass],
            cell.Tonnes, cell.Moisture / cell.Tonnes, new SeasonQuality(values), strays ? Strays(fnClass, from, to, low, high) / cell.Tonnes : 0);
    }

    private (double Mean, double Spread) Protein(HarvestPart part)
    {
        var value = part.Quality.Values[Property.Protein];
        double On(double x) => SeasonScale.FromScale(Property.Protein, SeasonScale.OnScale(Property.Protein, x, value.Basis), spec.Basis);
        return (On(value.Value), On(value.Spread));
    }

    private double Read(HarvestPart part) => Math.Sqrt((Protein(part).Spread * Protein(part).Spread) + (spec.ReadingSpread * spec.ReadingSpread));

    private HarvestCell[] Cumulate(int fnClass)
    {
        var sums = new HarvestCell[Cells + 1];
        sums[0] = HarvestCell.Nothing(Properties.Length);
        var parts = spec.Parts.Where(p => p.Tonnes > 0).Select(p => (Part: p, Fn: FallingNumber(p, fnClass))).ToArray();
        for (var i = 0; i < Cells; i++)
        {
            sums[i + 1] = parts.Aggregate(sums[i], (sum, x) => sum.And(Cell(x.Part, x.Fn.Share, x.Fn.Liquefaction, i)));
        }

        return sums;
    }

    private HarvestCell Cell(HarvestPart part, double fnShare, double liquefaction, int i)
    {
        var ((mean, spread), read) = (Protein(part), Read(part));
        var (low, high) = (i == 0 ? double.NegativeInfinity : Edges[i], i == Cells - 1 ? double.PositiveInfinity : Edges[i + 1]);
        double share, at;
        if (read > 0)
        {
            var (a, b) = ((low - mean) / read, (high - mean) / read);
            share = Normal.CDF(0, 1, b) - Normal.CDF(0, 1, a);

            // The mean reading inside the cell, exactly: that of a normal cut on both sides.
            at = share > 1e-12 ? mean + (read * (Normal.PDF(0, 1, a) - Normal.PDF(0, 1, b)) / share) : (Edges[i] + Edges[i + 1]) / 2;
        }
        else
        {
            (share, at) = (mean >= low && mean < high ? 1 : 0, mean);
        }

        var truth = read > 0 ? mean + (spread * spread / (read * read) * (at - mean)) : mean;
        var tonnes = part.Tonnes * share * fnShare;
        var (sums, weights) = (new double[Properties.Length], new double[Properties.Length]);
        for (var p = 0; p < Properties.Length; p++)
        {
            weights[p] = tonnes * SeasonScale.Weight(Properties[p], part.MoisturePercent);
            sums[p] = weights[p] * (Properties[p] == Property.Protein ? SeasonScale.OnScale(Property.Protein, truth, spec.Basis)
                : Properties[p] == Property.FallingNumber ? liquefaction : SeasonScale.OnScale(Properties[p], part.Quality.Values[Properties[p]]));
        }

        return new HarvestCell(tonnes, tonnes * part.MoisturePercent, sums, weights);
    }

    // Which share of a district reads in a class of falling number, and the mean liquefaction number of that: by steps of a fortieth of the spread's reach.
    private (double Share, double Liquefaction) FallingNumber(HarvestPart part, int fnClass)
    {
        if (!part.Quality.TryGet(Property.FallingNumber, out var value))
        {
            return (1, double.NaN);
        }

        double On(double fn) => SeasonScale.OnScale(Property.FallingNumber, Math.Max(62, fn), default);
        if (value.Spread <= 0 && spec.FallingNumberReadingSpread <= 0)
        {
            return (Holds(value.Value, fnClass), On(value.Value));
        }

        var (share, sum, all) = (0.0, 0.0, 0.0);
        const int steps = 400;
        for (var i = 0; i < steps; i++)
        {
            var z = -5 + (10 * (i + 0.5) / steps);
            var fn = value.Value + (z * value.Spread);
            var weight = Normal.PDF(0, 1, z);
            var reads = weight * Holds(fn, fnClass);
            (share, sum, all) = (share + reads, sum + (reads * On(fn)), all + weight);
        }

        return (share / all, share > 0 ? sum / share : On(value.Value));
    }

    // The chance that a truck of a true falling number reads in a class.
    private double Holds(double fn, int fnClass)
    {
        double Below(double edge) => spec.FallingNumberReadingSpread > 0 ? Normal.CDF(0, 1, (edge - fn) / spec.FallingNumberReadingSpread) : fn < edge ? 1 : 0;
        return (fnClass == Classes - 1 ? 1 : Below(spec.FallingNumberEdges[fnClass])) - (fnClass == 0 ? 0 : Below(spec.FallingNumberEdges[fnClass - 1]));
    }

    private double Strays(int fnClass, int from, int to, double low, double high)
    {
        var strays = 0.0;
        for (var i = from; i < to; i++)
        {
            foreach (var part in spec.Parts.Where(p => p.Tonnes > 0))
            {
                var ((mean, spread), read) = (Protein(part), Read(part));
                var cell = Cell(part, FallingNumber(part, fnClass).Share, 0, i);
                var truth = read > 0 ? mean + (spread * spread / (read * read) * (((Edges[i] + Edges[i + 1]) / 2) - mean)) : mean;
                var own = read > 0 ? spread * spec.ReadingSpread / read : 0;
                strays += cell.Tonnes * (own > 0 ? Normal.CDF(0, 1, (low - truth) / own) + 1 - Normal.CDF(0, 1, (high - truth) / own) : 0);
            }
        }

        return strays;
    }
}
