using Evengrist.Intake;
using Evengrist.Quantities;
using Evengrist.Records;

namespace Evengrist.Web.Sights.Trucks;

/// <summary>A contract to begin with where a mill has none, said to be an example in its code and its name.</summary>
/// <remarks>Base price and deductions are posed; the protein table is that of the notice named in it.</remarks>
public static class ExampleContract
{
    /// <summary>Its code; the word example stands in it so that no print can hide it.</summary>
    public const string Code = "KC-HARD-WINTER-2021-EXAMPLE";

    /// <summary>The terms.</summary>
    public static ContractTerms Terms { get; } = new()
    {
        Code = Code,
        Version = 1,
        Name = "Kansas City hard winter 2021, an example and nobody's present price",
        Base = Price.Of(Money.Of(6.20m, "USD"), PriceUnit.Bushel),
        DeductDockage = true,
        DryMatterShrink = true,
        BaseMoisture = Moisture.FromPercent(13.5m),
        Scales = [ReferenceScales.KansasCityHardWinter],
    };

    /// <summary>Keeps it where the mill has no contract at all.</summary>
    public static void KeepWhereNoneIs(Mill mill)
    {
        ArgumentNullException.ThrowIfNull(mill);
        if (mill.Contracts.All().Count == 0)
        {
            mill.Contracts.Keep(Code, 1, TermsJson.Write(Terms), "Evengrist");
        }
    }
}
