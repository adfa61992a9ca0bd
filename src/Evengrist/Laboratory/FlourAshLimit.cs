using Evengrist.Quantities;

namespace Evengrist.Laboratory;

/// <summary>The ash that white wheat flour may have under the US standard of identity: ash ≤ protein/20 + 0.35, both in per cent of the dry matter.</summary>
/// <remarks>
/// Source: 21 CFR 137.105 (protein is 5.7 N; ash from added iron or calcium is not counted). It is one clause of the standard, not the whole: moisture and
/// granulation are others. Compared unrounded. Model: docs/model/quantities.md.
/// </remarks>
public static class FlourAshLimit
{
    /// <summary>How many parts of protein allow one of ash.</summary>
    public const decimal ProteinToAsh = 20m;

    /// <summary>Ash allowed besides, per cent of the dry matter.</summary>
    public const decimal Allowance = 0.35m;

    /// <summary>The most ash for a protein, stated dry.</summary>
    /// <exception cref="InvalidOperationException">No protein was stated.</exception>
    public static SolidsShare For(SolidsShare protein) => SolidsShare.Percent((protein.DryValue / ProteinToAsh) + Allowance, Basis.Dry);

    /// <summary>Whether the ash is within the limit; each on whatever basis it was stated.</summary>
    /// <exception cref="InvalidOperationException">One of the two was not stated.</exception>
    public static bool IsMet(SolidsShare protein, SolidsShare ash) => ash <= For(protein);
}
