using MathNet.Numerics.LinearAlgebra;

namespace Evengrist.Laboratory.Calibration;

/// <summary>Smoothing or derivative by a polynomial laid through each channel's neighbours; channels without enough neighbours are dropped.</summary>
/// <param name="Half">m: neighbours on each side, 1 to 50; the window has 2m + 1 channels.</param>
/// <param name="Degree">Of the polynomial, from 0 and at most 2m and 6.</param>
/// <param name="Derivative">0 for smoothing, else which; at most the degree and 3. Per channel, not per unit of the axis.</param>
public sealed record SavitzkyGolay(int Half, int Degree, int Derivative) : PretreatmentStep
{
    /// <inheritdoc/>
    public override int Edge => Half;

    /// <summary>The weights of the window, first neighbour first: derivative! times a row of (V′V)⁻¹V′, V the powers of −m to m [from memory].</summary>
    /// <exception cref="InvalidOperationException">Half, degree or derivative are out of range.</exception>
    public IReadOnlyList<double> Weights() => Window();

    /// <inheritdoc/>
    public override IReadOnlyList<string> Faults(SpectralAxis axis)
    {
        ArgumentNullException.ThrowIfNull(axis);
        return
        [
            .. IsInRange ? Array.Empty<string>() : ["Smoothing takes 1 to 50 neighbours on each side, a degree up to twice that and 6, and a derivative up to the degree and 3."],
            .. axis.Count >= (2 * Half) + 2 ? Array.Empty<string>() : [$"A window of {(2 * Half) + 1} channels leaves fewer than 2 of {axis.Count}: take a narrower one."],
            .. axis.IsEven ? Array.Empty<string>() : ["Smoothing and derivatives need evenly spaced channels, and these are not: leave the step out, or give spectra on an even axis."],
        ];
    }

    internal override double[] Apply(double[] spectrum)
    {
        var weights = Window();
        var all = new double[spectrum.Length - (2 * Half)];
        for (var i = 0; i < all.Length; i++)
        {
            all[i] = Rows.Dot(weights, spectrum.AsSpan(i, weights.Length));
        }

        return all;
    }

    /// <inheritdoc/>
    public override string ToString() => $"Savitzky-Golay, derivative {Derivative}, {(2 * Half) + 1} channels, degree {Degree}";

    private double[] Window()
    {
        if (!IsInRange)
        {
            throw new InvalidOperationException("The window, degree or derivative of the smoothing is out of range.");
        }

        // Scaled to −1 to 1, so that wide windows do not lose digits.
        var powers = Matrix<double>.Build.Dense((2 * Half) + 1, Degree + 1, (i, j) => Math.Pow((double)(i - Half) / Half, j));
        var inverse = powers.QR().Solve(Matrix<double>.Build.DenseIdentity((2 * Half) + 1));
        var scale = Derivative < 2 ? 1.0 : Derivative == 2 ? 2 : 6;
        return [.. inverse.Row(Derivative).Select(w => w * scale / Math.Pow(Half, Derivative))];
    }

    private bool IsInRange => Half is >= 1 and <= 50 && Degree >= 0 && Degree <= Math.Min(6, 2 * Half) && Derivative >= 0 && Derivative <= Math.Min(3, Degree);
}
