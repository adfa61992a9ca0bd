namespace Evengrist.Bins.BestBin;

/// <summary>A bin that a load might go into, as it stands.</summary>
/// <param name="Bin">Code.</param>
/// <param name="Class">The class it is meant for; empty where any.</param>
/// <param name="StockTonnes">What lies in it, t.</param>
public sealed record BinCandidate(string Bin, string Class, double StockTonnes)
{
    /// <summary>The most it may hold, t; null where no limit is stated.</summary>
    public double? CapacityTonnes { get; init; }

    /// <summary>Mean protein, per cent at 12 % moisture; null where it is empty or nothing was read.</summary>
    public double? ProteinPercentAt12 { get; init; }

    /// <summary>Dry matter over mass of what lies in it.</summary>
    public double DryShare { get; init; } = 0.88;

    /// <summary>Falling number of what lies in it, by the liquefaction number, s; null where not read.</summary>
    public double? FallingNumber { get; init; }

    /// <summary>Its house band; null where it has none.</summary>
    public BinBand? Band { get; init; }

    /// <summary>Share of what was read in it that lies in the band, 0 to 1; null without a band or without readings.</summary>
    public double? Purity { get; init; }

    /// <summary>Why nothing may go in: held, shut, under gas, a person inside; null where it may.</summary>
    public string? Barred { get; init; }

    /// <summary>Whether a route leads to it from a pit.</summary>
    public bool IsReachable { get; init; } = true;

    /// <summary>The last other grain through the route and the kilograms of it that the load would pick up; null where there is none or it is not known.</summary>
    public (string Of, double Kilograms)? CarryOver { get; init; }
}
