using System.Collections.Frozen;
using Evengrist.Ledger;
using Evengrist.Quantities;

namespace Evengrist.Season;

/// <summary>The scale and weight by which a property of wheats averages in a mix.</summary>
/// <remarks>
/// Shares of solids by dry matter, on the dry value; falling number by mass through 6000/(FN − 50) (docs/model/quantities.md); test weight, moisture and
/// per cents of the mass by mass. A property that does not average is refused by name.
/// </remarks>
public static class SeasonScale
{
    private static readonly FrozenSet<Property> ByMass = new[]
    {
        Property.Moisture, Property.FallingNumber, Property.TestWeight, Property.Dockage, Property.ForeignMaterial, Property.ShrunkenAndBroken, Property.Damaged,
        Property.HeatDamaged, Property.ContrastingClasses, Property.OtherClasses, Property.Vitreous, Property.Sprouted, Property.SeverelySprouted, Property.InsectBored,
        Property.OtherGrains, Property.Ergot,
    }.ToFrozenSet();

    /// <summary>Whether a property of a mix follows from its parts by a weighted mean.</summary>
    public static bool Averages(Property what) => what.NeedsBasis() || ByMass.Contains(what);

    /// <summary>Whether a higher value is a lower one on the scale.</summary>
    public static bool Falls(Property what) => what == Property.FallingNumber;

    /// <summary>Weight of a t of wheat: its dry share for shares of solids, 1 for the rest.</summary>
    public static double Weight(Property what, double moisturePercent) => what.NeedsBasis() ? 1 - (moisturePercent / 100) : 1;

    /// <summary>A value on the scale on which it averages.</summary>
    public static double OnScale(Property what, double value, Basis basis) => what.NeedsBasis() ? value * 100 / (100 - (double)basis.MoisturePercent)
        : what == Property.FallingNumber ? 6000 / (value - 50) : value;

    /// <summary>A value back from the scale, on a basis.</summary>
    public static double FromScale(Property what, double scaled, Basis basis) => what.NeedsBasis() ? scaled * (100 - (double)basis.MoisturePercent) / 100
        : what == Property.FallingNumber ? 50 + (6000 / scaled) : scaled;

    /// <summary>t·units of the scale, by weight, that a t of mix off by one unit of the property stands for, near a value: 1 for shares of solids in a mix at the moisture of the basis; 6000/(FN − 50)² for falling number.</summary>
    public static double PerUnit(Property what, double near) => what == Property.FallingNumber ? 6000 / ((near - 50) * (near - 50)) : 1;

    /// <summary>A value of a wheat on the scale.</summary>
    public static double OnScale(Property what, SeasonValue value)
    {
        ArgumentNullException.ThrowIfNull(value);
        return OnScale(what, value.Value, value.Basis);
    }
}
