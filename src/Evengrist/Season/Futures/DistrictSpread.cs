namespace Evengrist.Season.Futures;

/// <summary>What all deliveries of a district have in common: one bad summer, every truck of it.</summary>
/// <param name="District">The district, as deliveries name it.</param>
/// <param name="TonnesShare">Standard deviation of its tonnes, all deliveries up or down together, as a share, 0 or more.</param>
public sealed record DistrictSpread(string District, double TonnesShare)
{
    /// <summary>Standard deviation of its mean quality against what is expected.</summary>
    public IReadOnlyList<PropertySpread> Quality { get; init; } = [];
}
