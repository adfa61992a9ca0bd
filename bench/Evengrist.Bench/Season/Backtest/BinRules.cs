using Evengrist.Ledger;
using Evengrist.Season.Bands;

namespace Evengrist.Bench.Season.Backtest;

/// <summary>Into which bin a truck goes.</summary>
internal interface IBinRule
{
    /// <summary>A day of the harvest begins.</summary>
    void Begin(int day, Store store);

    /// <summary>The bin for a truck.</summary>
    int Of(Truck truck, Store store);
}

/// <summary>The habit: the nearest empty bin, filled up before the next one; one heap for everything, or a few by protein, of even tonnes as expected.</summary>
internal sealed class NearestBin(SimulatedYear year, int heaps) : IBinRule
{
    private readonly OpenBins open = new(heaps);
    private readonly double[] upTo = [.. BandModel.Even(new Forecast(year).Harvest(heaps), heaps, (_, _) => 0).Bands.Select(b => b.To)];

    public void Begin(int day, Store store)
    {
    }

    public int Of(Truck truck, Store store)
    {
        open.Refresh(store);
        return open[Array.FindIndex(upTo, to => truck.Reads.Quality.Values[Property.Protein].Value < to)];
    }
}
