using CsCheck;
using Evengrist.Intake;
using Evengrist.Ledger;
using Evengrist.Quantities;
using Evengrist.Tests.Quantities;

namespace Evengrist.Tests.Intake;

public sealed class SettlementLawTests
{
    private static readonly ContractScale Handling = new()
    {
        Code = "WET",
        Version = 1,
        Factor = Property.Moisture,
        Unit = "%",
        RecordedDecimals = 1,
        Effect = ScaleEffect.MultipliesMass,
        Steps = [new(0m, 0m), new(14.1m, -0.5m), new(15.1m, -1.4m)],
        Above = Beyond.Holds,
    };

    private static readonly ContractScale Light = new()
    {
        Code = "TW",
        Version = 1,
        Factor = Property.TestWeight,
        Unit = "lb/bu",
        RecordedDecimals = 1,
        Effect = ScaleEffect.AddsToPrice,
        Currency = "USD",
        Per = PriceUnit.Bushel,
        Steps = [new(50m, -0.20m), new(58m, 0m)],
        Above = Beyond.Holds,
    };

    private static readonly Gen<(Delivery Load, decimal Moisture)> Any =
        Gen.Select(Gen.Decimal[13, 60], Gen.Decimal[0, 5], Gen.Decimal[9, 18], Gen.Decimal[11, 13], Gen.Decimal[52, 64]).Select((gross, dockage, moisture, protein, weight) =>
            (Loads.Of(gross * 1000m, 12_000m,
                new(Property.Dockage, dockage, "%"), new(Property.Moisture, moisture, "%"),
                new(Property.Protein, protein, "%", Basis.At12), new(Property.TestWeight, weight, "lb/bu")), moisture));

    [Fact]
    public void Settle_AnyLoad_KeepsDryMatterOrTakesNothing() =>
        Any.Sample(x =>
        {
            var settled = Loads.Settled(x.Load, Loads.HardWinter);
            var recorded = Recorded.To(x.Moisture, 1);
            var paidAt = Math.Min(recorded, 13.5m);
            Num.Near(settled.Clean.Kilograms * (100m - recorded), settled.Settled.Kilograms * (100m - paidAt), 0.1m);
        });

    [Fact]
    public void Settle_ScalesInAnyOrder_PaysTheSame() =>
        Any.Sample(x =>
        {
            var (one, other) = (Loads.Plain with { Scales = [Handling, Light, ReferenceScales.KansasCityHardWinter] }, Loads.Plain with { Scales = [ReferenceScales.KansasCityHardWinter, Light, Handling] });
            Assert.Equal(Loads.Settled(x.Load, one).Pay, Loads.Settled(x.Load, other).Pay);
        });

    [Fact]
    public void Settle_MoreDockage_NeverPaysMore() =>
        Any.Sample(x =>
        {
            var dirtier = x.Load with { Findings = [.. x.Load.Findings.Select(f => f.What == Property.Dockage ? f with { Value = f.Value + 0.3m } : f)] };
            Assert.True(Loads.Settled(dirtier, Loads.HardWinter).Pay < Loads.Settled(x.Load, Loads.HardWinter).Pay);
        });

    [Fact]
    public void Settle_MassAndPriceEffects_MultiplyAndAdd()
    {
        var load = Loads.Of(38_460m, 12_120m, Loads.Dockage with { Value = 0m }, Loads.Moist, Loads.Protein, new(Property.TestWeight, 75.0m, "kg/hL"));
        var settled = Loads.Settled(load, Loads.Plain with { DryMatterShrink = false, Scales = [Handling, Light, ReferenceScales.KansasCityHardWinter] });
        Assert.Equal(26_340m * 0.995m, settled.Settled.Kilograms);
        Assert.Equal("6.64 USD/bu", settled.Price.ToString()); // 6.20 + 0.64 − 0.20; 75.0 kg/hL is 56.95 lb/bu
    }

    [Fact]
    public void Settle_DurumContract_UsesTheDurumEquation()
    {
        // 74.5 kg/hL is 56.6 lb/bu by the equation of common wheat and 57.2 by that of durum; the step lies between.
        var scale = Light with { Steps = [new(50m, -0.20m), new(57m, 0m)] };
        var load = Loads.Of(38_460m, 12_120m, Loads.Dockage, Loads.Moist, new(Property.TestWeight, 74.5m, "kg/hL"));
        Assert.Equal("6.00 USD/bu", Loads.Settled(load, Loads.Plain with { Scales = [scale] }).Price.ToString());
        Assert.Equal("6.20 USD/bu", Loads.Settled(load, Loads.Plain with { Durum = true, Scales = [scale] }).Price.ToString());
    }

