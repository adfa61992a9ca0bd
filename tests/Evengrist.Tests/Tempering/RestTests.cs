using CsCheck;
using Evengrist.Ledger;
using Evengrist.Tempering;
using Evengrist.Tests.Ledger;
using NodaTime;

namespace Evengrist.Tests.Tempering;

public sealed class RestTests
{
    [Theory]
    [InlineData(15, 1.404e-12, 45.1)] // Reckoned apart from this code from D = 30 exp(−12 300/RT) cm²/s, R = 1.987 cal/(mol K): Cereal Chemistry 37:309 (1960), abstract; the unit from memory.
    [InlineData(25, 2.8856e-12, 21.95)]
    [InlineData(40, 7.801e-12, 8.1)]
    public void Soaking_Diffusivity_IsThatOfTheWorkedCase(double celsius, double diffusivity, double hours)
    {
        Assert.Equal(diffusivity, DiffusionLaw.Soaking.Diffusivity(celsius), diffusivity * 5e-4);
        Assert.Equal(hours, DiffusionLaw.Soaking.EveningHours(celsius), hours * 3e-3);
    }

    [Theory]
    [InlineData(1, 0.23001)] // Reckoned apart from this code: (2/√π)(S/V)√(D t) with S/V 20 1/cm at 25 °C [derived; form from memory].
    [InlineData(6, 0.56341)]
    public void Soaking_ShareTaken_IsThatOfTheWorkedCase(double hours, double share) => Assert.Equal(share, DiffusionLaw.Soaking.ShareTaken(25, hours), 1e-4);

    [Theory]
    [InlineData(25, 8.6775e-11)] // A study of drying wheat (scielo.br): D at both ends of its range, activation energy 42.00 kJ/mol.
    [InlineData(55, 41.0977e-11)]
    public void Drying_Diffusivity_IsThatOfTheStudyWithinAPerCent(double celsius, double diffusivity) => Assert.Equal(diffusivity, DiffusionLaw.Drying.Diffusivity(celsius), diffusivity * 0.01);

    [Fact]
    public void Of_ColderWheat_RestsLongerByBothLawsAndTheySayHowFarTheyDiffer()
    {
        // By hand: 18 h × D(25)/D(15): soaking 18 × 2.8856/1.404 = 37.0; drying 18 × exp(42 000/8.3145 × (1/288.15 − 1/298.15)) = 32.4.
        var cold = RestCorrection.Of(18, 25, 15);
        Assert.Equal((37.0, 32.4), (Math.Round(cold.SoakingHours, 1), Math.Round(cold.DryingHours, 1)));
        Assert.Equal(cold.SoakingHours - cold.DryingHours, cold.DisagreementHours, 1e-12);
        Assert.Equal(cold.SoakingHours, cold.LongerHours);
        Assert.InRange(RestCorrection.Of(18, 25, 25).SpeedRatio, 29, 31);
        Assert.Contains(cold.Remarks, r => r.Contains("carried on", StringComparison.Ordinal));
        Assert.Contains("in about 45.1 h by the soaking law and 1.3 h by the drying law", cold.OfAKernel, StringComparison.Ordinal); // 2.25e-6/(π² · 1.404e-12) and 2.25e-6/(π² · 4.82e-11) s.
        Assert.DoesNotContain(RestCorrection.Of(18, 25, 30).Remarks, r => r.Contains("carried on", StringComparison.Ordinal));
    }

    [Fact]
    public void Of_AnyTwoTemperatures_ThereAndBackIsTheSameRestAndWarmerIsShorter() =>
        Gen.Select(Gen.Double[0.1, 72], Gen.Double[0, 50], Gen.Double[0, 49]).Sample((hours, at, celsius) =>
        {
            var there = RestCorrection.Of(hours, at, celsius);
            var warmer = RestCorrection.Of(hours, at, celsius + 1);
            double Back(DiffusionLaw law, double by) => by * law.Diffusivity(celsius) / law.Diffusivity(at);
            return Math.Abs(Back(DiffusionLaw.Soaking, there.SoakingHours) - hours) < 1e-9 && Math.Abs(Back(DiffusionLaw.Drying, there.DryingHours) - hours) < 1e-9
                && warmer.SoakingHours < there.SoakingHours && warmer.DryingHours < there.DryingHours;
        });

