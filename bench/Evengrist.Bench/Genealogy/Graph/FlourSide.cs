namespace Evengrist.Bench.Genealogy.Graph;

/// <summary>Runs into flour streams, streams into blends, blends into packed lots.</summary>
internal sealed class FlourSide(GenealogyGraph graph)
{
    private const int Streams = GenealogySpec.Streams;
    private const int Products = GenealogySpec.Products;
    private readonly GenealogySpec spec = graph.Spec;
    private readonly CounterRandom random = new(graph.Spec.Seed);

    public void Add()
    {
        for (var run = 0; run < spec.Runs; run++)
        {
            AddStreams(run);
        }

        for (var run = 0; run < spec.Runs; run++)
        {
            AddBlends(run);
        }

        for (var pack = 0; pack < spec.Packs; pack++)
        {
            AddPack(pack);
        }
    }

    private void AddStreams(int run)
    {
        var parent = graph.Run0 + run;
        for (var stream = 0; stream < Streams; stream++)
        {
            if (run == 0)
            {
                graph.Rows.Add([parent], [1.0]);
            }
            else
            {
                graph.Rows.Add([parent, parent - 1], [0.85, 0.15]);
            }
        }
    }

    private void AddBlends(int run)
    {
        var into = new List<(int Stream, double Kg)>[Products];
        for (var product = 0; product < Products; product++)
        {
            into[product] = [];
        }

        for (var stream = 0; stream < Streams; stream++)
        {
            var kg = graph.RunKg[run] * (Streams - stream) / 820;
            var draw = (long)Streams * (run / 28) + stream;
            var product = stream < 24 ? stream % Products : (int)Math.Floor(Products * random.U(5, draw));
            if (random.U(6, draw) < 0.5)
            {
                var other = (product + 1 + (int)Math.Floor((Products - 1) * random.U(7, draw))) % Products;
                into[other].Add((stream, 0.3 * kg));
                kg *= 0.7;
            }

            into[product].Add((stream, kg));
        }

        var heel = run % 56 != 0;
        for (var product = 0; product < Products; product++)
        {
            var fresh = into[product].Sum(part => part.Kg);
            var parents = into[product].Select(part => graph.Stream0 + Streams * run + part.Stream);
            var shares = into[product].Select(part => part.Kg / (heel ? 1.25 * fresh : fresh));
            if (heel)
            {
                parents = parents.Append(graph.Blend0 + Products * (run - 1) + product);
                shares = shares.Append(0.2);
            }

            graph.Rows.Add(parents.ToArray(), shares.ToArray());
        }
    }

    private void AddPack(int pack)
    {
        var run = (int)((long)pack * spec.Runs / spec.Packs);
        var product = (int)Math.Floor(Products * random.U(8, pack));
        var draw = random.U(9, pack);
        var count = Math.Min(run + 1, draw < 0.6 ? 4 : draw < 0.9 ? 3 : 2);
        Span<int> parents = stackalloc int[count];
        Span<double> shares = stackalloc double[count];
        var sum = 0.0;
        for (var j = 0; j < count; j++)
        {
            parents[j] = graph.Blend0 + Products * (run - j) + product;
            sum += shares[j] = 0.05 + random.U(10, 4L * pack + j);
        }

        foreach (ref var share in shares)
        {
            share /= sum;
        }

        graph.Rows.Add(parents, shares);
    }
}
