namespace Evengrist.Tempering;

/// <summary>Moisture to expect at first break of wheat with water, after some of it has gone.</summary>
/// <param name="Percent">Per cent wet basis.</param>
/// <param name="StandardUncertainty">One standard uncertainty, points.</param>
public sealed record MoistureForecast(double Percent, double StandardUncertainty)
{
    /// <summary>Reckons it: with wheat Q of moisture m and water W, b = (Q·m + W)/(Q + W); less a share e of that mass, (b − e)/(1 − e).</summary>
    /// <remarks>u² by first order, errors independent: of m, of W, and of e, which is taken to be known to half of itself [ours]. Source: mass balance of water, by definition.</remarks>
    /// <param name="wheat">Wheat before water, any unit of mass; above 0.</param>
    /// <param name="moisturePercent">Its moisture, per cent wet basis.</param>
    /// <param name="moistureUncertainty">One standard uncertainty of it, points.</param>
    /// <param name="water">Water let in, the same unit of mass; at least 0.</param>
    /// <param name="waterUncertaintyPercent">One standard uncertainty of it, per cent of it.</param>
    /// <param name="evaporationPercent">Water lost to first break, per cent of the tempered mass.</param>
    /// <exception cref="ArgumentOutOfRangeException">There is no wheat, or less than no water.</exception>
    public static MoistureForecast Of(double wheat, double moisturePercent, double moistureUncertainty, double water, double waterUncertaintyPercent, double evaporationPercent)
    {
        ArgumentOutOfRangeException.ThrowIfNegativeOrZero(wheat);
        ArgumentOutOfRangeException.ThrowIfNegative(water);
        var (mass, e) = (wheat + water, evaporationPercent / 100);
        var b = ((wheat * moisturePercent / 100) + water) / mass;
        var byMoisture = wheat / mass / (1 - e) * moistureUncertainty;
        var byWater = (1 - b) / (1 - e) * water / mass * waterUncertaintyPercent;
        var byLoss = (1 - b) / ((1 - e) * (1 - e)) * evaporationPercent / 2;
        return new MoistureForecast(100 * (b - e) / (1 - e), Math.Sqrt((byMoisture * byMoisture) + (byWater * byWater) + (byLoss * byLoss)));
    }
}
