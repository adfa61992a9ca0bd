using MathNet.Numerics.Distributions;

namespace Evengrist.Bins.BestBin;

/// <summary>Ranks the bins that can take a load. Model: docs/model/best-bin.md.</summary>
public static class BestBinModel
{
    /// <summary>Every bin that can take the load, best first, and every other one with why not.</summary>
    /// <remarks>Order: bins to whose band the load belongs, bins without a band, the rest; within each by what a tonne is worth to the year where that is known (what lies within one standard uncertainty of the best counts as the best, and then the surer band comes first) and by money a tonne where not, then purity after, chance, room, code.</remarks>
    /// <param name="load">The load.</param>
    /// <param name="bins">All bins.</param>
    /// <param name="value">What a tonne in a bin is worth; null where nothing is known, and then no money is shown.</param>
    /// <param name="currency">Currency of the value.</param>
    /// <param name="year">What the load is worth to the year in a bin; null before there is a plan.</param>
    public static BestBinOutcome Rank(TruckLoad load, IReadOnlyList<BinCandidate> bins, ValueOfTonne? value, string currency = "", YearWorth? year = null)
    {
        ArgumentNullException.ThrowIfNull(load);
        ArgumentNullException.ThrowIfNull(bins);
        if (load.Faults() is { Count: > 0 } faults)
        {
            return new NoBin(faults, []);
        }

        InfeasibleBin[] infeasible = [.. bins.Select(b => new InfeasibleBin(b.Bin, [.. WhyNot(load, b)])).Where(b => b.Reasons.Count > 0).OrderBy(b => b.Bin, StringComparer.Ordinal)];
        var feasible = bins.Where(b => !infeasible.Any(i => i.Bin == b.Bin)).ToArray();
        return feasible.Length == 0
            ? new NoBin(["No bin can take this load: set it aside, or clear one of the reasons below."], infeasible)
            : new BinsRanked([.. Ordered([.. feasible.Select(b => (b.Bin, One(load, b, value, currency, year)))], year is not null)], infeasible);
    }

    /// <summary>Chance, 0 to 1, that a load belongs to a band: Φ((to − p)/u) − Φ((from − p)/u) for protein; falling number and test weight as read.</summary>
    public static double ChanceOf(TruckLoad load, BinBand band)
    {
        ArgumentNullException.ThrowIfNull(load);
        ArgumentNullException.ThrowIfNull(band);
        double Below(double edge) => load.ProteinUncertainty > 0 ? Normal.CDF(0, 1, (edge - load.ProteinPercentAt12) / load.ProteinUncertainty) : load.ProteinPercentAt12 < edge ? 1 : 0;
        return band.Holds((band.ProteinFrom + band.ProteinTo) / 2, load.FallingNumber, load.TestWeight) ? Math.Max(0, Below(band.ProteinTo) - Below(band.ProteinFrom)) : 0;
    }

    private static IEnumerable<RankedBin> Ordered((string Code, RankedBin Ranked)[] bins, bool byYear)
    {
        var best = bins.Select(b => b.Ranked.YearPerTonne).MaxBy(f => f?.Value);
        decimal Money(RankedBin bin) => !byYear ? Math.Round(bin.MoneyPerTonne?.Value ?? 0m, 2)
            : bin.YearPerTonne is not { } worth ? decimal.MinValue
            : best!.Value - worth.Value <= (worth.StandardUncertainty ?? 0m) ? best.Value : Math.Round(worth.Value, 2);
        return bins.OrderBy(b => b.Ranked.Standing).ThenByDescending(b => Money(b.Ranked))
            .ThenByDescending(b => byYear ? b.Ranked.Chance?.Value ?? 0m : 0m).ThenByDescending(b => b.Ranked.PurityAfter?.Value ?? 0m).ThenByDescending(b => b.Ranked.Chance?.Value ?? 0m)
            .ThenByDescending(b => b.Ranked.RoomLeft?.Value ?? decimal.MaxValue).ThenBy(b => b.Code, StringComparer.Ordinal).Select(b => b.Ranked);
    }

    private static IEnumerable<string> WhyNot(TruckLoad load, BinCandidate bin)
    {
        if (bin.Barred is { } barred)
        {
            yield return barred;
        }

        if (bin.Class.Length > 0 && bin.Class != load.Class && bin.Band?.AlsoClasses.Contains(load.Class) != true)
        {
            yield return $"it is for {bin.Class}, the load is {load.Class}";
        }

        if (!bin.IsReachable)
        {
            yield return "no route leads to it from the pit";
        }

        if (bin.CapacityTonnes - bin.StockTonnes is { } room && room < load.Tonnes)
        {
            yield return FormattableString.Invariant($"room for {Math.Max(0, room):#,##0.0} t, the load is {load.Tonnes:#,##0.0} t");
        }
    }

