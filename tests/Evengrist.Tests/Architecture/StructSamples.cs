using Evengrist.Intake;
using Evengrist.Ledger;
using Evengrist.Packing.NetContent;
using Evengrist.Quantities;
using NodaTime;

namespace Evengrist.Tests.Architecture;

/// <summary>One value of every public struct of src/Evengrist and how it writes itself: unit, basis and all.</summary>
internal static class StructSamples
{
    public static readonly IReadOnlyDictionary<Type, (object Value, string Text)> All = new Dictionary<Type, (object, string)>
    {
        [typeof(Mass)] = (Mass.FromGrams(-1_234_567), "-1,234.567 kg"),
        [typeof(Basis)] = (Basis.At13Point5, "13.5mb"),
        [typeof(Moisture)] = (Moisture.FromPercent(14.2m), "14.2 % wet basis"),
        [typeof(SolidsShare)] = (SolidsShare.Percent(13.1m, Basis.At12), "13.1 % 12mb"),
        [typeof(FallingNumber)] = (FallingNumber.FromSeconds(385.5m), "385.5 s"),
        [typeof(LiquefactionNumber)] = (LiquefactionNumber.From(17.25), "LN 17.25"),
        [typeof(TestWeight)] = (TestWeight.Read(60.1m, TestWeightConvention.UsDurum), "60.1 lb/bu durum"),
        [typeof(Temperature)] = (Temperature.FromCelsius(-4.5m), "-4.5 °C"),
        [typeof(Money)] = (Money.Of(-6_487.58m, "USD"), "-6,487.58 USD"),
        [typeof(Price)] = (Price.Of(Money.Of(6.84m, "USD"), PriceUnit.Bushel), "6.84 USD/bu"),
        [typeof(StandardUncertainty)] = (StandardUncertainty.Of(0.25, "%"), "u = 0.25 %"),
        [typeof(FactId)] = (new FactId(17), "fact 17"),
        [typeof(PlaceId)] = (new PlaceId(17), "place 17"),
        [typeof(Layer)] = (new Layer(17, 12_500.5), "12.501 kg of parcel 17"),
        [typeof(Movement)] = (
            new Movement(new FactId(1), new PlaceId(3), new PlaceId(17), Mass.FromTonnes(26.34m), Instant.FromUtc(2025, 7, 9, 14, 10), Instant.FromUtc(2025, 7, 9, 14, 20)),
            "26,340 kg from place 3 to place 17 on 2025-07-09T14:10:00Z"),
        [typeof(TicketNumber)] = (TicketNumber.Of(new LocalDate(2025, 7, 9), 61), "25-0709-061"),
        [typeof(WeighedPackage)] = (new WeighedPackage(Instant.FromUtc(2026, 1, 14, 17, 55, 7), 252_245, 1_800, true), "25044.5 g net (25224.5 − 180.0) at 2026-01-14T17:55:07Z, thrown out"),
    };
}
