using MathNet.Numerics.Distributions;

namespace Evengrist.Laboratory.Sampling;

/// <summary>How far a toxin's result may be off where no published variance is held: from relative standard deviations that the laboratory gives, each stated for its own size. Model: docs/model/acceptance-sampling.md.</summary>
/// <param name="SamplingPercent">Relative standard deviation of sampling for one kilogram of aggregate sample, %, 0 to 300.</param>
/// <param name="PreparationPercent">Of preparing the portion, %, 0 to 300.</param>
/// <param name="AnalysisPercent">Of one determination, %, 0 to 300; reproducibility where results of another laboratory count.</param>
/// <param name="Kilograms">Aggregate sample that is ground and divided, kg, above 0.</param>
/// <param name="Determinations">Whose mean is reported, 1 or more.</param>
public sealed record ToxinTest(double SamplingPercent, double PreparationPercent, double AnalysisPercent, double Kilograms, int Determinations)
{
    private const double Most = 300;

    /// <summary>Relative standard deviation of the result: √(s²/kg + p² + a²/n), a fraction.</summary>
    public double Relative => Math.Sqrt((SamplingPercent * SamplingPercent / Kilograms) + (PreparationPercent * PreparationPercent) + (AnalysisPercent * AnalysisPercent / Determinations)) / 100;

    /// <summary>What is wrong, each a sentence; empty where nothing is.</summary>
    public IReadOnlyList<string> Faults() =>
    [
        .. new[] { SamplingPercent, PreparationPercent, AnalysisPercent }.All(r => r is >= 0 and <= Most) ? Array.Empty<string>() : [$"Relative standard deviations lie from 0 to {Most} %."],
        .. Kilograms is > 0 and <= 1000 ? Array.Empty<string>() : ["The aggregate sample is above 0 and up to 1,000 kg."],
        .. Determinations is >= 1 and <= 100 ? Array.Empty<string>() : ["Determinations are 1 to 100."],
    ];

    /// <summary>Chance to accept a lot of a true content where a result of so much or less is accepted.</summary>
    /// <remarks>The result is taken as lognormal with the true content as its mean: few kernels carry all, so that most results lie below it and some far above [ours].</remarks>
    /// <param name="content">True content, 0 or more.</param>
    /// <param name="acceptAt">Highest result that is accepted, in the same unit.</param>
    public double Accepted(double content, double acceptAt)
    {
        if (content <= 0 || Relative <= 0)
        {
            return content <= acceptAt ? 1 : 0;
        }

        var s = Math.Sqrt(Math.Log(1 + (Relative * Relative)));
        return Normal.CDF(0, 1, (Math.Log(acceptAt / content) / s) + (s / 2));
    }
}
