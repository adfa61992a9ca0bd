namespace Evengrist.Milling.Stock;

/// <summary>Kernel parts of a wheat of which only the whole was read: the usual shares and shapes, scaled to its ash, protein and falling number.</summary>
/// <remarks>
/// Shares of parts and ash and protein of bran, aleurone and germ: read, Food Chemistry, table 15.8, in a copy; aleurone's share from memory. Endosperm in three shells of 45, 35 and 20 %, protein as 0.80 : 1 : 1.45 and ash as
/// 0.75 : 1 : 1.6 of its mean: ours. Endosperm ash mean 0.45 % dry: ours, between 0.28 to 0.38 % of its centre [memory] and 0.6 % read for the whole of it.
/// </remarks>
public static class KernelMake
{
    private static readonly double[] Shares = [0.825 * 0.45, 0.825 * 0.35, 0.825 * 0.20, 0.15, 0.025];

    private static readonly double[] Ash = [0.45 * 0.75, 0.45, 0.45 * 1.6, 7.30, 5.8];

    // Protein of bran from its layers: (7 × 31.7 + 4 × 6.9 + 2.5 × 3.9 + 1.5 × 10.7) / 15, and endosperm 12.6, all by N × 6.25: only their ratios are used.
    private static readonly double[] Protein = [12.6 * 0.80 / Mean, 12.6 / Mean, 12.6 * 1.45 / Mean, 18.35, 34.0];

    // Amylase lies outside: bran and germ far above endosperm [read as a direction: J. Cereal Sci. 34:233, abstract]; the figures are ours.
    private static readonly double[] Amylase = [0.8, 0.9, 1.1, 1.6, 2.0];

    private const double Mean = (0.45 * 0.80) + (0.35 * 1.0) + (0.20 * 1.45);

    /// <summary>The parts of a wheat.</summary>
    /// <param name="ashPercentDry">Ash of the whole wheat, per cent of dry matter; 1 to 3.</param>
    /// <param name="proteinPercentDry">Protein of the whole wheat, per cent of dry matter; 5 to 25.</param>
    /// <param name="fallingNumber">Falling number of the whole wheat, s; above 60.</param>
    /// <param name="branShare">Bran with aleurone, share of dry matter: more in thin kernels; 0.10 to 0.25.</param>
    /// <exception cref="ArgumentOutOfRangeException">A value outside its range.</exception>
    public static IReadOnlyList<PartAssay> Of(double ashPercentDry, double proteinPercentDry, double fallingNumber, double branShare = 0.15)
    {
        Require(ashPercentDry, 1, 3, nameof(ashPercentDry));
        Require(proteinPercentDry, 5, 25, nameof(proteinPercentDry));
        Require(fallingNumber, 60.0001, 2000, nameof(fallingNumber));
        Require(branShare, 0.10, 0.25, nameof(branShare));
        double[] shares = [.. Shares.Select((s, i) => i == (int)KernelPart.Bran ? branShare : s * (1 - branShare) / (1 - Shares[(int)KernelPart.Bran]))];
        double Scale(double[] shape, double whole) => whole / shares.Zip(shape, (s, a) => s * a).Sum();
        var (ash, protein, amylase) = (Scale(Ash, ashPercentDry), Scale(Protein, proteinPercentDry), Scale(Amylase, 6000 / (fallingNumber - 50)));
        return [.. shares.Select((s, i) => new PartAssay(s, Ash[i] * ash, Protein[i] * protein, Amylase[i] * amylase))];
    }

    private static void Require(double value, double least, double most, string name)
    {
        if (!(value >= least && value <= most))
        {
            throw new ArgumentOutOfRangeException(name, value, $"lies from {least} to {most}");
        }
    }
}
