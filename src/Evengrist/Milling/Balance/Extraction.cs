namespace Evengrist.Milling.Balance;

/// <summary>What an extraction is a per cent of: without it the number says nothing.</summary>
public enum ExtractionBasis
{
    /// <summary>Not said; the default value.</summary>
    None = 0,

    /// <summary>Wheat as it left the bins, before cleaning: what management goes by.</summary>
    DirtyWheat = 1,

    /// <summary>Clean wheat before water.</summary>
    CleanWheat = 2,

    /// <summary>Wheat to first break, with its water: what millers go by.</summary>
    FirstBreak = 3,

    /// <summary>Everything weighed off the rolls.</summary>
    Products = 4,
}

/// <summary>Flour for a hundred of something.</summary>
/// <param name="Basis">Of what.</param>
/// <param name="Percent">100 · flour / basis, both as weighed.</param>
/// <param name="StandardUncertainty">One standard uncertainty of it, points, from the weighers.</param>
public sealed record Extraction(ExtractionBasis Basis, double Percent, double StandardUncertainty)
{
    /// <summary>Which basis is used by whom [read: an article of a milling association, caribmillers.com].</summary>
    public const string Source = "by definition; operators go by first break, management by wheat as bought (an article of a milling association, caribmillers.com)";

    /// <summary>Every basis, from the greatest mass to the least.</summary>
    public static IReadOnlyList<ExtractionBasis> Bases { get; } = [ExtractionBasis.FirstBreak, ExtractionBasis.DirtyWheat, ExtractionBasis.CleanWheat, ExtractionBasis.Products];

    /// <summary>Extraction on clean wheat from that on wheat to first break, where only water came between: E · (100 − M₀)/(100 − M₁).</summary>
    /// <param name="firstBreakPercent">Extraction on wheat to first break, per cent.</param>
    /// <param name="before">Moisture before water, per cent wet basis.</param>
    /// <param name="after">Moisture at first break, per cent wet basis.</param>
    public static double OnClean(double firstBreakPercent, double before, double after) => firstBreakPercent * (100 - before) / (100 - after);

    /// <summary>The basis in words.</summary>
    public static string Words(ExtractionBasis basis) => basis switch
    {
        ExtractionBasis.DirtyWheat => "wheat before cleaning",
        ExtractionBasis.CleanWheat => "clean wheat before water",
        ExtractionBasis.FirstBreak => "wheat to first break",
        ExtractionBasis.Products => "all products",
        _ => throw new ArgumentOutOfRangeException(nameof(basis), basis, "No basis is stated."),
    };
}
