namespace Evengrist.Quantities;

/// <summary>The pairs of units that the display choice swaps, each a straight line there and back.</summary>
/// <remarks>Test weight goes by the formula of the US instrument, which differs for durum; its unit therefore says durum.</remarks>
internal sealed record ShownUnit(string Si, string Us, decimal Slope, decimal Intercept = 0m)
{
    public const string DurumKilogramsPerHectolitre = "kg/hL durum";
    public const string DurumPounds = "lb/bu durum";
    public const decimal KilogramsPerPound = Mass.GramsPerPound / 1000m;

    private static readonly ShownUnit[] Pairs =
    [
        new("kg", "lb", KilogramsPerPound),
        new("t", "short ton", 2m * KilogramsPerPound),
        new("°C", "°F", 1m / 1.8m, -32m / 1.8m),
        TestWeight("kg/hL", "lb/bu", TestWeightConvention.UsWheat),
        TestWeight(DurumKilogramsPerHectolitre, DurumPounds, TestWeightConvention.UsDurum),
    ];

    /// <summary>Value, unit and what one unit of the old is in the new; unchanged where the unit belongs to both systems.</summary>
    public static (decimal Value, string Unit, decimal Scale) Of(decimal value, string unit, UnitSystem system)
    {
        foreach (var pair in Pairs)
        {
            if (system == UnitSystem.UsCustomary && unit == pair.Si)
            {
                // °F is exact this way round; 1/1.8 is not.
                return unit == "°C" ? (value * 1.8m + 32m, pair.Us, 1.8m) : ((value - pair.Intercept) / pair.Slope, pair.Us, 1m / pair.Slope);
            }

            if (system == UnitSystem.Si && unit == pair.Us)
            {
                return (value * pair.Slope + pair.Intercept, pair.Si, pair.Slope);
            }
        }

        return (value, unit, 1m);
    }

    private static ShownUnit TestWeight(string si, string us, TestWeightConvention convention) =>
        new(si, us, TestWeightFormula.Of(convention).Slope, TestWeightFormula.Of(convention).Intercept);
}
