namespace Evengrist.Packing.Runs;

/// <summary>What it takes to go from one flour to another on a line. Of a list, the first rule that fits holds.</summary>
/// <param name="After">The flour before; null for any.</param>
/// <param name="Into">The flour after; null for any.</param>
/// <param name="Minutes">How long, 0 or more.</param>
public sealed record ChangeRule(string? After = null, string? Into = null, int Minutes = 0)
{
    /// <summary>Whether it holds the other way round too.</summary>
    public bool EitherWay { get; init; }

    /// <summary>Flour that is run through and does not become the product, tonnes.</summary>
    public double FlushTonnes { get; init; }

    /// <summary>Where that flour goes; for people to read.</summary>
    public string? FlushTo { get; init; }

    /// <summary>Whether it is a clean-down that a named person checks and signs: the only way from a flour with an allergen to one without.</summary>
    public bool IsCleanDown { get; init; }

    /// <summary>Whether it fits a change.</summary>
    /// <param name="after">The flour before.</param>
    /// <param name="into">The flour after.</param>
    public bool Fits(string after, string into) => Fits(After, Into, after, into) || (EitherWay && Fits(Into, After, after, into));

    private static bool Fits(string? before, string? next, string after, string into) => (before is null || before == after) && (next is null || next == into);
}
