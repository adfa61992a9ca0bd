using System.Text.Json.Serialization;

namespace Evengrist.Laboratory.Calibration;

/// <summary>One thing done to each spectrum before it is regressed on. Model: docs/model/spectral-calibration.md.</summary>
[JsonPolymorphic(TypeDiscriminatorPropertyName = "kind")]
[JsonDerivedType(typeof(StandardNormalVariate), "snv")]
[JsonDerivedType(typeof(ScatterCorrection), "msc")]
[JsonDerivedType(typeof(SavitzkyGolay), "savitzkyGolay")]
public abstract record PretreatmentStep
{
    private protected PretreatmentStep()
    {
    }

    /// <summary>Channels that are lost at each end.</summary>
    public virtual int Edge => 0;

    /// <summary>What is wrong with the step on an axis, each a sentence; empty where nothing is.</summary>
    public virtual IReadOnlyList<string> Faults(SpectralAxis axis) => [];

    internal virtual PretreatmentStep Fitted(IReadOnlyList<double[]> spectra) => this;

    internal abstract double[] Apply(double[] spectrum);
}
