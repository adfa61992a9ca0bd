using CsCheck;
using Evengrist.Milling.Grinding;
using Evengrist.Milling.Sheet;
using Evengrist.Milling.Sifting;
using Evengrist.Milling.Stock;

namespace Evengrist.Tests.Milling;

/// <summary>Laws of breaking and sifting: worked values derived beside the code, published shapes of first break from abstracts.</summary>
public sealed class BreakageTests
{
    [Theory] // Arbitrary parameters; values derived by hand from the formula.
    [InlineData(212, 0.0209)]
    [InlineData(500, 0.0636)]
    [InlineData(850, 0.1501)]
    [InlineData(1120, 0.2412)]
    [InlineData(1400, 0.3492)]
    [InlineData(2000, 0.5673)]
    [InlineData(3000, 0.7597)]
    [InlineData(4000, 1)]
    public void Kumaraswamy_IsTheWorkedCase(double micrometres, double finer) => Assert.Equal(finer, new Kumaraswamy(0.5, 2.5, 8.7, 0.9, 0.5).Finer(micrometres / 4000), 4);

    [Theory] // Derived.
    [InlineData(424.26, 0.5392)]
    [InlineData(300, 0.3465)]
    [InlineData(212.13, 0.2416)]
    [InlineData(150, 0.1739)]
    public void Austin_IsTheWorkedCase(double micrometres, double finer) => Assert.Equal(finer, new Austin(0.6, 0.9, 4).Finer(micrometres / 600), 4);

    [Theory] // Defaults of our own at thickness 2.9 mm and 16 % moisture; derived beside the code.
    [InlineData(Disposition.SharpToSharp, 65, 0.3, 0.063, 0.411, 0.665)]
    [InlineData(Disposition.SharpToSharp, 65, 0.5, 0.042, 0.301, 0.547)]
    [InlineData(Disposition.SharpToSharp, 25, 0.5, 0.058, 0.299, 0.521)]
    [InlineData(Disposition.SharpToSharp, 25, 0.7, 0.039, 0.212, 0.403)]
    [InlineData(Disposition.DullToDull, 65, 0.3, 0.090, 0.311, 0.489)]
    [InlineData(Disposition.DullToDull, 65, 0.7, 0.040, 0.151, 0.260)]
    [InlineData(Disposition.DullToDull, 25, 0.5, 0.105, 0.263, 0.389)]
    public void FirstBreak_OfTheDefaults_GivesTheirTable(Disposition disposition, double hardness, double gap, double at212, double at1120, double at2000)
    {
        var law = FirstBreakLaw.Of(disposition, gap, 2.9, hardness, 16);
        Assert.InRange(law.Finer(212 / 4000.0) - at212, -0.0006, 0.0006);
        Assert.InRange(law.Finer(1120 / 4000.0) - at1120, -0.0006, 0.0006);
        Assert.InRange(law.Finer(2000 / 4000.0) - at2000, -0.0006, 0.0006);
    }

    // Read in abstracts: Cereal Chem. 79:518; Cereal Chem. 91:8; "On predicting roller milling performance VI".
    [Fact]
    public void FirstBreak_SharpToSharp_IsNearStraightAndDullToDull_LiesAtTheEnds()
    {
        static double Middle(Disposition d) => Band(d, 65, 16, 212, 2000);
        Assert.True(Middle(Disposition.SharpToSharp) > Middle(Disposition.SharpToDull));
        Assert.True(Middle(Disposition.SharpToDull) > Middle(Disposition.DullToSharp));
        Assert.True(Middle(Disposition.DullToSharp) > Middle(Disposition.DullToDull));
        var law = FirstBreakLaw.Of(Disposition.SharpToSharp, 0.5, 2.9, 65, 16);
        var (low, high) = (law.Finer(212 / 4000.0), law.Finer(0.5));
        Assert.All(Enumerable.Range(1, 9), i =>
        {
            var size = 212 + (i * 1788 / 10.0);
            Assert.InRange(law.Finer(size / 4000) - (low + ((high - low) * i / 10)), -0.03, 0.03);
        });
    }