    [Fact]
    public void Faults_NumbersThatCannotBe_AreNamed()
    {
        Assert.Equal(["The rest lies from 0 to 72 hours.", "The temperature the rest holds at lies from 0 to 50 °C.", "The wheat's temperature lies from 0 to 50 °C."], RestCorrection.Faults(-1, 80, double.NaN));
        Assert.Throws<ArgumentException>(() => RestCorrection.Of(-1, 25, 25));
    }

    [Fact]
    public void Window_OfAFilling_IsReadyFirstAndLast()
    {
        // Common practice: a bin filled from 22:10, 18 h of rest: its first wheat is ready at 16:10, its last 18 h after the end of filling.
        var filled = new RestWindow(Instant.FromUtc(2026, 1, 13, 22, 10), Instant.FromUtc(2026, 1, 14, 4, 10), Duration.FromHours(18));
        Assert.Equal((Instant.FromUtc(2026, 1, 14, 16, 10), Instant.FromUtc(2026, 1, 14, 22, 10)), (filled.FirstReady, filled.LastReady));
        Assert.Equal([RestState.Resting, RestState.PartlyReady, RestState.Ready], new[] { 16, 18, 23 }.Select(h => filled.At(Instant.FromUtc(2026, 1, 14, h, 0))));

        // Over from hard wheat to soft: the last, with 6 h of rest, is ready before the first.
        var over = new RestWindow(filled.FirstIn, filled.LastIn, Duration.FromHours(18), Duration.FromHours(6));
        Assert.Equal(RestState.Resting, over.At(Instant.FromUtc(2026, 1, 14, 12, 0)));
        Assert.Equal(RestState.Ready, over.At(Instant.FromUtc(2026, 1, 14, 17, 0)));
    }

    [Fact]
    public void Queue_FilledAndDrawn_KnowsTheOldestAndTheNewest()
    {
        // By hand: 60 t run in from hour 0 to 6, 10 t/h; 20 t out from hour 10 to 12, 10 t/h. At hour 12 the oldest 20 t are gone: the oldest left went in at hour 2.
        var mill = Mill(stirred: 0);
        mill.Move("OPEN", "T", 60m, 0, 6).Move("T", "U", 20m, 10, 12);
        var (filling, full, drawn) = (At(mill, 3), At(mill, 8), At(mill, 11));
        Assert.Equal((PosedMill.Hour(0), PosedMill.Hour(3), 10.0), (filling.FirstIn!.Value, filling.LastIn!.Value, filling.TonnesPerHourIn));
        Assert.Equal((PosedMill.Hour(0), PosedMill.Hour(6)), (full.FirstIn!.Value, full.LastIn!.Value));
        Assert.Equal((PosedMill.Hour(1), PosedMill.Hour(6), 10.0), (drawn.FirstIn!.Value, drawn.LastIn!.Value, drawn.TonnesPerHourOut));
        Assert.Equal(PosedMill.Hour(2), At(mill, 12).FirstIn);
        Assert.Equal(5, drawn.RestOfNewest!.Value.TotalHours, 6); // 50 t lie there and 10 t/h run out.
        Assert.Null(full.RestOfNewest);
        Assert.Null(drawn.MixedUntil);
    }

    [Fact]
    public void Queue_WithAStirredOutlet_SaysWhenTheNewestOfTheMixedWentIn()
    {
        var mill = Mill(stirred: 20);
        mill.Move("OPEN", "T", 60m, 0, 6);
        Assert.Equal(PosedMill.Hour(2), At(mill, 8).MixedUntil);
        Assert.Null(At(mill, -1).FirstIn);
    }

    private static TemperQueue At(PosedMill mill, double hour) => TemperQueue.Of(mill.Book, mill.Book.Named("T"), PosedMill.Hour(hour));

    private static PosedMill Mill(decimal stirred)
    {
        var mill = new PosedMill().Open(PlaceKind.Opening, "OPEN").Open(PlaceKind.Cleaner, "CL").Open(PlaceKind.MillUnit, "U");
        mill.Open(new OpenPlace("t", "T", PlaceKind.TemperBin) { Stirred = Evengrist.Quantities.Mass.FromTonnes(stirred) });
        mill.Connect("CL", "T").Connect("T", "U");
        return mill;
    }
}
