namespace Evengrist.Bench.Genealogy.Graph;

/// <summary>Trucks into bins and bins into runs.</summary>
internal sealed class WheatSide(GenealogyGraph graph)
{
    private readonly GenealogySpec spec = graph.Spec;
    private readonly CounterRandom random = new(graph.Spec.Seed);
    private readonly WheatBin[] bins = [.. Enumerable.Range(0, graph.Spec.Bins).Select(_ => new WheatBin())];
    private readonly List<(int Layer, double Kg)> taken = [];
    private int truckNext;
    private int layerNext = graph.Spec.Trucks;

    public void Add()
    {
        for (var truck = 0; truck < spec.Trucks; truck++)
        {
            graph.Rows.Add([], []);
        }

        graph.Layer0 = graph.Rows.Count;
        for (var truck = 0; truck < spec.Trucks; truck++)
        {
            for (var part = 0; part < (IsSplit(truck) ? 2 : 1); part++)
            {
                graph.Rows.Add([truck], [1.0]);
            }
        }

        graph.Run0 = graph.Rows.Count;
        for (var run = 0; run < spec.Runs; run++)
        {
            FillBefore(run);
            AddRun(run);
        }
    }

    private bool IsSplit(int truck) => random.U(3, truck) < 0.05;

    private void FillBefore(int run)
    {
        var end = Math.Min(spec.Trucks, (long)spec.Trucks * (run + 160) / spec.Runs);
        for (; truckNext < end; truckNext++)
        {
            var bin = (int)Math.Floor(spec.Bins * random.U(2, truckNext / 25));
            var kg = graph.TruckKg(truckNext);
            if (IsSplit(truckNext))
            {
                bins[bin].Fill(layerNext++, kg / 2);
                bins[(bin + 1) % spec.Bins].Fill(layerNext++, kg / 2);
            }
            else
            {
                bins[bin].Fill(layerNext++, kg);
            }
        }
    }

    private void AddRun(int run)
    {
        var chosen = Enumerable.Range(0, spec.Bins)
            .OrderByDescending(bin => bins[bin].Kg).ThenBy(bin => bin).Take(8)
            .OrderBy(bin => random.U(4, (long)spec.Bins * run + bin)).Take(GenealogySpec.DrawnBins).ToArray();
        ReadOnlySpan<double> shares = [0.4, 0.3, 0.2, 0.1];
        taken.Clear();
        for (var i = 0; i < chosen.Length; i++)
        {
            bins[chosen[i]].Draw(shares[i] * GenealogySpec.RunKg, taken);
        }

        if (taken.Count == 0)
        {
            throw new ArgumentException(
                $"run {run} finds all four of its bins empty: too few trucks ({spec.Trucks}) for {spec.Bins} bins; take a larger --scale or fewer --bins");
        }

        var kg = taken.Sum(part => part.Kg);
        graph.RunKg[run] = kg;
        graph.Rows.Add(taken.Select(part => part.Layer).ToArray(), taken.Select(part => part.Kg / kg).ToArray());
    }
}
