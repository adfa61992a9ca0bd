using Evengrist.Ledger;

namespace Evengrist.Season.Futures;

/// <summary>A plan laid out by number, so that a thousand futures of it are quick to mill.</summary>
/// <remarks>Model: docs/model/season-promise.md.</remarks>
public sealed class FutureFrame
{
    /// <summary>Lays a plan out.</summary>
    /// <exception cref="ArgumentException">The spec has faults: see <see cref="FuturesFaults"/>.</exception>
    public FutureFrame(FuturesSpec spec)
    {
        ArgumentNullException.ThrowIfNull(spec);
        if (FuturesFaults.Of(spec) is { Count: > 0 } faults)
        {
            throw new ArgumentException(string.Join(" ", faults), nameof(spec));
        }

        Spec = spec;
        Wheats = [.. Season.AllWheats];
        Properties = [.. Season.Flours.SelectMany(f => f.Limits).Select(l => l.What).Distinct().Order()];
        ByDry = [.. Properties.Select(p => SeasonScale.Weight(p, 50) < 1)];
        (WheatIndex, FlourIndex) = (Numbers(Wheats.Select(w => w.Code)), Numbers(Season.Flours.Select(f => f.Code)));
        var periods = Season.Periods.Count;
        Use = Table(spec.Plan.Uses, periods);
        Stock = Rows(Wheats.Count, periods);
        Bought = Rows(Wheats.Count, periods);
        FlourStock = Rows(Season.Flours.Count, periods);
        Worth = Rows(Wheats.Count, periods);
        foreach (var row in spec.Plan.Stocks)
        {
            Stock[WheatIndex[row.Wheat]][row.Period] = row.Tonnes;
        }

        foreach (var row in spec.Plan.Purchases)
        {
            Bought[WheatIndex[row.Offer]][row.Period] += row.Tonnes;
        }

        foreach (var row in spec.Plan.Flours)
        {
            FlourStock[FlourIndex[row.Flour]][row.Period] = row.StockTonnes;
        }

        foreach (var row in spec.Plan.Duals!.Wheats)
        {
            Worth[WheatIndex[row.Wheat]][row.Period] = Math.Max(0, row.PerTonne);
        }

        Standing = [.. Season.Flours.Select(f => FrameStores.Of(spec, f))];
        UnitOf = [.. Season.Flours.Select(f => Season.Units.Select(u => u.Code).ToList().IndexOf(f.Unit))];
        HourWorth = Rows(Season.Units.Count, periods);
        foreach (var row in spec.Plan.Duals.Units)
        {
            HourWorth[Season.Units.Select(u => u.Code).ToList().IndexOf(row.Unit)][row.Period] = Math.Max(0, row.PerHour);
        }

        Yield = [.. Wheats.Select(w => Season.Flours.Select(f => SeasonYield.Allows(f, w) ? SeasonYield.Of(w, f) : double.NaN).ToArray())];
        Limits = [.. Season.Flours.Select(f => FrameLimits.Of(this, f))];
        FollowCost = FutureRule.Follow * Worth.SelectMany(w => w).DefaultIfEmpty(0).Max();
        Dearest = [.. Season.Flours.Select(f => f.UnmetPricePerTonne * FutureRule.Defence)];
        Value = new FrameValue(this);
    }

    /// <summary>What it was laid out from.</summary>
    public FuturesSpec Spec { get; }

    /// <summary>The season planned.</summary>
    public SeasonSpec Season => Spec.Plan.Spec;

    /// <summary>Wheats in store or to come, then those on offer.</summary>
    public IReadOnlyList<SeasonWheat> Wheats { get; }

    /// <summary>Properties that any flour has a limit on.</summary>
    public IReadOnlyList<Property> Properties { get; }

    internal int Periods => Season.Periods.Count;

    /// <summary>Whether each property averages by dry matter.</summary>
    internal bool[] ByDry { get; }

    internal Dictionary<string, int> WheatIndex { get; }

    internal Dictionary<string, int> FlourIndex { get; }

    internal double[][][] Use { get; }

    internal double[][] Stock { get; }

    internal double[][] Bought { get; }

    internal double[][] FlourStock { get; }

    /// <summary>Flour that has to lie in store at the end of a period because the unit then stands still, t: see <see cref="FrameStores"/>.</summary>
    internal double[][] Standing { get; }

    internal double[][] Worth { get; }

    internal int[] UnitOf { get; }

    internal double[][] HourWorth { get; }

    internal double[][] Yield { get; }

    internal FrameLimit[][] Limits { get; }

    internal double FollowCost { get; }

    internal double[] Dearest { get; }

    internal FrameValue Value { get; }

    /// <summary>Number of the first offer among the wheats.</summary>
    internal int FirstOffer => Season.Wheats.Count;

    /// <summary>The values of a quality, each on its scale, in the order of <see cref="Properties"/>; NaN where one is not known.</summary>
    public double[] OnScale(SeasonQuality quality)
    {
        ArgumentNullException.ThrowIfNull(quality);
        return [.. Properties.Select(p => quality.TryGet(p, out var value) ? SeasonScale.OnScale(p, value) : double.NaN)];
    }

    private static double[][] Rows(int count, int periods) => [.. Enumerable.Range(0, count).Select(_ => new double[periods])];

    private static Dictionary<string, int> Numbers(IEnumerable<string> codes) => codes.Select((code, i) => (code, i)).ToDictionary(x => x.code, x => x.i, StringComparer.Ordinal);

    private double[][][] Table(IEnumerable<PlannedUse> uses, int periods)
    {
        double[][][] table = [.. Wheats.Select(_ => Rows(Season.Flours.Count, periods))];
        foreach (var use in uses)
        {
            table[WheatIndex[use.Wheat]][FlourIndex[use.Flour]][use.Period] += use.Tonnes;
        }

        return table;
    }
}
