using Evengrist.Packing.Codes;
using NodaTime;

namespace Evengrist.Plant.Prints.Labels;

/// <summary>What every label of flour says.</summary>
/// <param name="Mill">Who made it.</param>
/// <param name="Flour">What it is called to people.</param>
/// <param name="Item">Number of the bag as a trade item.</param>
/// <param name="NetKilograms">Net weight of one bag, kg as it lies; at most three decimals, below 1000.</param>
/// <param name="Lot">Its lot.</param>
/// <param name="BestBefore">Best before.</param>
/// <param name="Contains">Allergens besides wheat, which always stands there.</param>
public sealed record LabelCase(string Mill, string Flour, Gtin Item, decimal NetKilograms, LotCode Lot, LocalDate BestBefore, IReadOnlyList<string> Contains)
{
    /// <summary>Milling day; null where the label does not say it.</summary>
    public LocalDate? Made { get; init; }
}
