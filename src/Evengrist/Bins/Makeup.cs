namespace Evengrist.Bins;

/// <summary>What grain is made up of: by where it began, and by the loads it came on.</summary>
/// <param name="Origins">Grams by source, most first; they sum to the whole.</param>
/// <param name="Loads">Grams by truck or railcar, most first; less than the whole where some came on none, such as opening stock.</param>
public sealed record Makeup(IReadOnlyList<PlacePart> Origins, IReadOnlyList<PlacePart> Loads)
{
    /// <summary>Grams in all.</summary>
    public double Grams => Origins.Sum(o => o.Grams);
}
