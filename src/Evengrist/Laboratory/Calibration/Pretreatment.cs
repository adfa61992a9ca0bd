namespace Evengrist.Laboratory.Calibration;

/// <summary>What is done to each spectrum, step after step.</summary>
/// <param name="Steps">In the order in which they are done; none leaves spectra as they are.</param>
public sealed record Pretreatment(IReadOnlyList<PretreatmentStep> Steps)
{
    /// <summary>Spectra as they are.</summary>
    public static Pretreatment None { get; } = new([]);

    /// <summary>What is wrong with the steps on an axis, each a sentence; empty where nothing is.</summary>
    public IReadOnlyList<string> Faults(SpectralAxis axis)
    {
        ArgumentNullException.ThrowIfNull(axis);
        foreach (var step in Steps)
        {
            if (step.Faults(axis) is { Count: > 0 } faults)
            {
                return faults;
            }

            axis = axis.Inside(step.Edge);
        }

        return [];
    }

    /// <summary>The channels that are left.</summary>
    public SpectralAxis AxisAfter(SpectralAxis axis) => axis?.Inside(Steps.Sum(s => s.Edge)) ?? throw new ArgumentNullException(nameof(axis));

    /// <summary>The same with every reference taken from the spectra of a calibration set, where it is not known yet.</summary>
    /// <param name="spectra">One or more, of one length.</param>
    public Pretreatment Fitted(IReadOnlyList<double[]> spectra)
    {
        ArgumentNullException.ThrowIfNull(spectra);
        var fitted = new List<PretreatmentStep>();
        foreach (var step in Steps)
        {
            fitted.Add(step.Fitted(spectra));
            spectra = [.. spectra.Select(fitted[^1].Apply)];
        }

        return new(fitted);
    }

    /// <summary>One spectrum after all steps.</summary>
    public double[] Apply(double[] spectrum) => Steps.Aggregate(spectrum, (now, step) => step.Apply(now));

    /// <inheritdoc/>
    public override string ToString() => Steps.Count == 0 ? "none" : string.Join(", then ", Steps);
}
