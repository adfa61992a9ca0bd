using Evengrist.Quantities;

namespace Evengrist.Bins.Shape;

/// <summary>The ledger's stock against a sounding.</summary>
/// <param name="ReckonedTonnes">What the ledger holds, t.</param>
/// <param name="Sounded">What the sounding says.</param>
/// <param name="Difference">Sounded − reckoned, t, with its ±.</param>
public sealed record StockCheck(double ReckonedTonnes, Sounded Sounded, Figure Difference)
{
    /// <summary>Whether the difference lies within its ± (k = 2).</summary>
    public bool IsWithin => Math.Abs(Sounded.Tonnes - ReckonedTonnes) <= 2 * Sounded.StandardUncertaintyTonnes;

    /// <summary>The verdict in words.</summary>
    public string Verdict => IsWithin
        ? "Within the ± of the sounding: it does not contradict the ledger, and there is nothing to correct."
        : FormattableString.Invariant($"Outside the ± of the sounding: {Math.Abs(Sounded.Tonnes - ReckonedTonnes):0.0} t {(Sounded.Tonnes > ReckonedTonnes ? "more" : "less")} than the ledger holds. Sound again and look for a movement that is missing or wrong before a correction is booked.");

    /// <summary>Compares. The ledger's stock is taken as it is; the scales' own error is not in the ±.</summary>
    public static StockCheck Of(double reckonedTonnes, Sounded sounded)
    {
        ArgumentNullException.ThrowIfNull(sounded);
        return new StockCheck(reckonedTonnes, sounded, Figure.Reckoned("Difference", (decimal)(sounded.Tonnes - reckonedTonnes), "t", 1, new Because(
            "Sounded − reckoned. ± is the sounding's (k = 2); the error of the scales behind the ledger is not in it.",
            [sounded.Stock, Figure.Reckoned("Reckoned stock", (decimal)reckonedTonnes, "t", 1, new Because("In − out.", [], "the ledger"))], "docs/model/bin-shape.md")) with
        {
            StandardUncertainty = (decimal)sounded.StandardUncertaintyTonnes,
        });
    }
}
