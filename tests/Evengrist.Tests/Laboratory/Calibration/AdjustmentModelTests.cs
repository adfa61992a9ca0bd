using Evengrist.Laboratory.Calibration;
using Evengrist.Laboratory.Validation;
using NodaTime;

namespace Evengrist.Tests.Laboratory.Calibration;

/// <summary>Bias and slope of a calibration set anew. Pairs of twenty samples: R 4.2.2 on invented input; bias −0.228, slope 1.021175, intercept −0.477505.</summary>
public sealed class AdjustmentModelTests
{
    private static readonly double[] Reference = [10.2, 11.4, 12.1, 9.8, 13.0, 10.9, 11.7, 12.6, 10.5, 11.1, 12.9, 9.5, 13.4, 11.9, 10.7, 12.3, 11.2, 10.1, 13.8, 12.0];
    private static readonly double[] Read = [10.62, 11.45, 12.48, 9.93, 13.07, 11.31, 11.76, 12.87, 10.94, 11.18, 12.96, 9.88, 13.62, 12.31, 10.77, 12.41, 11.62, 10.22, 13.91, 12.35];
    private static readonly Instant At = Instant.FromUtc(2026, 1, 14, 9, 0);

    // 120 samples, 8 factors, SEC 0.16; one channel alone counts: it reads 10 · the first channel.
    private static readonly SpectralCalibration Made = new(
        new("protein", "%", "14mb"), new([.. Enumerable.Range(0, 10).Select(c => 1100.0 + c)], "nm"), Pretreatment.None, 0, [10, 0, 0, 0, 0, 0, 0, 0, 0, 0], new double[10],
        [.. Enumerable.Range(0, 8).Select(Axis)], [.. Enumerable.Range(0, 8).Select(Axis)], [.. Enumerable.Repeat(100.0, 8)], 1, 120, 9, 14, new CalibrationErrors(0.16, 0.17));

    private static readonly double[] Spectrum = [1.2, 0, 0, 0, 0, 0, 0, 0, 0, 0.1];

    [Fact]
    public void Bias_OfTheWorkedCase_IsSetAlone_AndKeepsItsTest()
    {
        var found = ValidationModel.Of(AdjustmentModel.Test(Made, Reference, Read));
        Assert.Equal(ValidationDecision.BiasOnly, found.Decision);
        var adjusted = AdjustmentModel.Adjusted(Made, found, AdjustmentKind.Bias, At, "Ada", "new harvest", out var faults)!;
        Assert.Empty(faults);
        Assert.Equal(12 - 0.228, adjusted.Read(Spectrum).Value, 1e-9);
        Assert.Equal(12, Made.Read(Spectrum).Value, 1e-9);
        var set = Assert.Single(adjusted.Adjustments);
        Assert.Equal(("Ada", "new harvest", 20), (set.By, set.Why, set.Samples));
        Assert.Equal("20 pairs: bias -0.2280 beyond 0.0726, slope 1.0212 (t 0.70 within 2.10), SEP 0.1551 within 0.2074; the test speaks for the bias alone", set.Test);
        Assert.True(CalibrationJson.TryRead(CalibrationJson.Write(adjusted), out var read, out _));
        Assert.Equal(set, Assert.Single(read.Adjustments));
    }

    [Fact]
    public void SlopeAndBias_SetOnTopOfABias_AreThoseOfTheLine()
    {
        var found = ValidationModel.Of(AdjustmentModel.Test(Made, Reference, Read));
        var once = AdjustmentModel.Adjusted(Made, found, AdjustmentKind.Bias, At, "Ada", "x", out _)!;
        var twice = AdjustmentModel.Adjusted(once, found, AdjustmentKind.SlopeAndBias, At, "Ada", "y", out _)!;
        Assert.Equal(-0.477505 + (1.021175 * (12 - 0.228)), twice.Read(Spectrum).Value, 2e-5);
        Assert.Equal(1.021175, twice.Adjustments[^1].Slope, 1e-6);
        Assert.Equal(2, twice.Adjustments.Count);
    }

    [Fact]
    public void Adjusted_WhatCannotBe_SaysWhatToDo()
    {
        ValidationOutcome Of(int count, double sign = 1) => ValidationModel.Of(AdjustmentModel.Test(Made, Reference[..count], [.. Read[..count].Select(r => sign * r)]));
        Assert.Contains("There are 9 pairs: 10 or more", Fault(Of(9), AdjustmentKind.Bias, "Ada", "x"), StringComparison.Ordinal);
        Assert.Contains("Choose what to set", Fault(Of(20), AdjustmentKind.None, "Ada", "x"), StringComparison.Ordinal);
        Assert.Contains("do not rise together", Fault(Of(20, -1), AdjustmentKind.SlopeAndBias, "Ada", "x"), StringComparison.Ordinal);
        Assert.Contains("Say who", Fault(Of(20), AdjustmentKind.Bias, " ", "x"), StringComparison.Ordinal);
        Assert.Contains("Say why", Fault(Of(20), AdjustmentKind.Bias, "Ada", ""), StringComparison.Ordinal);
    }

    private static double[] Axis(int i) => [.. Enumerable.Range(0, 10).Select(c => c == i ? 1.0 : 0)];

    private static string Fault(ValidationOutcome found, AdjustmentKind kind, string by, string why)
    {
        Assert.Null(AdjustmentModel.Adjusted(Made, found, kind, At, by, why, out var faults));
        return Assert.Single(faults);
    }
}
