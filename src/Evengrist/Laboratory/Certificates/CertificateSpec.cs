using Evengrist.Laboratory.Lots;
using Evengrist.Laboratory.Specifications;
using NodaTime;

namespace Evengrist.Laboratory.Certificates;

/// <summary>What a certificate is to be made of.</summary>
/// <param name="Lot">The lot.</param>
/// <param name="Decision">What stands decided of it; null where nothing was.</param>
/// <param name="Packages">Where its packages are.</param>
/// <param name="Specification">The specification.</param>
/// <param name="Title">Its code and version.</param>
/// <param name="Results">The lot held against it.</param>
/// <param name="LagMinutes">Readings on a mill unit are of flour packed so much later.</param>
public sealed record CertificateSpec(FlourLot Lot, LotDecision? Decision, IReadOnlyList<PackageStand> Packages, Specification Specification, string Title, IReadOnlyList<LotResult> Results, int LagMinutes)
{
    /// <summary>The mill's name.</summary>
    public string Mill { get; init; } = "";

    /// <summary>Whether the mill is invented.</summary>
    public bool IsInvented { get; init; }

    /// <summary>The version it becomes, from 1.</summary>
    public int Version { get; init; } = 1;

    /// <summary>Who signs.</summary>
    public string SignedBy { get; init; } = "";

    /// <summary>When.</summary>
    public Instant IssuedAt { get; init; }

    /// <summary>The number it has: lot and specification.</summary>
    public string Number => $"{Lot.Code}.{Specification.Code}";
}
