namespace Evengrist.Laboratory.Calibration;

/// <summary>Multiplicative scatter correction: x = a + b r is laid through each spectrum, and (x − a)/b goes on [from memory].</summary>
/// <param name="Reference">r, the mean spectrum of the calibration set, kept with the calibration; null until it is known.</param>
public sealed record ScatterCorrection(IReadOnlyList<double>? Reference = null) : PretreatmentStep
{
    /// <inheritdoc/>
    public override IReadOnlyList<string> Faults(SpectralAxis axis)
    {
        ArgumentNullException.ThrowIfNull(axis);
        return Reference is null || Reference.Count == axis.Count ? [] : [$"The reference spectrum of the scatter correction has {Reference.Count} channels, the spectra here have {axis.Count}."];
    }

    /// <summary>The line through a spectrum on the reference.</summary>
    /// <param name="spectrum">Of the reference's channels.</param>
    /// <exception cref="InvalidOperationException">There is no reference yet.</exception>
    public (double Offset, double Slope) LineOf(IReadOnlyList<double> spectrum)
    {
        ArgumentNullException.ThrowIfNull(spectrum);
        var reference = Reference ?? throw new InvalidOperationException("A scatter correction has no reference until it was fitted to a calibration set.");
        var (meanX, meanR) = (spectrum.Average(), reference.Average());
        var (across, along) = (0.0, 0.0);
        for (var i = 0; i < reference.Count; i++)
        {
            across += (reference[i] - meanR) * (spectrum[i] - meanX);
            along += (reference[i] - meanR) * (reference[i] - meanR);
        }

        return (meanX - (across / along * meanR), across / along);
    }

    internal override PretreatmentStep Fitted(IReadOnlyList<double[]> spectra) => Reference is not null ? this : new ScatterCorrection([.. Enumerable.Range(0, spectra[0].Length).Select(i => spectra.Average(s => s[i]))]);

    internal override double[] Apply(double[] spectrum)
    {
        var (offset, slope) = LineOf(spectrum);
        return [.. spectrum.Select(x => (x - offset) / slope)];
    }

    /// <inheritdoc/>
    public override string ToString() => "MSC";
}
