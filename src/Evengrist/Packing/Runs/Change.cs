namespace Evengrist.Packing.Runs;

/// <summary>What lies between two runs that follow each other on a line, or before the first.</summary>
/// <param name="Minutes">How long.</param>
/// <param name="FlushTonnes">Flour run through.</param>
/// <param name="FlushTo">Where it goes.</param>
/// <param name="Allergens">Allergens of the flour before that the flour after must not have; empty where there are none.</param>
/// <param name="IsCleanDown">Whether it is a clean-down.</param>
public sealed record Change(int Minutes, double FlushTonnes, string? FlushTo, IReadOnlyList<string> Allergens, bool IsCleanDown)
{
    /// <summary>Nothing between.</summary>
    public static Change None { get; } = new(0, 0, null, [], false);

    /// <summary>Whether a named person has to sign that the line is clean before the next run.</summary>
    public bool NeedsSign => Allergens.Count > 0;

    /// <summary>Whether it may stand in a plan: from a flour with an allergen to one without only by a clean-down.</summary>
    public bool MayBe => Allergens.Count == 0 || IsCleanDown;
}
