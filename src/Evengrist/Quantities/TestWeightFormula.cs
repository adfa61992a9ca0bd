namespace Evengrist.Quantities;

/// <summary>The straight line from a raw test weight to kg/hL, with its name and source, so that a screen can say which was used.</summary>
/// <param name="Slope">kg/hL per unit of the raw reading.</param>
/// <param name="Intercept">kg/hL added.</param>
/// <param name="Unit">Unit of the raw reading, as readings write it: <c>kg/hL</c>, <c>lb/bu</c>, <c>g/0.5L</c>.</param>
/// <param name="Name">The formula in words.</param>
/// <param name="Source">Where it stands.</param>
public sealed record TestWeightFormula(decimal Slope, decimal Intercept, string Unit, string Name, string Source)
{
    private const string Us = "FGIS-PN-97-5, as quoted by a state wheat commission";
    private const string Canadian = "Canadian Grain Commission, test weight calculators";

    private static readonly TestWeightFormula AsRead = new(1m, 0m, "kg/hL", "read in kg/hL", "by definition");
    private static readonly TestWeightFormula UsWheat = new(1.292m, 1.419m, "lb/bu", "kg/hL = 1.292 × lb/bu + 1.419 (US, wheat other than durum)", Us);
    private static readonly TestWeightFormula UsDurum = new(1.292m, 0.630m, "lb/bu", "kg/hL = 1.292 × lb/bu + 0.630 (US, durum)", Us);
    private static readonly TestWeightFormula CanadianWheat = new(0.2012m, 1.4767m, "g/0.5L", "kg/hL = 0.2012 × g/0.5 L + 1.4767 (Canadian, wheat)", Canadian);
    private static readonly TestWeightFormula CanadianDurum = new(0.202m, 0.7572m, "g/0.5L", "kg/hL = 0.202 × g/0.5 L + 0.7572 (Canadian, amber durum)", Canadian);

    /// <summary>The formula of a convention.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Not a convention.</exception>
    public static TestWeightFormula Of(TestWeightConvention convention) => convention switch
    {
        TestWeightConvention.KilogramsPerHectolitre => AsRead,
        TestWeightConvention.UsWheat => UsWheat,
        TestWeightConvention.UsDurum => UsDurum,
        TestWeightConvention.CanadianWheat => CanadianWheat,
        TestWeightConvention.CanadianDurum => CanadianDurum,
        _ => throw new ArgumentOutOfRangeException(nameof(convention), convention, "Say how the test weight was read."),
    };

    /// <summary>kg/hL of a raw reading, not rounded.</summary>
    public decimal ToKilogramsPerHectolitre(decimal raw) => Slope * raw + Intercept;

    /// <summary>The raw reading that would give this many kg/hL, not rounded.</summary>
    public decimal FromKilogramsPerHectolitre(decimal kilogramsPerHectolitre) => (kilogramsPerHectolitre - Intercept) / Slope;
}
