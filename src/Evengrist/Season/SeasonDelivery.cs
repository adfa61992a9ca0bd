namespace Evengrist.Season;

/// <summary>Wheat that is expected to arrive, bought or contracted already: it comes whether the plan likes it or not.</summary>
/// <param name="Period">Number of the period, from 0, in which it comes; it can be milled in that period.</param>
/// <param name="Tonnes">Expected, t as it lies, 0 or more.</param>
/// <param name="TonnesSpread">Standard deviation of the tonnes, 0 or more.</param>
public sealed record SeasonDelivery(int Period, double Tonnes, double TonnesSpread = 0)
{
    /// <summary>What it is expected to be, with its spread; null for that of the wheat it joins. A delivery of another quality leaves the bin after what came before it.</summary>
    public SeasonQuality? Quality { get; init; }

    /// <summary>Moisture, per cent, wet basis; null for that of the wheat it joins.</summary>
    public double? MoisturePercent { get; init; }

    /// <summary>Where it grows, or empty: deliveries of one district come in short or high together.</summary>
    public string District { get; init; } = "";
}
