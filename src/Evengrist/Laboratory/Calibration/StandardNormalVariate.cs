namespace Evengrist.Laboratory.Calibration;

/// <summary>Each spectrum less its own mean, over its own standard deviation (n − 1): (x − x̄)/s [from memory]. Takes out thickness and scatter.</summary>
public sealed record StandardNormalVariate : PretreatmentStep
{
    internal override double[] Apply(double[] spectrum)
    {
        var mean = spectrum.Average();
        var deviation = Math.Sqrt(spectrum.Sum(x => (x - mean) * (x - mean)) / (spectrum.Length - 1));
        return [.. spectrum.Select(x => (x - mean) / deviation)];
    }

    /// <inheritdoc/>
    public override string ToString() => "SNV";
}
