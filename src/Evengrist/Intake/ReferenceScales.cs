using Evengrist.Ledger;
using Evengrist.Quantities;

namespace Evengrist.Intake;

/// <summary>Published scales, as worked examples and as a start for scales of one's own. They are not anybody's present price.</summary>
/// <remarks>
/// Source: a federal notice of September 2021 for the government's own stocks (AMS_3419), US dollars a bushel, protein on 12 % moisture.
/// Below the first printed step of the spring scales and above the last printed value nothing was read: there they are silent. The second half is a
/// local schedule of 2013.
/// </remarks>
public static partial class ReferenceScales
{
    private const string Notice = "USDA notice AMS_3419, September 2021";

    /// <summary>Hard red winter, Kansas City: steps of 1/5 %, uneven; below 11.0 % three cents off; printed to 13.4 %.</summary>
    public static ContractScale KansasCityHardWinter { get; } = Protein("HRW-FIFTHS",
    [
        new(0m, -0.03m), new(11.0m, 0.00m), new(11.2m, 0.05m), new(11.4m, 0.10m), new(11.6m, 0.16m), new(11.8m, 0.20m), new(12.0m, 0.25m),
        new(12.2m, 0.25m), new(12.4m, 0.44m), new(12.6m, 0.44m), new(12.8m, 0.64m), new(13.0m, 0.64m), new(13.2m, 0.64m), new(13.4m, 0.64m),
    ]) with { End = 13.5m };

    /// <summary>Spring wheat, one market: steps of 1/5 % from 12.0 %, five cents each to 13.0, two cents each to 14.0, flat to 16.0.</summary>
    public static ContractScale SpringFifths { get; } = Protein("HRS-FIFTHS",
        [new(12.0m, 0.00m)]) with { Tiers = [new(13.0m, 0.2m, 0.05m), new(14.0m, 0.2m, 0.02m)], End = 16.1m };

    /// <summary>Spring wheat, another market: steps of 1/4 % from 12.0 %, six cents each to 14.0, four cents each above.</summary>
    public static ContractScale SpringQuarters { get; } = Protein("HRS-QUARTERS", [new(12.0m, 0.00m)]) with
    {
        Tiers = [new(14.0m, 0.25m, 0.06m)],
        Above = new Beyond(BeyondRule.PerStep, 0.04m, 0.25m),
    };

    private static ContractScale Protein(string code, IReadOnlyList<ScaleStep> steps) => new()
    {
        Code = code,
        Version = 1,
        Factor = Property.Protein,
        Unit = "%",
        Basis = Basis.At12,
        RecordedDecimals = 1,
        Effect = ScaleEffect.AddsToPrice,
        Currency = "USD",
        Per = PriceUnit.Bushel,
        Steps = steps,
        Source = Notice,
    };
}
