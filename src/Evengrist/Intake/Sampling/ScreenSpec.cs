using Evengrist.Quantities;

namespace Evengrist.Intake.Sampling;

/// <summary>A composite of several loads, mixed by mass, and what it showed.</summary>
/// <param name="LimitMilligrams">L, what no load may exceed, mg/kg; above 0.</param>
/// <param name="CompositeMilligrams">What the composite showed, mg/kg on the same basis; null before it is tested.</param>
/// <param name="Trucks">The loads, 2 to 100.</param>
public sealed record ScreenSpec(decimal LimitMilligrams, decimal? CompositeMilligrams, IReadOnlyList<ScreenTruck> Trucks)
{
    /// <summary>What is believed of each load before, for the expected number of tests; null where nothing is.</summary>
    public LoadPrior? Prior { get; init; }

    /// <summary>Mass of all loads.</summary>
    public Mass All => Mass.FromGrams(Trucks.Sum(t => t.Mass.Grams));

    /// <summary>What cannot be, each a sentence; empty where all can.</summary>
    public IReadOnlyList<string> Faults() => [.. new[]
    {
        LimitMilligrams > 0m ? null : "The limit is above 0 mg/kg.",
        CompositeMilligrams is null or >= 0m ? null : "A composite shows at least 0 mg/kg.",
        Trucks.Count is >= 2 and <= 100 ? null : "A composite is of 2 to 100 loads.",
        Trucks.All(t => t.Mass > Mass.Zero) ? null : "Every load weighs more than nothing.",
        Trucks.All(t => t.Found is null or >= 0m) ? null : "A load shows at least 0 mg/kg.",
        Trucks.All(t => t.ChanceOver is null or (>= 0 and <= 1)) ? null : "A chance lies from 0 to 1.",
        Trucks.Select(t => t.Code).Distinct(StringComparer.OrdinalIgnoreCase).Count() == Trucks.Count ? null : "Each load stands once in a composite.",
        Prior is null || (Prior.IsSound && Prior.Scale == PriorScale.Lognormal) ? null : "The prior of a toxin is lognormal, with a mean and a standard deviation above 0.",
    }.OfType<string>()];
}
