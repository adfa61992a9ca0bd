namespace Evengrist.Bench.Season.Backtest;

/// <summary>The bin that is being filled with each kind of wheat, the lowest first.</summary>
internal sealed class OpenBins(int kinds)
{
    private readonly int[] open = [.. Enumerable.Range(0, kinds)];

    public int Count => open.Length;

    public int this[int kind] => open[kind];

    /// <summary>Where a bin is full, the next empty one takes its place; where there is none, the kind that lies nearest shares its own.</summary>
    public void Refresh(Store store)
    {
        for (var kind = 0; kind < open.Length; kind++)
        {
            if (!store.HasRoom(open[kind], SimulatedYear.TruckTonnes))
            {
                open[kind] = Next(kind, store);
            }
        }
    }

    private int Next(int kind, Store store)
    {
        var empty = Enumerable.Range(0, Store.Count).Where(b => store.Bins[b].OpeningTonnes <= 0 && !open.Contains(b)).ToArray();
        return empty.Length > 0 ? empty[0]
            : Enumerable.Range(0, open.Length).OrderBy(n => Math.Abs(n - kind)).Select(n => open[n]).Concat(Enumerable.Range(0, Store.Count)).First(b => store.HasRoom(b, SimulatedYear.TruckTonnes));
    }
}
