namespace Evengrist.Milling.Clock;

/// <summary>What the ledger does not have of a way, and how sure each part is. All [ours], tuned to no mill: readings tune it.</summary>
public sealed record WayTimes
{
    /// <summary>From the gate to the temper bin, minutes.</summary>
    public double GateMinutes { get; init; } = 10;

    /// <summary>Dead time from first break to the flour spout, minutes.</summary>
    public double RollsMinutes { get; init; } = 4;

    /// <summary>Stirred time from first break to the flour spout, minutes: stock goes over several passages and some of it back.</summary>
    public double RollsStirredMinutes { get; init; } = 4;

    /// <summary>One standard uncertainty of these, as a share of each.</summary>
    public double TypedShare { get; init; } = 0.5;

    /// <summary>One standard uncertainty of the time in the temper bin from its stock, as a share of it: weighers and an uneven flow.</summary>
    public double StockShare { get; init; } = 0.02;

    /// <summary>One standard uncertainty of the stirred stage, as a share of it.</summary>
    public double StirredShare { get; init; } = 0.3;

    /// <summary>One standard uncertainty of the time in the flour bin, as a share of it: packing comes and goes.</summary>
    public double PackingShare { get; init; } = 0.25;
}
