using Evengrist.Intake;
using Evengrist.Quantities;

namespace Evengrist.Demo;

/// <summary>The contracts under which the growers' trucks of this harvest are settled, one for each class. Prices invented; the protein scales are the published examples, held on at their ends.</summary>
public static class HouseContracts
{
    /// <summary>One version of each.</summary>
    public static IReadOnlyList<ContractTerms> All { get; } =
    [
        For("HW", 6.20m, ReferenceScales.KansasCityHardWinter with { Above = Beyond.Holds }),
        For("HWW", 6.45m, ReferenceScales.KansasCityHardWinter with { Above = Beyond.Holds }),
        For("HS", 6.95m, ReferenceScales.SpringQuarters with { Below = Beyond.Holds }),
        For("SW", 5.60m),
    ];

    /// <summary>Code of the contract for a class.</summary>
    public static string CodeFor(string wheat) => $"{wheat}-2025";

    private static ContractTerms For(string wheat, decimal dollarsPerBushel, params ContractScale[] scales) => new()
    {
        Code = CodeFor(wheat),
        Version = 1,
        Name = $"growers, harvest 2025, {wheat}",
        Base = Price.Of(Money.Of(dollarsPerBushel, "USD"), PriceUnit.Bushel),
        DeductDockage = true,
        DryMatterShrink = true,
        BaseMoisture = Moisture.FromPercent(13.5m),
        Scales = scales,
    };
}
