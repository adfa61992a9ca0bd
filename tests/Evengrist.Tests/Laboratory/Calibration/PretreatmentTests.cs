using Evengrist.Laboratory.Calibration;

namespace Evengrist.Tests.Laboratory.Calibration;

/// <summary>What is done to spectra.</summary>
public sealed class PretreatmentTests
{
    // The classic tables of smoothing weights, from memory; recomputed with R 4.2.2.
    [Fact]
    public void Weights_OfSmoothing_AreTheClassicOnes()
    {
        Close([-3 / 35.0, 12 / 35.0, 17 / 35.0, 12 / 35.0, -3 / 35.0], new SavitzkyGolay(2, 2, 0).Weights());
        Close([.. Enumerable.Range(-5, 11).Select(i => i / 110.0)], new SavitzkyGolay(5, 2, 1).Weights());
        Close([.. new[] { 15, 6, -1, -6, -9, -10, -9, -6, -1, 6, 15 }.Select(i => i / 429.0)], new SavitzkyGolay(5, 2, 2).Weights());
        Assert.Throws<InvalidOperationException>(() => new SavitzkyGolay(2, 5, 0).Weights());
    }

    // A polynomial of the window's degree is given back exactly, and so is its derivative: x³ has 3x².
    [Fact]
    public void Smoothing_OfAPolynomial_GivesItAndItsDerivatives()
    {
        double[] cube = [.. Enumerable.Range(0, 30).Select(x => Math.Pow(x, 3))];
        var smooth = new Pretreatment([new SavitzkyGolay(4, 3, 0)]).Apply(cube);
        var slope = new Pretreatment([new SavitzkyGolay(4, 3, 1)]).Apply(cube);
        var bend = new Pretreatment([new SavitzkyGolay(4, 3, 2)]).Apply(cube);
        var third = new Pretreatment([new SavitzkyGolay(4, 3, 3)]).Apply(cube);
        Assert.Equal(22, smooth.Length);
        for (var i = 0; i < smooth.Length; i++)
        {
            var x = i + 4.0;
            Assert.Equal(x * x * x, smooth[i], 1e-8);
            Assert.Equal(3 * x * x, slope[i], 1e-8);
            Assert.Equal(6 * x, bend[i], 1e-8);
            Assert.Equal(6, third[i], 1e-8);
        }
    }

    // R 4.2.2 on the wheat set; first sample, first three channels.
    [OpenDataFact]
    public void Spectra_OfTheWheatSet_AreTreatedAsInR()
    {
        var set = NirSet.Wheat;
        Near([-2.1125231, -2.1154164, -2.1191255], new StandardNormalVariate().Treat(set), 1e-7);
        Near([0.31627795, 0.31570721, 0.31497555], new ScatterCorrection().Treat(set), 1e-8);
        Near([-0.00036933636, -0.00025767273, -0.00011277273], new SavitzkyGolay(5, 2, 1).Treat(set), 1e-11);
        var line = ((ScatterCorrection)new Pretreatment([new ScatterCorrection()]).Fitted(set.Spectra).Steps[0]).LineOf(set.Spectra[0]);
        Assert.Equal(0.017332553, line.Offset, 1e-9);
        Assert.Equal(1.0004632, line.Slope, 1e-7);
        Assert.Equal(691, new Pretreatment([new SavitzkyGolay(5, 2, 1)]).AxisAfter(set.Axis).Count);
    }

    // By what they are for: neither thickness nor offset of a spectrum is left.
    [Fact]
    public void Scatter_AddedToASpectrum_IsTakenOutAgain()
    {
        double[] one = [0.3, 0.5, 0.4, 0.9, 0.7];
        double[] thick = [.. one.Select(x => 0.2 + (1.7 * x))];
        Close(new Pretreatment([new StandardNormalVariate()]).Apply(one), new Pretreatment([new StandardNormalVariate()]).Apply(thick));
        var corrected = new Pretreatment([new ScatterCorrection()]).Fitted([one, [0.2, 0.5, 0.5, 0.8, 0.9]]);
        Close(corrected.Apply(one), corrected.Apply(thick));
        Assert.Throws<InvalidOperationException>(() => new Pretreatment([new ScatterCorrection()]).Apply(one));
    }

    [Fact]
    public void Steps_ThatCannotBe_SayWhy()
    {
        var axis = new SpectralAxis([1100, 1102, 1104, 1106, 1108, 1110], "nm");
        Assert.Contains("leaves fewer than 2", Assert.Single(new Pretreatment([new SavitzkyGolay(3, 2, 1)]).Faults(axis)), StringComparison.Ordinal);
        Assert.Contains("leaves fewer than 2", Assert.Single(new Pretreatment([new SavitzkyGolay(1, 2, 1), new SavitzkyGolay(2, 2, 0)]).Faults(axis)), StringComparison.Ordinal);
        Assert.Contains("up to the degree", Assert.Single(new Pretreatment([new SavitzkyGolay(2, 1, 2)]).Faults(axis)), StringComparison.Ordinal);
        Assert.Contains("evenly spaced", Assert.Single(new Pretreatment([new SavitzkyGolay(2, 2, 1)]).Faults(new([1100, 1102, 1104, 1106, 1108, 1120], "nm"))), StringComparison.Ordinal);
        Assert.Contains("3 channels", Assert.Single(new Pretreatment([new ScatterCorrection([1, 2, 3])]).Faults(axis)), StringComparison.Ordinal);
    }

    private static void Close(IReadOnlyList<double> expected, IReadOnlyList<double> got) => Near(expected, got, 1e-12);

    private static void Near(IReadOnlyList<double> expected, IReadOnlyList<double> got, double tolerance) => Assert.All(expected.Index(), e => Assert.Equal(e.Item, got[e.Index], tolerance));
}

file static class Treating
{
    public static double[] Treat(this PretreatmentStep step, NirSet set) => new Pretreatment([step]).Fitted(set.Spectra).Apply(set.Spectra[0]);
}
