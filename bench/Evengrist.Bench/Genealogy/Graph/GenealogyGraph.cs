using Evengrist.Ledger;

namespace Evengrist.Bench.Genealogy.Graph;

/// <summary>The generated parcels, in blocks: trucks, layers, runs, streams, blends, packs.</summary>
internal sealed class GenealogyGraph(GenealogySpec spec)
{
    public GenealogySpec Spec { get; } = spec;

    public ParentRows Rows { get; } = new();

    /// <summary>Kilograms of each run.</summary>
    public double[] RunKg { get; } = new double[spec.Runs];

    /// <summary>Number of the first parcel of each block after the trucks.</summary>
    public int Layer0 { get; set; }

    public int Run0 { get; set; }

    public int Stream0 => Run0 + Spec.Runs;

    public int Blend0 => Stream0 + GenealogySpec.Streams * Spec.Runs;

    public int Pack0 => Blend0 + GenealogySpec.Products * Spec.Runs;

    public double TruckKg(int truck) => 24_000 + 60 * Math.Floor(100 * new CounterRandom(Spec.Seed).U(1, truck));

    public static double PackKg(int pack) => pack % 5 == 0 ? 1000 : 12.5;

    public int[] BackQueries() =>
        [.. Enumerable.Range(0, 25).Select(i => Pack0 + (int)Math.Floor(Spec.Packs * (0.15 + 0.8 * i / 25)))];

    public int[] ForwardQueries() =>
        [.. Enumerable.Range(0, 11).Select(i => (int)Math.Floor(Spec.Trucks * (0.10 + 0.6 * i / 11)))];
}