    [Fact]
    public void FirstBreak_OfSofterWheat_IsMoreUShaped_AndMoreSoDullToDull()
    {
        static double Fines(Disposition d, double hardness) => Band(d, hardness, 16, 0, 212);
        Assert.True(Fines(Disposition.SharpToSharp, 25) > Fines(Disposition.SharpToSharp, 65));
        Assert.True(Fines(Disposition.DullToDull, 25) - Fines(Disposition.DullToDull, 65) > Fines(Disposition.SharpToSharp, 25) - Fines(Disposition.SharpToSharp, 65));
        Assert.True(Band(Disposition.SharpToSharp, 25, 16, 212, 2000) < Band(Disposition.SharpToSharp, 65, 16, 212, 2000));
    }

    [Fact]
    public void FirstBreak_DrierThan16_BulgesInTheMiddle_AndWetter_AtTheEnds()
    {
        Assert.True(Band(Disposition.SharpToSharp, 65, 14, 212, 2000) > Band(Disposition.SharpToSharp, 65, 16, 212, 2000));
        Assert.True(Band(Disposition.SharpToSharp, 65, 18, 212, 2000) < Band(Disposition.SharpToSharp, 65, 16, 212, 2000));
    }

    [Fact]
    public void FirstBreak_AtAWiderGap_IsCoarserAtEverySize_OfEveryDisposition() =>
        Gen.Select(Gen.Int[1, 4], Gen.Double[0.25, 0.8], Gen.Double[0.01, 0.3], Gen.Double[15, 85], Gen.Double[100, 3900]).Sample((d, gap, wider, hardness, size) =>
        {
            var (narrow, wide) = (FirstBreakLaw.Of((Disposition)d, gap, 2.9, hardness, 16), FirstBreakLaw.Of((Disposition)d, gap + wider, 2.9, hardness, 16));
            Assert.True(narrow.Finer(size / 4000) > wide.Finer(size / 4000));
        });

    [Fact]
    public void BreakageMatrix_OfTheWorkedCase_GivesItsProductAndItsFeedBack()
    {
        // Invented matrix, columns adding up to 1; product derived by hand.
        double[,] matrix = { { 0.2, 0, 0, 0 }, { 0.4, 0.35, 0, 0 }, { 0.25, 0.4, 0.6, 0 }, { 0.15, 0.25, 0.4, 1 } };
        var breaks = MathNet.Numerics.LinearAlgebra.Matrix<double>.Build.DenseOfArray(matrix);
        var feed = MathNet.Numerics.LinearAlgebra.Vector<double>.Build.Dense([0.3, 0.4, 0.2, 0.1]);
        var product = breaks * feed;
        Assert.Equal([0.06, 0.26, 0.355, 0.325], product.ToArray().Select(x => Math.Round(x, 12)));
        Assert.True((breaks.Solve(product) - feed).L2Norm() < 1e-12);
    }

    [Fact]
    public void Children_OfAnyLaw_KeepMass_AndOnlyGrowFiner() =>
        Gen.Select(Gen.Double[0, 1], Gen.Double[0.3, 3], Gen.Double[0.3, 6], Gen.Int[6, 40]).Sample((phi, gamma, beta, count) =>
        {
            var children = Children.Of(SizeClasses.Of(count), new Austin(phi, gamma, beta).Finer);
            for (var parent = 0; parent < count; parent++)
            {
                Assert.InRange(Enumerable.Range(0, count).Sum(child => children[child, parent]), 1 - 1e-12, 1 + 1e-12);
                Assert.All(Enumerable.Range(0, count), child => Assert.True(child > parent ? children[child, parent] == 0 : children[child, parent] >= 0));
            }
        });

    [Fact]
    public void BrokenWheat_KeepsThePartsOfTheKernel_AndTheSizesOfTheLaw()
    {
        var (wheat, rolls, classes) = (SmallMill.Wheat, SmallMill.Sheet.Passages[0].Rolls!, SizeClasses.Fourteen);
        var broken = BrokenWheat.Of(wheat, rolls, classes, 1);
        var law = FirstBreakLaw.Of(rolls.Disposition, 0.5, 2.9, 65, 16);
        for (var part = 0; part < MillWheat.PartCount; part++)
        {
            Assert.Equal(wheat.Parts[part].Share, broken.Skip(part * 14).Take(14).Sum(), 10);
        }

        for (var i = 0; i < 14; i++)
        {
            Assert.Equal(law.Finer(classes.Upper(i) / 4000), broken.Where((_, k) => k % 14 <= i).Sum(), 10);
        }
    }

