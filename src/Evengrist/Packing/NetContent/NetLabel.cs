using Evengrist.Quantities;

namespace Evengrist.Packing.NetContent;

/// <summary>The net weight a package declares, and in which unit its label says it first: allowed variations stand in tables of both.</summary>
/// <param name="Grams">Declared net weight, grams; above 0 and at most <see cref="MostGrams"/>.</param>
/// <param name="IsInPounds">Whether the label's first unit is the pound.</param>
public sealed record NetLabel(double Grams, bool IsInPounds)
{
    /// <summary>Heaviest package that is judged, a big bag and more [ours].</summary>
    public const double MostGrams = 2_000_000;

    /// <summary>Pounds of the label.</summary>
    public double Pounds => Grams / (double)Mass.GramsPerPound;

    /// <summary>What is wrong, in a sentence; null where nothing is.</summary>
    public string? Fault => Grams is > 0 and <= MostGrams ? null : $"A label declares more than 0 and at most {MostGrams / 1000:0} kg; got {Grams:0.###} g.";

    /// <summary>A label in pounds.</summary>
    /// <param name="pounds">Declared net weight, avoirdupois pounds.</param>
    public static NetLabel OfPounds(double pounds) => new(pounds * (double)Mass.GramsPerPound, true);

    /// <summary>A label in grams or kilograms.</summary>
    /// <param name="grams">Declared net weight, grams.</param>
    public static NetLabel OfGrams(double grams) => new(grams, false);
}
