using Evengrist.Ledger;
using Evengrist.Quantities;

namespace Evengrist.Intake.Paying;

/// <summary>The quality of several loads together, each property over the loads that were read for it.</summary>
/// <remarks>
/// Moisture and what is found in the cleaned sample by clean mass, dockage by net mass, shares of solids by dry matter, falling number by
/// liquefaction number. ± holds where the errors of the loads are independent; a common error of one instrument stays in full. Model: docs/model/statements.md.
/// </remarks>
public static class QualityAverage
{
    private static readonly Property[] Shown =
        [Property.Protein, Property.Moisture, Property.TestWeight, Property.Dockage, Property.FallingNumber, Property.Don];

    /// <summary>Properties that are averaged, in the order of a statement.</summary>
    public static IReadOnlyList<Property> Properties => Shown;

    /// <summary>The average of one property; null where no load was read for it.</summary>
    /// <param name="loads">The loads.</param>
    /// <param name="what">One of <see cref="Properties"/>.</param>
    /// <param name="basis">The basis on which a share of solids is stated.</param>
    public static QualityLine? Of(IReadOnlyCollection<LoadFacts> loads, Property what, Basis basis)
    {
        ArgumentNullException.ThrowIfNull(loads);
        if (!Shown.Contains(what))
        {
            throw new ArgumentException($"{what.Words()} is not averaged over loads.", nameof(what));
        }

        var read = loads.Select(l => Weighed(l, what, basis)).OfType<Part>().ToList();
        var weight = read.Sum(p => p.Weight);
        if (weight <= 0.0)
        {
            return null;
        }

        var mean = read.Sum(p => p.Weight * p.Value) / weight;
        var known = read.All(p => p.Uncertainty is not null);
        var one = known ? Math.Sqrt(read.Sum(p => Math.Pow(p.Weight * p.Uncertainty!.Value, 2))) / weight : (double?)null;
        var (value, slope) = what == Property.FallingNumber ? ((6000 / mean) + 50, 6000 / (mean * mean)) : (mean, 1);
        var figure = Figure.Reckoned(what.Words(), (decimal)value, what.NeedsBasis() || what != Property.TestWeight ? Readings.UnitsOf(what)[0] : "kg/hL", Decimals(what), Why(what, read.Count)) with
        {
            Basis = what.NeedsBasis() ? basis : default, StandardUncertainty = (decimal?)(one * slope),
        };
        return new(what, figure, read.Count, Mass.FromGrams(read.Sum(p => p.Net.Grams)));
    }

    /// <summary>Every average there is.</summary>
    public static IReadOnlyList<QualityLine> All(IReadOnlyCollection<LoadFacts> loads, Basis basis) => [.. Shown.Select(w => Of(loads, w, basis)).OfType<QualityLine>()];

    /// <summary>Net less dockage, kg; the net where dockage was not read.</summary>
    internal static double CleanKilograms(LoadFacts load) => (double)(load.Net.Kilograms * (1m - (load.Read(Property.Dockage)?.Value ?? 0m) / 100m));

    private static Part? Weighed(LoadFacts load, Property what, Basis basis)
    {
        if (load.Read(what) is not { } reading || load.Net <= Mass.Zero)
        {
            return null;
        }

        var (clean, value, one) = (CleanKilograms(load), (double)reading.Value, (double?)reading.StandardUncertainty);
        switch (what)
        {
            case Property.Dockage:
                return new(load.Net, (double)load.Net.Kilograms, value, one);
            case Property.FallingNumber:
                var seconds = FallingNumber.FromSeconds(reading.Value);
                return new(load.Net, clean, seconds.Liquefaction.Value, one * 6000 / Math.Pow(value - 50, 2));
            case Property.TestWeight:
                var formula = TestWeightFormula.Of(TestWeight.ConventionOf(reading.Unit, load.Terms?.Durum ?? false));
                return new(load.Net, clean, (double)formula.ToKilogramsPerHectolitre(reading.Value), one * (double)formula.Slope);
            case Property.Moisture:
                return new(load.Net, clean, value, one);
            default:
                // Solids carry it, so dry matter weighs; without a moisture the basis it was read on stands in for the load's own.
                var dry = clean * (1 - ((double)(load.Read(Property.Moisture)?.Value ?? reading.Basis.MoisturePercent) / 100));
                var carried = (double)reading.Basis.Restated(1m, basis);
                return new(load.Net, dry, value * carried, one * carried);
        }
    }

    private static Because Why(Property what, int loads) => new(
        (what switch
        {
            Property.Dockage => "Σ net × dockage ÷ Σ net",
            Property.FallingNumber => "LN = 6000/(FN − 50) averaged by clean mass, then FN = 6000/LN + 50",
            Property.Moisture or Property.TestWeight => "Σ clean mass × value ÷ Σ clean mass",
            _ => "Σ dry matter × value ÷ Σ dry matter, all on one basis",
        }) + $", over {loads} {(loads == 1 ? "load" : "loads")} read",
        [], "docs/model/statements.md");

    private static int Decimals(Property what) => what switch { Property.FallingNumber => 0, Property.Protein or Property.Don or Property.Dockage => 2, _ => 1 };

    private sealed record Part(Mass Net, double Weight, double Value, double? Uncertainty);
}
