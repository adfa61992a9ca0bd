namespace Evengrist.Intake.Sampling;

/// <summary>What is believed of a load before it is tested, from earlier loads.</summary>
/// <param name="Scale">The scale on which it is spread.</param>
/// <param name="Mean">Mean: of the liquefaction number (no unit), or of the concentration itself in mg/kg; above 0.</param>
/// <param name="StandardDeviation">Standard deviation on the same scale; above 0.</param>
/// <param name="Loads">Loads it rests on; 0 where it was stated by a person.</param>
public sealed record LoadPrior(PriorScale Scale, double Mean, double StandardDeviation, int Loads = 0)
{
    /// <summary>Whether the numbers can be.</summary>
    public bool IsSound => Scale != PriorScale.None && Mean > 0 && double.IsFinite(Mean) && StandardDeviation > 0 && double.IsFinite(StandardDeviation);

    /// <summary>The true value at a standard normal score, in the unit of the reading: s, or mg/kg.</summary>
    /// <remarks>A liquefaction number outside its range (6.32 to 600) is taken at the end of the range.</remarks>
    internal double TrueAt(double score) => Scale == PriorScale.Liquefaction
        ? 6000 / Math.Clamp(Mean + StandardDeviation * score, 6000.0 / 950, 600) + 50
        : Math.Exp(LogMean + LogSpread * score);

    /// <summary>The standard normal score at which the true value is a limit.</summary>
    internal double ScoreOf(double limit) => Scale == PriorScale.Liquefaction
        ? (6000 / (limit - 50) - Mean) / StandardDeviation
        : (Math.Log(limit) - LogMean) / LogSpread;

    private double LogSpread => Math.Sqrt(Math.Log(1 + StandardDeviation * StandardDeviation / (Mean * Mean)));

    private double LogMean => Math.Log(Mean) - LogSpread * LogSpread / 2;
}
