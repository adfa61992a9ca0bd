using Evengrist.Laboratory.Calibration;
using NodaTime;

namespace Evengrist.Tests.Laboratory.Calibration;

/// <summary>Calibrations by what must hold of them, on invented spectra that follow the law of Lambert and Beer: each constituent adds its own spectrum by its share.</summary>
public sealed class CalibrationModelTests
{
    private static readonly SpectralAxis Axis = new([.. Enumerable.Range(0, 60).Select(i => 1100.0 + (2 * i))], "nm");

    private static double[] Mixed(double protein, double water, double scatter = 0) =>
        [.. Enumerable.Range(0, 60).Select(i => 0.3 + scatter + (0.01 * protein * Math.Exp(-Math.Pow((i - 20) / 6.0, 2))) + (0.02 * water * Math.Exp(-Math.Pow((i - 35) / 9.0, 2))))];

    private static CalibrationSample[] Samples(int count) => [.. Enumerable.Range(0, count).Select(i => new CalibrationSample($"s{i}", Mixed(10 + ((i * 7) % 11 * 0.3), 12 + ((i * 5) % 13 * 0.2)), 10 + ((i * 7) % 11 * 0.3)))];

    private static CalibrationSpec Spec(IReadOnlyList<CalibrationSample> samples) => new(Axis, samples, new("protein", "%", "12mb")) { MostFactors = 2 };

    [Fact]
    public void Mixtures_OfTwoConstituents_AreReadExactlyWithTwoFactors()
    {
        var made = CalibrationModel.Of(Spec(Samples(30)) with { Factors = 2 })!;
        Assert.InRange(made.Curve[2].CrossValidation, 0, 1e-10);
        var read = made.Calibration.Read(Mixed(11.7, 13.1));
        Assert.Equal(11.7, read.Value, 1e-9);
        // More factors than the spectra hold are not made up.
        var more = CalibrationModel.Of(Spec(Samples(30)) with { MostFactors = 6, Factors = 6 })!;
        Assert.Equal(2, more.Calibration.Factors);
        Assert.Contains(more.Remarks, r => r.StartsWith("The spectra hold 2 factors", StringComparison.Ordinal));
    }

    [Fact]
    public void Order_OfSamples_ChangesNothingButTheRounding()
    {
        var samples = Samples(30).Select((s, i) => s with { Group = $"truck {i / 3}", Reference = s.Reference + (0.1 * Math.Sin(i)) }).ToArray();
        var (one, other) = (CalibrationModel.Of(Spec(samples) with { Parts = null })!, CalibrationModel.Of(Spec([.. samples.Reverse()]) with { Parts = null })!);
        Assert.Equal(one.Calibration.Intercept, other.Calibration.Intercept, 1e-9);
        Assert.All(one.Curve.Zip(other.Curve), c => Assert.Equal(c.First.CrossValidation, c.Second.CrossValidation, 1e-9));
        var again = CalibrationModel.Of(Spec(samples) with { Parts = null })!;
        Assert.Equal(one.Calibration.Coefficients, again.Calibration.Coefficients);
    }

    // Two readings of each truck: where the other one is left in the set it all but foretells the first.
    [Fact]
    public void Groups_KeptTogether_TakeTheFlatteryOutOfCrossValidation()
    {
        // The reference of a truck is off by an error of its own, and its spectrum shows the truck by a band of its own.
        CalibrationSample[] twice = [.. Enumerable.Range(0, 40).Select(i => new CalibrationSample($"s{i}", Marked(i / 2), 11 + Math.Sin(i / 2 * 12.9), $"truck {i / 2}"))];
        double Error(IReadOnlyList<CalibrationSample> set) => CalibrationModel.Of(Spec(set) with { MostFactors = 12, Parts = null })!.Curve[^1].CrossValidation;
        Assert.True(Error([.. twice.Select(s => s with { Group = null })]) < 0.5 * Error(twice));

        static double[] Marked(int truck) => [.. Mixed(11, 13).Select((x, i) => x + (0.1 * Math.Exp(-Math.Pow(i - (3 * truck), 2))))];
    }

