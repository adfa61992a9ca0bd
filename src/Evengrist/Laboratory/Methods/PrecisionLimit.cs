namespace Evengrist.Laboratory.Methods;

/// <summary>A limit on how far two results may differ: of one laboratory (r) or of two (R), with 95 % of pairs inside [ISO 5725, from memory]. The larger of the two figures holds where both stand.</summary>
/// <param name="Mark">Where the figures come from.</param>
/// <param name="Source">The source in words.</param>
/// <param name="Absolute">In the unit of the method; above 0; null for none.</param>
/// <param name="PercentOfMean">Per cent of the mean of the results, above 0 to 100; null for none.</param>
public sealed record PrecisionLimit(FigureMark Mark, string Source, decimal? Absolute = null, decimal? PercentOfMean = null)
{
    /// <summary>Limit over standard deviation: 1.96·√2, rounded as the standards do [ISO 5725, from memory].</summary>
    public const decimal Factor = 2.8m;

    /// <summary>The limit at a mean, in the unit of the method.</summary>
    public decimal At(decimal mean) => Math.Max(Absolute ?? 0, (PercentOfMean ?? 0) / 100 * Math.Abs(mean));

    /// <summary>The standard deviation at a mean, in the unit of the method: the limit over 2.8.</summary>
    public decimal StandardDeviationAt(decimal mean) => At(mean) / Factor;

    /// <summary>What is wrong, each a sentence; empty where nothing is.</summary>
    /// <param name="what">Whose limit, as a sentence begins.</param>
    public IReadOnlyList<string> Faults(string what) =>
    [
        .. Absolute is null && PercentOfMean is null ? [$"{what}: give absolute or percentOfMean, or leave the limit out."] : Array.Empty<string>(),
        .. Absolute is null or > 0 ? Array.Empty<string>() : [$"{what}: an absolute limit is above 0."],
        .. PercentOfMean is null or (> 0 and <= 100) ? Array.Empty<string>() : [$"{what}: a limit in per cent of the mean lies above 0 and up to 100."],
        .. Mark == FigureMark.None || string.IsNullOrWhiteSpace(Source) ? [$"{what}: say where the limit comes from: mark and source."] : Array.Empty<string>(),
    ];
}
