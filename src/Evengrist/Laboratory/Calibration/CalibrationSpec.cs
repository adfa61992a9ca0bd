using System.Globalization;

namespace Evengrist.Laboratory.Calibration;

/// <summary>What a calibration is to be made of.</summary>
/// <param name="Axis">Where the channels lie.</param>
/// <param name="Samples">All on that axis.</param>
/// <param name="Purpose">What is foretold.</param>
public sealed record CalibrationSpec(SpectralAxis Axis, IReadOnlyList<CalibrationSample> Samples, CalibrationPurpose Purpose)
{
    /// <summary>Most samples [ours].</summary>
    public const int MostSamples = 3000;

    /// <summary>Most factors [ours].</summary>
    public const int MostFactorsOfAll = 40;

    /// <summary>What is done to the spectra.</summary>
    public Pretreatment Pretreatment { get; init; } = Pretreatment.None;

    /// <summary>Factors up to which is looked.</summary>
    public int MostFactors { get; init; } = 12;

    /// <summary>Factors to take; null to choose by <see cref="Choice"/>.</summary>
    public int? Factors { get; init; }

    /// <summary>How they are chosen.</summary>
    public FactorChoice Choice { get; init; } = FactorChoice.OneStandardError;

    /// <summary>Into how many segments samples are dealt in turn for cross-validation; null leaves one (or one group) out at a time.</summary>
    public int? Parts { get; init; } = 10;

    internal IReadOnlyList<CalibrationSample> Calibrating => [.. Samples.Where(s => !s.IsValidation)];

    /// <summary>What is wrong, each a sentence that says what to do; empty where nothing is.</summary>
    public IReadOnlyList<string> Faults()
    {
        if (Axis.Faults() is { Count: > 0 } axis)
        {
            return axis;
        }

        string[] faults = [.. Purpose.Faults(), .. Pretreatment.Faults(Axis), .. SampleFaults()];
        return faults.Length > 0 ? faults : [.. SetFaults()];
    }

    private IEnumerable<string> SampleFaults()
    {
        foreach (var sample in Samples)
        {
            if (sample.Spectrum.Count != Axis.Count)
            {
                yield return $"The spectrum of {sample.Id} has {sample.Spectrum.Count} channels, the axis {Axis.Count}: give it on the axis of the others, or leave it out.";
            }
            else if (sample.Spectrum.Index().FirstOrDefault(c => !double.IsFinite(c.Item), (-1, 0)) is { Index: >= 0 } bad)
            {
                yield return $"The spectrum of {sample.Id} has no number at {At(bad.Index)}.";
            }
            else if (sample.Spectrum.All(x => x == sample.Spectrum[0]))
            {
                yield return $"The spectrum of {sample.Id} is the same in all channels: nothing was measured. Leave it out.";
            }

            if (!double.IsFinite(sample.Reference))
            {
                yield return $"{sample.Id} has no reference for {Purpose.Property}: give it, or leave the sample out.";
            }
        }

        foreach (var twice in Samples.CountBy(s => s.Id).Where(s => s.Value > 1))
        {
            yield return $"{twice.Key} is there {twice.Value} times: each sample has a name of its own; replicates share a group.";
        }
    }

    private IEnumerable<string> SetFaults()
    {
        var calibrating = Calibrating;
        if (Samples.Count > MostSamples)
        {
            yield return $"There are {Samples.Count} samples: up to {MostSamples} are taken.";
            yield break;
        }

        if (MostFactors is < 1 or > MostFactorsOfAll || Factors < 1 || Factors > MostFactors)
        {
            yield return $"Factors are looked for up to 1 to {MostFactorsOfAll}, and those taken lie within that; got {Factors?.ToString(CultureInfo.InvariantCulture) ?? "no number"} of {MostFactors}.";
        }

        if (Parts < 2)
        {
            yield return $"Cross-validation needs 2 segments or more; got {Parts}.";
            yield break;
        }

        var parts = CrossValidation.Segments([.. calibrating.Select(s => s.Group)], Parts).CountBy(s => s).ToArray();
        var least = parts.Length < 2 ? 0 : calibrating.Count - parts.Max(p => p.Value);
        if (least < MostFactors + 2)
        {
            yield return parts.Length < 2 && calibrating.Count > 1
                ? "All samples share one segment: cross-validation needs two or more groups."
                : $"There are {calibrating.Count} samples to calibrate on, of which the smallest part of the cross-validation keeps {least}: {MostFactors} factors need {MostFactors + 2}. Look for fewer factors, or give more samples.";
            yield break;
        }

        if (calibrating.All(s => s.Reference == calibrating[0].Reference))
        {
            yield return $"{Purpose.Property} is the same in all samples: there is nothing to calibrate on.";
        }

        for (var channel = 0; channel < Axis.Count; channel++)
        {
            if (calibrating.All(s => s.Spectrum[channel] == calibrating[0].Spectrum[channel]))
            {
                yield return $"The channel at {At(channel)} reads the same in all samples: the detector stands there or the column was filled in. Leave the channel out.";
                yield break;
            }
        }
    }

    private string At(int channel) => string.Create(CultureInfo.InvariantCulture, $"{Axis.Positions[channel]} {Axis.Unit}");
}