    [Fact]
    public void Segments_DealtInTurn_KeepGroupsWhole()
    {
        Assert.Equal([0, 1, 2, 0, 1], CrossValidation.Segments([null, null, null, null, null], 3));
        Assert.Equal([0, 0, 1, 0, 0], CrossValidation.Segments(["a", "a", "b", "c", "a"], 2));
        Assert.Equal([0, 1, 0, 2], CrossValidation.Segments(["a", null, "a", "b"], null));
        Assert.Throws<ArgumentException>(() => CrossValidation.Of([[1, 2], [2, 1]], [1, 2], [0, 0], 1));
    }

    [Fact]
    public void Spectrum_UnlikeTheSet_IsShownAndMayNotDecide()
    {
        CalibrationSample[] noisy = [.. Samples(40).Select((s, i) => s with { Spectrum = [.. s.Spectrum.Select((x, c) => x + (1e-4 * Math.Sin((i + 1) * (c + 1) * 7.3)))] })];
        var calibration = CalibrationModel.Of(Spec(noisy) with { Factors = 2 })!.Calibration;
        var inside = calibration.Read(noisy[10].Spectrum);
        Assert.True(inside.MayDecide);
        var far = calibration.Read(Mixed(20, 12));
        Assert.True(far.Outside.HasFlag(OutsideCalibration.Scores) && far.Outside.HasFlag(OutsideCalibration.Range));
        Assert.True(far.StandardUncertainty > inside.StandardUncertainty);
        var strange = calibration.Read([.. noisy[10].Spectrum.Select((x, c) => x + (c == 55 ? 0.05 : 0))]);
        Assert.True(strange.Outside.HasFlag(OutsideCalibration.Residual));
        Assert.False(strange.MayDecide);
        Assert.Throws<ArgumentException>(() => calibration.Read([1, 2]));
        Assert.Throws<ArgumentException>(() => calibration.Read([.. noisy[10].Spectrum.Select((x, c) => c == 7 ? double.NaN : x)]));
    }

    [Fact]
    public void Adjustment_Newest_HoldsForWhatIsRead()
    {
        var calibration = CalibrationModel.Of(Spec(Samples(30)) with { Factors = 2 })!.Calibration;
        var at = Instant.FromUtc(2025, 10, 7, 12, 0);
        var changed = calibration with { Adjustments = [new(at, "A. Person", 0.5, 1, 12, "first"), new(at, "A. Person", -0.228, 1.01, 20, "ring test")] };
        var spectrum = Mixed(11.2, 12.8);
        Assert.Equal(-0.228 + (1.01 * calibration.Read(spectrum).Value), changed.Read(spectrum).Value, 1e-12);
    }

    [Fact]
    public void Calibration_WrittenAndReadAgain_ReadsTheSame()
    {
        var steps = new Pretreatment([new SavitzkyGolay(2, 2, 1), new ScatterCorrection(), new StandardNormalVariate()]);
        CalibrationSample[] samples = [.. Samples(30).Select((s, i) => s with { Reference = s.Reference + (0.05 * Math.Sin(3.7 * i)) })];
        var made = CalibrationModel.Of(Spec(samples) with { Pretreatment = steps, Factors = 2 })!.Calibration with { Adjustments = [new(Instant.FromUtc(2025, 10, 7, 12, 0), "A. Person", 0.1, 1, 12, "check samples")] };
        Assert.True(CalibrationJson.TryRead(CalibrationJson.Write(made), out var again, out var faults), string.Join(" ", faults));
        var spectrum = Mixed(11.3, 12.9, 0.02);
        Assert.Equal(made.Read(spectrum), again.Read(spectrum));
        Assert.Equal(CalibrationJson.Write(made), CalibrationJson.Write(again));
        // What cannot be a calibration is refused, not read from.
        Refused("reference spectrum", made with { Pretreatment = steps });
        Refused("as many as treatment leaves", made with { Mean = [1, 2] });
        Refused("same factors", made with { ScoreSquares = [1] });
        Refused("not above 0", made with { ScoreSquares = [1, 0] });
        Refused("cannot be", made with { Least = 20 });
        Refused("a name of who decided it", made with { Adjustments = [made.Adjustments[0] with { By = " " }] });

        static void Refused(string says, SpectralCalibration bad)
        {
            Assert.False(CalibrationJson.TryRead(CalibrationJson.Write(bad), out _, out var faults));
            Assert.Contains(says, string.Join(" ", faults), StringComparison.Ordinal);
        }
    }

