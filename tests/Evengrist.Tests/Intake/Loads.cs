using Evengrist.Intake;
using Evengrist.Ledger;
using Evengrist.Quantities;
using NodaTime;

namespace Evengrist.Tests.Intake;

/// <summary>Loads and contracts that several tests share.</summary>
internal static class Loads
{
    public static readonly LocalDate Day = new(2025, 7, 9);

    public static readonly ContractTerms Plain = new()
    {
        Code = "HRW-25",
        Version = 1,
        Base = Price.Of(Money.Of(6.20m, "USD"), PriceUnit.Bushel),
        DeductDockage = true,
        DryMatterShrink = true,
        BaseMoisture = Moisture.FromPercent(13.5m),
    };

    public static readonly ContractTerms HardWinter = Plain with { Scales = [ReferenceScales.KansasCityHardWinter] };

    public static readonly Finding Dockage = new(Property.Dockage, 1.2m, "%");
    public static readonly Finding Moist = new(Property.Moisture, 14.2m, "%");
    public static readonly Finding Protein = new(Property.Protein, 13.1m, "%", Basis.At12);

    public static Delivery Of(decimal grossKilograms, decimal tareKilograms, params Finding[] findings) =>
        new(Weighing.Of(Mass.FromKilograms(grossKilograms), Mass.FromKilograms(tareKilograms)), Day, findings);

    public static Settlement Settled(Delivery delivery, ContractTerms terms) =>
        SettlementModel.Settle(delivery, terms) switch
        {
            Settlement settled => settled,
            NotSettled not => throw new Xunit.Sdk.XunitException(string.Join(" ", not.Reasons)),
            _ => throw new Xunit.Sdk.XunitException("neither settled nor not"),
        };

    public static IReadOnlyList<string> Reasons(Delivery delivery, ContractTerms terms) =>
        Assert.IsType<NotSettled>(SettlementModel.Settle(delivery, terms)).Reasons;
}
