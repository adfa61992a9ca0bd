using Evengrist.Intake;
using Evengrist.Intake.Paying;
using Evengrist.Intake.Trade;
using Evengrist.Ledger;
using Evengrist.Quantities;
using NodaTime;

namespace Evengrist.Tests.Intake.Paying;

/// <summary>Loads without a ledger.</summary>
internal static class PosedLoads
{
    public static readonly LocalDate Day = new(2025, 7, 9);
    private static readonly Instant Noon = Instant.FromUtc(2025, 7, 9, 18, 0);

    /// <summary>The load of the acceptance list (practice A1): 38,460 and 12,120 kg, 1.2 % dockage, 14.2 % moisture, 13.1 % protein 12mb.</summary>
    public static LoadFacts Worked => Of("25-0709-001", "DS-2", 38_460m, 12_120m, dockage: 1.2m, moisture: 14.2m, protein: 13.1m);

    public static LoadFacts Of(string ticket, string field, decimal gross, decimal tare, decimal dockage = 0m, decimal moisture = 12m, decimal protein = 12m, decimal? falling = null, decimal? uncertainty = null, string variety = "Larkspur", string district = "Northledge")
    {
        var number = 1;
        Reading Read(Property what, decimal value, string unit, Basis basis = default) =>
            new(new FactId(number++), new PlaceId(1), Noon, what, value, unit, basis, "posed", what.ToString(), uncertainty);
        var weighing = Weighing.Of(Mass.FromKilograms(gross), Mass.FromKilograms(tare));
        return new LoadFacts(new Place(new PlaceId(1), ticket, PlaceKind.Truck, "trailer 1", "HW"), Noon)
        {
            Day = Day,
            Date = Day,
            Source = new Place(new PlaceId(2), field, PlaceKind.Field) { Of = $"Drumsallow · {district}" },
            Field = new FieldSheet { Code = field, Grower = "F02", Variety = variety, District = district },
            Grower = new Party { Code = "F02", Name = "Drumsallow" },
            Readings =
            [
                Read(Property.GrossWeight, gross, "kg"), Read(Property.TareWeight, tare, "kg"), Read(Property.Dockage, dockage, "%"), Read(Property.Moisture, moisture, "%"),
                Read(Property.Protein, protein, "%", Basis.At12), .. falling is { } seconds ? [Read(Property.FallingNumber, seconds, "s")] : Array.Empty<Reading>(),
            ],
            Weighing = weighing,
            Net = weighing.Net,
            Contract = "HRW-25 v1",
            Terms = Loads.HardWinter with { Scales = [ReferenceScales.KansasCityHardWinter with { Above = Beyond.Holds }] },
        };
    }

    public static LoadFacts Paid(this LoadFacts load, PaymentOutcome outcome)
    {
        var payment = Assert.IsType<ToPay>(outcome).Payment;
        var fact = new Happening(new FactId(100 + load.Payments.Count), new PlaceId(1), Noon, HappeningKind.Settled, payment.ToText());
        Assert.True(Payment.TryRead(fact, out var read));
        return load with { Payments = [.. load.Payments, (fact, read)] };
    }

    public static LoadFacts Reads(this LoadFacts load, Property what, decimal value) =>
        load with { Readings = [.. load.Readings.Select(r => r.What == what ? r with { Value = value, Id = new FactId(900) } : r)] };

    public static PaymentAccount Account(this LoadFacts load) => PaymentAccount.Of(load);

    public static Money Dollars(decimal amount) => Money.Of(amount, "USD");
}
