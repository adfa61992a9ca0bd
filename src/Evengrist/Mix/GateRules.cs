namespace Evengrist.Mix;

/// <summary>What gates and feeders can be set to.</summary>
public sealed record GateRules
{
    /// <summary>Steps in which gates are set, per cent of the mix; null where they move freely or go by t/h.</summary>
    public double? StepPercent { get; init; }

    /// <summary>Steps in which gates are set, t/h; null where they move freely or go by per cent.</summary>
    public double? StepTonnesPerHour { get; init; }

    /// <summary>Most gates that may be open at once; null for no limit.</summary>
    public int? MostGates { get; init; }

    /// <summary>Least that an open feeder delivers evenly, t/h; null for no limit.</summary>
    public double? LeastTonnesPerHour { get; init; }

    /// <summary>Most that a feeder delivers, t/h; null for no limit.</summary>
    public double? MostTonnesPerHour { get; init; }

    /// <summary>Least share of an open gate, 0 to 1; null for no limit.</summary>
    public double? LeastOpenShare { get; init; }
}
