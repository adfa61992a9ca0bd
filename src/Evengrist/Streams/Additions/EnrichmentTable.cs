using Evengrist.Intake.Grading;
using NodaTime;

namespace Evengrist.Streams.Additions;

/// <summary>What a market's rule asks of enriched flour, from a date on. Editable: a mill keeps its own versions.</summary>
/// <param name="Market">The market, by name.</param>
/// <param name="From">The day from which it holds, as far as is known here.</param>
/// <param name="Nutrients">What it asks, each in mg in a kg of flour.</param>
/// <param name="Mark">How well it is known here.</param>
/// <param name="Source">Where it was read.</param>
public sealed record EnrichmentTable(string Market, LocalDate From, IReadOnlyList<NutrientAim> Nutrients, SourceMark Mark, string Source);

/// <summary>What is asked of one nutrient.</summary>
/// <param name="Name">The nutrient.</param>
/// <param name="MilligramsPerKg">What the flour holds in the end, mg/kg.</param>
public sealed record NutrientAim(string Name, double MilligramsPerKg)
{
    /// <summary>Milligrams in a kilogram from milligrams in a pound of 0.45359237 kg.</summary>
    public static double FromPound(double milligrams) => milligrams / 0.45359237;
}
