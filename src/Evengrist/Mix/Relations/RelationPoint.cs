using Evengrist.Ledger;
using Evengrist.Quantities;
using NodaTime;

namespace Evengrist.Mix.Relations;

/// <summary>Wheat of one mix sheet as it was drawn, and the flour that came of it as it was read.</summary>
/// <param name="Flour">Code of the flour.</param>
/// <param name="What">The property, a share of solids.</param>
/// <param name="Sheet">Code of the sheet.</param>
/// <param name="At">When its wheat came to the rolls.</param>
/// <param name="Wheat">Reckoned of the wheat drawn, on <see cref="WheatBasis"/>.</param>
/// <param name="WheatUncertainty">One standard uncertainty of it, 0 or more.</param>
/// <param name="Read">Read of the flour, on <see cref="FlourBasis"/>.</param>
/// <param name="ReadUncertainty">One standard uncertainty of it, above 0.</param>
/// <param name="Readings">Readings it is the mean of.</param>
public sealed record RelationPoint(string Flour, Property What, string Sheet, Instant At, double Wheat, double WheatUncertainty, double Read, double ReadUncertainty, int Readings)
{
    /// <summary>Basis of the wheat's value: 12mb.</summary>
    public static Basis WheatBasis => Basis.At12;

    /// <summary>Basis of the flour's value: 14mb.</summary>
    public static Basis FlourBasis => Basis.At14;
}
