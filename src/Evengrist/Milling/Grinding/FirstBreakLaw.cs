using Evengrist.Milling.Sheet;

namespace Evengrist.Milling.Grinding;

/// <summary>How whole kernels break at first break, by disposition, hardness, gap and moisture. Not tuned.</summary>
/// <remarks>
/// The laws of the parameters are ours: made so that the published shapes hold (sharp to sharp nearly straight from 212 to 2000 µm, dull to dull U-shaped, softer more so and more under dull to dull, straight at 16 % moisture)
/// and release at 0.5 mm is about 30 %. The fitted coefficients of the first-break work were not to be had.
/// </remarks>
public static class FirstBreakLaw
{
    private const double MiddleRatio = 0.5 / 2.9;

    /// <summary>The breakage function, in z = size / 4000 µm.</summary>
    /// <param name="disposition">How the flutes meet.</param>
    /// <param name="gapMillimetres">Roll gap, mm; above 0.</param>
    /// <param name="thicknessMillimetres">Thickness of the kernel, mm; above 0.</param>
    /// <param name="hardness">Single-kernel hardness index.</param>
    /// <param name="moisturePercent">Moisture, per cent wet basis. Only the direction of its effect is published; its size here is ours.</param>
    /// <param name="severity">Factor on both exponents that set how fine, 1 where nothing was measured: what a release test tunes.</param>
    public static Kumaraswamy Of(Disposition disposition, double gapMillimetres, double thicknessMillimetres, double hardness, double moisturePercent, double severity = 1)
    {
        ArgumentOutOfRangeException.ThrowIfNegativeOrZero(gapMillimetres);
        ArgumentOutOfRangeException.ThrowIfNegativeOrZero(thicknessMillimetres);
        var h = (hardness - 50) / 50;
        var gap = Math.Exp(-6 * ((gapMillimetres / thicknessMillimetres) - MiddleRatio)) * severity;
        var dull = Dull(disposition);
        var alpha = Between(0.57 + (0.10 * h), 0.05 + (0.03 * h), dull) - (0.08 * (moisturePercent - 16));
        return new Kumaraswamy(Math.Clamp(alpha, 0, 1), 1.45, 3.0 * gap, Math.Max(0.05, 0.58 + (0.28 * h)), Between(0.27, 0.39, dull) * Math.Exp(0.2 * h) * gap);
    }

    // Sharp to dull lies nearer to sharp to sharp, dull to sharp nearer to dull to dull [read as an order: Cereal Chem. 79:518, abstract]; the thirds are ours.
    private static double Dull(Disposition disposition) => disposition switch
    {
        Disposition.SharpToSharp => 0,
        Disposition.SharpToDull => 1.0 / 3,
        Disposition.DullToSharp => 2.0 / 3,
        Disposition.DullToDull => 1,
        _ => throw new ArgumentOutOfRangeException(nameof(disposition), disposition, "first break has a disposition"),
    };

    private static double Between(double sharp, double dull, double share) => sharp + (share * (dull - sharp));
}
