using System.Globalization;
using Evengrist.Ledger;
using Evengrist.Quantities;
using Evengrist.Tracing;

namespace Evengrist.Web.Sights.Traces;

/// <summary>Numbers and words of a trace as pages and prints show them.</summary>
public static class TraceWords
{
    /// <summary>Grams as kilograms or pounds with one decimal; nothing at all is a dash.</summary>
    public static string Kilograms(double grams, UnitSystem units, int decimals = 1) =>
        grams <= 0 ? "–" : Shown.Number((decimal)Math.Round(grams) / 1000m, "kg", decimals, units).Value;

    /// <summary>The unit of <see cref="Kilograms"/>.</summary>
    public static string Unit(UnitSystem units) => units == UnitSystem.Si ? "kg" : "lb";

    /// <summary>Grams with their unit: tonnes (or short tons) with two decimals, below a tonne kilograms (or pounds) with one.</summary>
    public static string Tonnes(double grams, UnitSystem units) => grams < 1_000_000
        ? Shown.Number((decimal)Math.Round(grams) / 1000m, "kg", 1, units).ToString()
        : Shown.Number((decimal)Math.Round(grams) / 1_000_000m, "t", 2, units).ToString();

    /// <summary>A fraction as per cent.</summary>
    public static string Percent(double fraction, int decimals = 1) => fraction <= 0 ? "–" : (100 * fraction).ToString("F" + decimals.ToString(CultureInfo.InvariantCulture), CultureInfo.InvariantCulture);

    /// <summary>The threshold with its unit.</summary>
    public static string Threshold(Mass threshold, UnitSystem units) =>
        Shown.Weight(threshold, units, units == UnitSystem.Si && threshold.Grams % 1000 == 0 ? 0 : 1).ToString();

    /// <summary>When the packages of a consignee left: one moment, or the first and the last.</summary>
    public static string Left(Consignee consignee, Func<NodaTime.Instant, string> say)
    {
        ArgumentNullException.ThrowIfNull(consignee);
        ArgumentNullException.ThrowIfNull(say);
        return consignee.First is not { } first ? $"{consignee.Packages.Count(p => p.Hold is not null)} of them on hold"
            : first == consignee.Last ? say(first) : $"{say(first)} to {say(consignee.Last!.Value)}";
    }

    /// <summary><c>1 package</c>, <c>12 packages</c>.</summary>
    public static string Packages(int count) => string.Create(CultureInfo.InvariantCulture, $"{count:N0} {(count == 1 ? "package" : "packages")}");

    /// <summary>A belief in per cent of all beliefs.</summary>
    public static string Weight(Belief belief, IReadOnlyList<Belief> all)
    {
        ArgumentNullException.ThrowIfNull(belief);
        return (100 * belief.Weight / all.Sum(b => b.Weight)).ToString("0.#", CultureInfo.InvariantCulture) + " %";
    }

    /// <summary>A number with an invariant decimal point, for drawings.</summary>
    public static string N(double number) => number.ToString("0.##", CultureInfo.InvariantCulture);

    /// <summary>Farm and district of a root, or that they are unknown.</summary>
    public static string Origin(Root root)
    {
        ArgumentNullException.ThrowIfNull(root);
        return root.Origin.Kind switch
        {
            PlaceKind.Elevator => "field unknown",
            PlaceKind.Opening => "stock when the ledger began; origin unknown",
            PlaceKind.Gain => "found at a count; origin unknown",
            PlaceKind.Customer => "came back from a customer; which package it was is not recorded",
            PlaceKind.Water => "water",
            PlaceKind.AdditiveLot => root.Origin.Name.Length > 0 ? root.Origin.Name : "additive",
            _ => root.Origin.Of,
        };
    }
}
