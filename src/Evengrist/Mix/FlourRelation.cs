using System.Globalization;
using Evengrist.Ledger;
using Evengrist.Quantities;

namespace Evengrist.Mix;

/// <summary>What a mill's flour is for a wheat: flour = intercept + slope · wheat, each on its own basis.</summary>
/// <param name="What">The property, of wheat and flour.</param>
/// <param name="WheatBasis">Basis of the wheat's value; default where the property has none.</param>
/// <param name="FlourBasis">Basis of the flour's value.</param>
/// <param name="Intercept">Flour's value where the wheat's is 0.</param>
/// <param name="Slope">Change of the flour's value for one of the wheat's; not 0.</param>
/// <param name="Uncertainty">One standard uncertainty of a flour's value about the line, 0 or more.</param>
/// <param name="IsFitted">Whether it was fitted to this mill's own runs.</param>
/// <param name="Source">Where it comes from, in words.</param>
public sealed record FlourRelation(Property What, Basis WheatBasis, Basis FlourBasis, double Intercept, double Slope, double Uncertainty, bool IsFitted, string Source)
{
    /// <summary>The least wheat value it was seen to hold for, on its basis; null where nobody said.</summary>
    public double? LeastWheat { get; init; }

    /// <summary>The most; null where nobody said.</summary>
    public double? MostWheat { get; init; }

    /// <summary>The flour's value.</summary>
    public double FlourOf(double wheat) => Intercept + (Slope * wheat);

    /// <summary>The wheat's value that gives a flour's.</summary>
    public double WheatFor(double flour) => (flour - Intercept) / Slope;

    /// <summary>In words, with what it rests on.</summary>
    public string Words => string.Create(
        CultureInfo.InvariantCulture, $"flour {What.Words()}{On(FlourBasis)} = {Intercept:0.###} + {Slope:0.###} × wheat{On(WheatBasis)}, ± {2 * Uncertainty:0.###} ({(IsFitted ? "fitted: " : "not fitted on this mill: ")}{Source}{Range})");

    /// <summary>Said where a wheat lies outside what the relation was seen to hold for; null where it does not.</summary>
    public string? Beyond(double wheat) => wheat < LeastWheat || wheat > MostWheat
        ? string.Create(CultureInfo.InvariantCulture, $"The wheat's {What.Words()} of {wheat:0.##} {Readings.UnitsOf(What)[0]}{On(WheatBasis)} lies outside {LeastWheat:0.##} to {MostWheat:0.##}, for which the relation of the flour was seen to hold: the flour's is extrapolated.")
        : null;

    private string Range => LeastWheat is null && MostWheat is null ? "" : string.Create(CultureInfo.InvariantCulture, $"; for wheat of {LeastWheat:0.##} to {MostWheat:0.##}");

    private static string On(Basis basis) => basis.IsStated ? " " + basis : "";
}