    // Derived: the worked feed through a cloth of 212 µm, and the sharpness of two curves.
    [Fact]
    public void Cloth_OfTheWorkedCase_LetsItsOversStay()
    {
        var exponent = PartitionCurve.LogisticExponent(1.25);
        Assert.Equal(9.8467, exponent, 4);
        double[] sizes = [80, 150, 212, 300, 500], feed = [20, 25, 20, 20, 15], overs = [0.001, 0.802, 10.000, 19.366, 14.997];
        Assert.All(sizes.Select((s, i) => (PartitionCurve.Logistic(s, 212, exponent) * feed[i], overs[i])), x => Assert.InRange(x.Item1 - x.Item2, -0.00051, 0.00051));
    }

    [Theory] // Derived.
    [InlineData(180, 0.2193, 0.2437)]
    [InlineData(220, 0.7593, 0.7934)]
    public void Curves_OfTheSameSharpness_AreTheWorkedOnes(double size, double logistic, double rosin)
    {
        Assert.Equal(logistic, PartitionCurve.Logistic(size, 200, PartitionCurve.LogisticExponent(1.2)), 4);
        Assert.Equal(rosin, PartitionCurve.RosinRammler(size, 200, PartitionCurve.RosinRammlerExponent(1.2)), 4);
    }

    [Fact] // Derived.
    public void SieveEfficiency_IsTheWorkedCase()
    {
        var test = SieveEfficiency.Of(0.62, 0.18, 1);
        Assert.Equal(0.53659, test.Throughs, 5);
        Assert.Equal(0.86546, test.Recovery, 5);
        Assert.Throws<ArgumentException>(() => SieveEfficiency.Of(0.1, 0.18, 1));
    }

    [Theory] // Derived by the drag law of Schiller and Naumann, air of 1.2 kg/m³.
    [InlineData(300, 1.53)]
    [InlineData(500, 2.60)]
    [InlineData(800, 4.02)]
    [InlineData(1000, 4.88)]
    public void TerminalVelocity_OfRoundEndosperm_IsTheDerivedOne(double micrometres, double speed) => Assert.InRange(TerminalVelocity.Round(micrometres, 1450), speed * 0.98, speed * 1.02);

    [Theory] // Derived: drag coefficient 1.5 broadside.
    [InlineData(60, 0.90)]
    [InlineData(100, 1.17)]
    public void TerminalVelocity_OfAFlake_IsTheDerivedOne(double thickness, double speed) => Assert.Equal(speed, TerminalVelocity.Flake(thickness, 1250), 2);

    // Derived from the table of parts: ash and protein of a kernel of named layers (Food Chemistry, table 15.8, in a copy).
    [Fact]
    public void Kernel_OfItsLayers_HasTheAshAndProteinOfTheWorkedCase()
    {
        PartAssay[] layers = [new(0.825, 0.6, 12.6, 0), new(0.07, 10.9, 31.7, 0), new(0.04, 3.4, 6.9, 0), new(0.025, 1.3, 3.9, 0), new(0.015, 10.6, 10.7, 0), new(0.025, 5.8, 34.0, 0)];
        Assert.Equal(1.7305, layers.Sum(l => l.Share * l.AshPercentDry), 4);
        Assert.Equal(13.998, layers.Sum(l => l.Share * l.ProteinPercentDry), 3);
    }

    [Fact]
    public void KernelMake_OfAWheat_IsThatWheat()
    {
        var wheat = SmallMill.Wheat;
        Assert.Empty(wheat.Faults());
        Assert.Equal(1.7, wheat.AshPercentDry, 10);
        Assert.Equal(14.2, wheat.ProteinPercentDry, 10);
        Assert.Equal(380, 50 + (6000 / wheat.Parts.Sum(p => p.Share * p.Liquefaction)), 8);
    }

    private static double Band(Disposition disposition, double hardness, double moisture, double from, double to)
    {
        var law = FirstBreakLaw.Of(disposition, 0.5, 2.9, hardness, moisture);
        return law.Finer(to / 4000) - law.Finer(from / 4000);
    }
}
