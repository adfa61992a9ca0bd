using System.Globalization;
using Evengrist.Bins.BestBin;
using Evengrist.Ledger;
using Evengrist.Quantities;
using Evengrist.Season;
using Evengrist.Season.Terms;

namespace Evengrist.Web.Sights.Season;

/// <summary>What a load is worth to the rest of the crop year in each bin, from the duals of a plan: at once.</summary>
/// <param name="Truck">The load as a wheat of the plan.</param>
/// <param name="Worths">By bin, best first.</param>
/// <param name="Currency">Currency of the plan.</param>
/// <param name="PlannedFrom">The first day of the plan, in words.</param>
/// <param name="Remarks">What was supposed of the load.</param>
public sealed record TruckYear(SeasonWheat Truck, IReadOnlyList<TruckWorth> Worths, string Currency, string PlannedFrom, IReadOnlyList<string> Remarks)
{
    /// <summary>Asks a linear plan.</summary>
    /// <param name="linear">The plan.</param>
    /// <param name="terms">The terms the plan goes by.</param>
    /// <param name="load">The load.</param>
    public static TruckYear Of(SeasonPlan linear, SeasonTerms terms, TruckLoad load)
    {
        ArgumentNullException.ThrowIfNull(linear);
        ArgumentNullException.ThrowIfNull(terms);
        ArgumentNullException.ThrowIfNull(load);
        var values = new Dictionary<Property, SeasonValue> { [Property.Protein] = new(load.ProteinPercentAt12, load.ProteinUncertainty, Basis.At12) };
        if (load.FallingNumber is { } falling)
        {
            values[Property.FallingNumber] = new(falling);
        }

        if (load.TestWeight is { } weight)
        {
            values[Property.TestWeight] = new(weight);
        }

        var read = new SeasonWheat("the load", load.Class, load.Tonnes, 100 * (1 - load.DryShare), new SeasonQuality(values));
        var truck = terms.Seen(read);
        var worth = new SeasonWorth(linear);
        var protein = truck.Quality.Values[Property.Protein];
        return new TruckYear(
            truck, worth.OfTruck(truck), linear.Spec.Currency, linear.Spec.Start.ToString("d MMM uuuu", CultureInfo.InvariantCulture),
            [.. UsualTerms.Missing(read, terms.Usual).Select(q => FormattableString.Invariant($"Its {q.What.Words()} was not read: the usual {q.Value:0.##} {Readings.UnitsOf(q.What)[0]} of {load.Class} is supposed for the year."))])
        {
            Higher = worth.OfTruck(truck with { Quality = truck.Quality.With(Property.Protein, protein with { Value = protein.Value + load.ProteinUncertainty }) }),
        };
    }

    /// <summary>The same for protein one standard uncertainty higher; the same again where the reading carries none.</summary>
    public required IReadOnlyList<TruckWorth> Higher { get; init; }

    /// <summary>Money for a tonne of the load in a bin against a bin of its own, with its uncertainty from the protein reading; null for a bin the plan does not know, or that cannot take it.</summary>
    public (double PerTonne, double Uncertainty)? PerTonne(string bin) =>
        Of(Worths, bin) is { } worth && Of(Higher, bin) is { } higher ? (worth, Math.Abs(higher - worth)) : null;

    private double? Of(IReadOnlyList<TruckWorth> worths, string bin) =>
        worths.FirstOrDefault(w => w.Home == bin && w.WhyNot.Length == 0) is { } worth ? (worth.Money - worth.Apart) / Truck.OpeningTonnes : null;
}
