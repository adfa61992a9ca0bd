using Evengrist.Bins;
using Evengrist.Quantities;

namespace Evengrist.Web.Sights;

/// <summary>Figures that several pages show.</summary>
public static class Figures
{
    /// <summary>The unit stocks of wheat are shown in.</summary>
    public static string WheatUnit(UnitSystem units) => units == UnitSystem.Si ? "t" : "bu";

    /// <summary>The unit stocks of flour are shown in.</summary>
    public static string FlourUnit(UnitSystem units) => units == UnitSystem.Si ? "t" : "cwt";

    /// <summary>A mass in the unit that its material is traded in.</summary>
    public static ShownValue Show(Mass mass, bool flour, UnitSystem units, int decimals = 1) =>
        flour ? Shown.Flour(mass, units, decimals) : Shown.Wheat(mass, units, units == UnitSystem.Si ? decimals : 0);

    /// <summary>A reckoned mass.</summary>
    public static Figure Reckoned(string what, Mass mass, bool flour, UnitSystem units, Because because, int decimals = 1) => units == UnitSystem.Si
        ? Figure.Reckoned(what, mass.Tonnes, "t", decimals, because)
        : Figure.Reckoned(what, flour ? mass.Pounds / 100m : mass.WheatBushels, flour ? "cwt" : "bu", flour ? 1 : 0, because);

    /// <summary>A stock with what went in and out.</summary>
    public static Figure Stock(string code, Mass stock, Mass into, Mass outOf, bool flour, UnitSystem units)
    {
        var sum = new Because("Sum of the recorded movements, to the gram.", [], "the ledger");
        return Reckoned($"Stock of {code}", stock, flour, units, new Because(
            "In − out, up to the moment looked at; a flow under way counts by its elapsed part.",
            [Reckoned("In", into, flour, units, sum), Reckoned("Out", outOf, flour, units, sum)], "the ledger's balance"));
    }

    /// <summary>Protein of a blend on a basis; null where nothing was read.</summary>
    public static Figure? Protein(string what, BlendProtein? blend, Basis basis)
    {
        if (blend is null)
        {
            return null;
        }

        var scale = (100m - basis.MoisturePercent) / 100m;
        Figure Read(string name, double dry) => Figure.Reckoned(name, (decimal)dry * scale, "%", 2,
            new Because($"From the reading on the truck, carried to {basis}: dry × {scale}.", [], "the readings on the trucks")) with { Basis = basis };
        return Figure.Reckoned(what, (decimal)blend.PercentDry * scale, "%", 1, new Because(
            "Mean over the truck readings, weighted by dry matter: Σ g·d·p / Σ g·d. ± is k = 2, the trucks' errors taken as independent; a bias the instrument shares over all trucks is not in it.",
            [
                Read("Least of the trucks", blend.LeastPercentDry),
                Read("Greatest of the trucks", blend.MostPercentDry),
                Figure.Seen("Trucks read", blend.LoadsRead, ""),
                Figure.Reckoned("Share of the mass with a reading", (decimal)(100 * blend.ShareRead), "%", 1, new Because("Mass from trucks with protein and moisture read, over all.", [], "the readings on the trucks")),
            ],
            "mass balance of protein")) with
        {
            Basis = basis, StandardUncertainty = (decimal?)blend.StandardUncertaintyPercentDry * scale,
        };
    }
}
