namespace Evengrist.Packing.NetContent;

/// <summary>What packages weigh above their label, as mass a day and as money.</summary>
/// <param name="GramsEach">Mean net weight less label, grams a package; below 0 where packages are short.</param>
/// <param name="PackagesADay">Packages of a day on which the line packs it.</param>
/// <param name="PricePerTonne">What a tonne of the flour is worth; null where nobody said.</param>
public sealed record Giveaway(double GramsEach, double PackagesADay, decimal? PricePerTonne = null)
{
    /// <summary>Kilograms given away a day.</summary>
    public double KilogramsADay => GramsEach * PackagesADay / 1000;

    /// <summary>Money given away a day, in the currency of the price; null without a price.</summary>
    public decimal? MoneyADay => PricePerTonne is { } price ? Math.Round((decimal)KilogramsADay / 1000m * price, 2, MidpointRounding.AwayFromZero) : null;
}
