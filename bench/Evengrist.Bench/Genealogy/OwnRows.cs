using System.Diagnostics;
using System.Globalization;
using Evengrist.Bench.Genealogy.Graph;
using Evengrist.Ledger;

namespace Evengrist.Bench.Genealogy;

/// <summary>The query set on our own rows; every answer is read out to the end inside the clock.</summary>
internal static class OwnRows
{
    public const int Rounds = 51;

    public static EngineResult Measure(GenealogyGraph graph, ForwardRows forward, double buildSeconds)
    {
        var sweep = new Sweep(graph.Rows, forward);
        var back = Time(graph.BackQueries(), pack =>
        {
            sweep.Back(pack);
            var sum = 0.0;
            foreach (var truck in sweep.Origins)
            {
                sum += sweep.ShareOf(truck);
            }

            return sum;
        });
        var ahead = Time(graph.ForwardQueries(), truck =>
        {
            var kg = 0.0;
            foreach (var parcel in sweep.Forward(truck))
            {
                kg += parcel < graph.Pack0 ? 0 : sweep.ShareOf(parcel) * GenealogyGraph.PackKg(parcel - graph.Pack0);
            }

            return kg;
        });
        var bytes = graph.Rows.Bytes + forward.Bytes + sweep.Bytes;
        return new EngineResult("this project: compressed rows in memory", buildSeconds.ToString("0.0", CultureInfo.InvariantCulture),
            bytes / 1e6, back, ahead, "reference");
    }

    // One figure a query: the median of its rounds, once a second of asking has warmed up caches and compiler.
    private static Part Time(int[] queries, Func<int, double> ask)
    {
        var warm = Stopwatch.StartNew();
        while (warm.ElapsedMilliseconds < 1000)
        {
            Array.ForEach(queries, query => Answer(query));
        }

        var rounds = queries.Select(_ => new double[Rounds]).ToArray();
        for (var round = 0; round < Rounds; round++)
        {
            for (var i = 0; i < queries.Length; i++)
            {
                rounds[i][round] = Answer(queries[i]);
            }
        }

        return new Part([.. rounds.Select(Part.MedianOf)], queries.Length, Part.MedianOf(rounds.Select(times => times.Min())));

        double Answer(int query)
        {
            var start = Stopwatch.GetTimestamp();
            var sum = ask(query);
            var elapsed = Stopwatch.GetElapsedTime(start).TotalMilliseconds;
            return double.IsFinite(sum) ? elapsed : throw new InvalidOperationException($"Query {query} gave no number.");
        }
    }
}
