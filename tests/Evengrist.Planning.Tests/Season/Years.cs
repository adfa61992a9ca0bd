using Evengrist.Ledger;
using Evengrist.Planning.Season;
using Evengrist.Quantities;
using Evengrist.Season;
using NodaTime;

namespace Evengrist.Planning.Tests.Season;

/// <summary>Small seasons for tests, and plans read out of outcomes.</summary>
internal static class Years
{
    public static readonly LocalDate Start = new(2025, 9, 15);

    public static SeasonQuality Protein(double percentAt12) => new(new Dictionary<Property, SeasonValue> { [Property.Protein] = new(percentAt12, 0, Basis.At12) });

    public static SeasonWheat Wheat(string code, double tonnes, double protein, string of = "HW") => new(code, of, tonnes, 12, Protein(protein));

    public static SeasonLimit ProteinLeast(double least, double price = 400) => new(Property.Protein, least, null, price) { Basis = Basis.At12 };

    /// <summary>Weeks of one flour, 100 t of wheat a week at a yield of 0.75, from wheats of one class.</summary>
    public static SeasonSpec Weeks(int weeks, double protein, params SeasonWheat[] wheats)
    {
        SeasonPeriod[] periods = [.. Enumerable.Range(0, weeks).Select(w => new SeasonPeriod(Start.PlusWeeks(w), 7))];
        return new SeasonSpec(periods, [new("A", 10, [.. periods.Select(_ => 20.0)])], wheats, [new("WB", "A", [.. periods.Select(_ => 75.0)], 0.75, 900) { Limits = [ProteinLeast(protein)] }], "USD");
    }

    public static SeasonPlan Linear(SeasonSpec spec) => Planned(SeasonPlanner.Linear(spec));

    public static SeasonPlan Planned(SeasonOutcome outcome) => Assert.IsType<SeasonPlanned>(outcome).Plan;
}
