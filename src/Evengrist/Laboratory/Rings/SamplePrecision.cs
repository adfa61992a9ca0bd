namespace Evengrist.Laboratory.Rings;

/// <summary>What a ring test says of a method on one sample.</summary>
/// <param name="Sample">The sample.</param>
/// <param name="Laboratories">How many laboratories read it.</param>
/// <param name="Results">Results of each.</param>
/// <param name="Mean">Mean of the laboratories' means.</param>
/// <param name="MeansDeviation">Standard deviation of the laboratories' means.</param>
/// <param name="Repeatability">s_r, within laboratories.</param>
/// <param name="Reproducibility">s_R, between laboratories.</param>
/// <param name="Cells">Each laboratory: how far its mean lies off (h) and how wide it reads (k).</param>
/// <param name="Cochran">The largest variance of a laboratory over all of theirs together.</param>
/// <param name="CochranLimits">What it stays below by chance, 95 and 99 %.</param>
/// <param name="MostH">h stays below by chance, 99.5 %.</param>
/// <param name="MostK">k stays below by chance, 99.5 %.</param>
public sealed record SamplePrecision(
    string Sample, int Laboratories, int Results, double Mean, double MeansDeviation, double Repeatability, double Reproducibility, IReadOnlyList<(string Laboratory, double H, double K)> Cells,
    double Cochran, (double At95, double At99) CochranLimits, double MostH, double MostK);