    private static RankedBin One(TruckLoad load, BinCandidate bin, ValueOfTonne? value, string currency, YearWorth? year)
    {
        double? chance = bin.Band is { } band ? ChanceOf(load, band) : null;
        var before = bin.StockTonnes > 0 ? bin.ProteinPercentAt12 : null;
        var after = MeanProtein(load, bin, load.ProteinPercentAt12);
        var standing = chance switch { null => BandStanding.NoBand, >= 0.5 => BandStanding.Belongs, _ => BandStanding.Stranger };
        var purityAfter = chance is null ? (double?)null : bin.StockTonnes <= 0 ? chance : bin.Purity is { } purity ? ((purity * bin.StockTonnes) + (chance.Value * load.Tonnes)) / (bin.StockTonnes + load.Tonnes) : null;
        var figures = new BestBinFigures(load, bin, currency);
        return new RankedBin(bin.Bin, standing)
        {
            Chance = figures.Chance(chance),
            PurityBefore = figures.Purity("Purity now", bin.StockTonnes > 0 && bin.Band is not null ? bin.Purity : null, "Share of what was read in the bin that lies in its band."),
            PurityAfter = figures.Purity("Purity with the load", purityAfter, "Purity now and the load's chance, weighted by tonnes."),
            RoomLeft = figures.Room(),
            ProteinBefore = BestBinFigures.Protein("Protein now", before, "Mean by dry matter of what was read."),
            ProteinAfter = BestBinFigures.Protein("Protein with the load", after, "Mean by dry matter of the bin and the load."),
            FallingNumberAfter = figures.Falling(),
            MoneyPerTonne = figures.Money(Money(load, bin, value, load.ProteinPercentAt12), load.ProteinUncertainty > 0 ? Slope(load, bin, value) * load.ProteinUncertainty : null),
            YearPerTonne = figures.Year(year?.Invoke(bin.Bin)),
            Layer = bin.StockTonnes > 0 ? FormattableString.Invariant($"{load.Tonnes:#,##0.0} t on top of {bin.StockTonnes:#,##0.0} t") : FormattableString.Invariant($"{load.Tonnes:#,##0.0} t on the bare floor"),
            CarryOver = bin.CarryOver is { } carried ? FormattableString.Invariant($"about {carried.Kilograms:0.#} kg of {carried.Of} carried over from the last load on this route") : "",
            Why = Why(standing, chance, bin, before, after),
        };
    }

    // Null where what lies there was not read.
    private static double? MeanProtein(TruckLoad load, BinCandidate bin, double protein)
    {
        if (bin.StockTonnes <= 0 || bin.ProteinPercentAt12 is not { } lies)
        {
            return bin.StockTonnes <= 0 ? protein : null;
        }

        var (there, comes) = (bin.StockTonnes * bin.DryShare, load.Tonnes * load.DryShare);
        return ((there * lies) + (comes * protein)) / (there + comes);
    }

    /// <summary>Money for the whole load: what the bin's tonnes gain, and what the load's gain against being kept by themselves.</summary>
    private static (double OfBin, double OfLoad)? Money(TruckLoad load, BinCandidate bin, ValueOfTonne? value, double protein)
    {
        if (value is null || MeanProtein(load, bin, protein) is not { } mean)
        {
            return null;
        }

        var after = value(bin, mean);
        var before = bin.StockTonnes > 0 ? value(bin, bin.ProteinPercentAt12!.Value) : after;
        return after is { } a && before is { } b && value(bin, protein) is { } alone ? (bin.StockTonnes * (a - b), load.Tonnes * (a - alone)) : null;
    }

    private static double? Slope(TruckLoad load, BinCandidate bin, ValueOfTonne? value)
    {
        const double Step = 0.05;
        return Money(load, bin, value, load.ProteinPercentAt12 + Step) is var (ofBin, ofLoad) && Money(load, bin, value, load.ProteinPercentAt12 - Step) is var (lessOfBin, lessOfLoad)
            ? Math.Abs(ofBin + ofLoad - lessOfBin - lessOfLoad) / (2 * Step) : null;
    }

    private static string Why(BandStanding standing, double? chance, BinCandidate bin, double? before, double? after) => standing switch
    {
        BandStanding.Belongs => FormattableString.Invariant($"{100 * chance!.Value:0} % sure that the load belongs to its band ({bin.Band!.Words})."),
        BandStanding.NoBand when bin.StockTonnes > 0 && before is null => "It has no band, and nothing was read of what lies in it.",
        BandStanding.NoBand when before is null => "It is empty and has no band: the load would lie by itself.",
        BandStanding.NoBand => FormattableString.Invariant($"It has no band; its protein would go from {before:0.00} to {after:0.00} %."),
        _ => FormattableString.Invariant($"Only {100 * chance!.Value:0} % sure that the load belongs to its band ({bin.Band!.Words}): it would dilute it."),
    };
}
