using Evengrist.Ledger;

namespace Evengrist.Season.Terms;

/// <summary>What thin kernels cost in extraction: points = PointsPerUnit · (test weight − AtTestWeight) below that test weight, none above.</summary>
/// <remarks>A mill's own rule of thumb, not a law: fit it to the mill's own balance.</remarks>
/// <param name="AtTestWeight">kg/hL from which on kernels count as full.</param>
/// <param name="PointsPerUnit">Points of extraction lost for each kg/hL below, 0 or more.</param>
public sealed record ExtractionRule(double AtTestWeight, double PointsPerUnit)
{
    /// <summary>Points a wheat gives more or less than a flour's yield; 0 where its test weight is not known.</summary>
    public double PointsOf(SeasonWheat wheat)
    {
        ArgumentNullException.ThrowIfNull(wheat);
        return wheat.Quality.TryGet(Property.TestWeight, out var weight) ? Math.Min(0, PointsPerUnit * (weight.Value - AtTestWeight)) : 0;
    }
}