    [Fact]
    public void WrongReference_OfOneSample_IsFound()
    {
        CalibrationSample[] samples = [.. Samples(30).Select((s, i) => s with { Reference = s.Reference + (0.05 * Math.Sin(3.7 * i)) + (i == 17 ? 1.2 : 0) })];
        Assert.Equal("s17", Assert.Single(CalibrationModel.Of(Spec(samples) with { Factors = 2 })!.Findings, f => f.FarInProperty).Id);
    }

    [Fact]
    public void Sets_ThatCannotBe_SayWhatToDo()
    {
        var good = Samples(30);
        void Says(string part, CalibrationSpec spec)
        {
            Assert.Contains(spec.Faults(), f => f.Contains(part, StringComparison.Ordinal));
            Assert.Throws<ArgumentException>(() => CalibrationModel.Of(spec));
        }

        CalibrationSample[] With(CalibrationSample bad) => [.. good.Skip(1), bad];
        Says("has 2 channels, the axis 60", Spec(With(good[0] with { Spectrum = [1, 2] })));
        Says("no number at 1106 nm", Spec(With(good[0] with { Spectrum = [.. good[0].Spectrum.Select((x, i) => i == 3 ? double.NaN : x)] })));
        Says("the same in all channels", Spec(With(good[0] with { Spectrum = [.. good[0].Spectrum.Select(_ => 0.5)] })));
        Says("s0 has no reference for protein", Spec(With(good[0] with { Reference = double.NaN })));
        Says("s5 is there 2 times", Spec(With(good[5])));
        Says("keeps 8: 12 factors need 14", Spec([.. good.Take(9)]) with { MostFactors = 12 });
        Says("share one segment", Spec([.. good.Select(s => s with { Group = "one" })]));
        Says("is the same in all samples: there is nothing", Spec([.. good.Select(s => s with { Reference = 12 })]));
        Says("The channel at 1104 nm reads the same", Spec([.. good.Select(s => s with { Spectrum = [.. s.Spectrum.Select((x, i) => i == 2 ? 0.4 : x)] })]));
        Says("within that; got 5 of 2", Spec(good) with { Factors = 5 });
        Says("2 segments or more", Spec(good) with { Parts = 1 });
        Says("name it", Spec(good) with { Purpose = new(" ", "%") });
        Says("each once", Spec(good) with { Axis = Axis with { Positions = [.. Axis.Positions.Skip(1), 1100] } });
        Says("channels: 2 to", Spec(good) with { Axis = Axis with { Positions = [1] } });
    }

    [Fact]
    public void Axes_ThatDiffer_SayWhere()
    {
        Assert.Null(Axis.Difference(Axis with { Positions = [.. Axis.Positions.Select(p => p + 0.001)] }));
        Assert.Equal("there are 59 channels, not 60", Axis.Difference(Axis with { Positions = [.. Axis.Positions.Skip(1)] }));
        Assert.Equal("channel 1 lies at 1101 nm, not at 1100", Axis.Difference(Axis with { Positions = [.. Axis.Positions.Select(p => p + 1)] }));
        Assert.Equal("channels are in 1/cm, not in nm", Axis.Difference(Axis with { Unit = "1/cm" }));
    }

    // By its definition, on the protein of wheat: the share of samples kept back within one and two standard uncertainties, from 75 to 25.
    [OpenDataFact]
    public void Uncertainty_OfSamplesKeptBack_IsTheSpreadThatIsSeen()
    {
        var set = NirSet.Wheat;
        var made = CalibrationModel.Of(set.Spec("protein", i => i % 4 != 3, i => i % 4 == 3) with { Factors = 9 })!;
        var by = made.Calibration with { Errors = made.Calibration.Errors with { Prediction = null } };
        var z = made.Validation.Select(v => (v.Reference - v.Reading.Value) / by.Read(set.Spectra[int.Parse(v.Id, System.Globalization.CultureInfo.InvariantCulture) - 1]).StandardUncertainty).ToArray();
        Assert.InRange(z.Count(x => Math.Abs(x) <= 1), 12, 23);
        Assert.InRange(z.Count(x => Math.Abs(x) <= 2), 22, 25);
    }
}