    [Fact]
    public void Settle_ScaleTakesMoreThanThePrice_NotSettled()
    {
        var load = Loads.Of(38_460m, 12_120m, Loads.Dockage, Loads.Moist, new(Property.TestWeight, 55m, "lb/bu"));
        var scale = Light with { Steps = [new(50m, -7m), new(58m, 0m)] };
        Assert.Contains("nothing to pay for", Assert.Single(Loads.Reasons(load, Loads.Plain with { Scales = [scale] })), StringComparison.Ordinal);
    }

    [Fact]
    public void Settle_ValuesAtTheEdgeOfWhatALedgerTakes_NeverThrows()
    {
        var don = Light with { Code = "DON", Factor = Property.Don, Unit = "mg/kg", Basis = Basis.Dry };
        var load = Loads.Of(120_000m, 1m, Loads.Dockage with { Value = 100m }, Loads.Moist with { Value = 60m },
            new(Property.Don, 1000m, "mg/kg", Basis.At(99.99m)), new(Property.TestWeight, 550m, "g/0.5L"));
        Assert.IsType<NotSettled>(SettlementModel.Settle(load, Loads.Plain with { Scales = [don, Light] }));
    }

    [Fact]
    public void Settle_BeyondARejectLimit_NotSettledAndSaysWhichScale()
    {
        var falling = Light with { Code = "FN", Factor = Property.FallingNumber, Unit = "s", RecordedDecimals = 0, Steps = [new(250m, 0m)], RejectBelow = 250m };
        var load = Loads.Of(38_460m, 12_120m, Loads.Dockage, Loads.Moist, new(Property.FallingNumber, 210m, "s"));
        Assert.Equal("falling number of 210 s is beyond 250 s: under scale FN v1 such a load is not taken.", Assert.Single(Loads.Reasons(load, Loads.Plain with { Scales = [falling] })));
    }

    [Fact]
    public void Settle_ScaleNotInForceOrBroken_NotSettled()
    {
        var load = Loads.Of(38_460m, 12_120m, Loads.Dockage, Loads.Moist, new(Property.TestWeight, 60m, "lb/bu"));
        Assert.Contains("Scale TW v1 is not in force on 2025-07-09", Assert.Single(Loads.Reasons(load, Loads.Plain with { Scales = [Light with { Until = Loads.Day.PlusDays(-1) }] })), StringComparison.Ordinal);
        Assert.Contains("in EUR", Assert.Single(Loads.Reasons(load, Loads.Plain with { Scales = [Light with { Currency = "EUR" }] })), StringComparison.Ordinal);
        Assert.Contains("twice", Assert.Single(Loads.Reasons(load, Loads.Plain with { Scales = [Light, Light] })), StringComparison.Ordinal);
    }

    [Fact]
    public void Settle_NothingLeft_NotSettled() =>
        Assert.Contains("nothing to pay for", Assert.Single(Loads.Reasons(Loads.Of(38_460m, 38_460m, Loads.Dockage, Loads.Moist), Loads.Plain)), StringComparison.Ordinal);

    [Fact]
    public void Lines_FindingWithAnUncertainty_CarryItToTheScalesUnitAndBasis()
    {
        var load = Loads.Of(38_460m, 12_120m, Loads.Dockage, Loads.Moist, new(Property.Protein, 14.89m, "%", Basis.Dry, 0.25m), new(Property.TestWeight, 75.0m, "kg/hL", default, 1.292m));
        var lines = Loads.Settled(load, Loads.Plain with { Scales = [ReferenceScales.KansasCityHardWinter, Light] }).Lines;
        Assert.Equal("13.1 % 12mb ± 0.44 (reckoned)", Factor(lines, "protein scale").ToString()); // 2 × 0.25 × 0.88
        Num.Near(1m, Factor(lines, "test weight scale").StandardUncertainty!.Value, 1e-20m); // 1.292 kg/hL ÷ 1.292
    }

    private static Figure Factor(IReadOnlyList<Figure> lines, string what) => lines.Single(l => l.What == what).Because!.Inputs.Single();
}
