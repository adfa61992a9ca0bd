namespace Evengrist.Bench.Genealogy.Graph;

/// <summary>What synthetic crop year is wanted.</summary>
/// <param name="Scale">1 is a crop year of 20 000 trucks and 1 500 000 packed lots; 0.1 is 36 days.</param>
/// <param name="Seed">Seed of every number drawn.</param>
/// <param name="Bins">Number of wheat bins, at least 4, as a run draws from four.</param>
internal sealed record GenealogySpec(double Scale = 1.0, ulong Seed = GenealogySpec.DefaultSeed, int Bins = GenealogySpec.DefaultBins)
{
    public const ulong DefaultSeed = 20250701;
    public const int DefaultBins = 19;
    public const int Streams = 40;
    public const int Products = 12;
    public const int DrawnBins = 4;
    public const double RunKg = 180_000;

    public int Trucks => Whole(20_000);

    public int Runs => Whole(2_920);

    public int Packs => Whole(1_500_000);

    public bool IsPublished(double scale) => Scale == scale && Seed == DefaultSeed && Bins == DefaultBins;

    public string? Fault => this switch
    {
        { Scale: not (>= 0.001 and <= 20) } => "--scale must lie between 0.001 and 20",
        { Bins: < DrawnBins } => $"--bins must be at least {DrawnBins}, as a run draws from that many",
        _ => null,
    };

    // The sliver keeps 0.07 · 1 500 000, which falls just short of 105 000 in binary, whole.
    private int Whole(int atOne) => (int)Math.Floor(atOne * Scale + 1e-6);
}
