using Evengrist.Laboratory.Calibration;
using Evengrist.Laboratory.Methods;
using Evengrist.Laboratory.Samples;
using Evengrist.Ledger;
using Evengrist.Records.Laboratory;
using Evengrist.Records.Tests.Stores;
using NodaTime;

namespace Evengrist.Records.Tests.Laboratory;

/// <summary>What a kept calibration read, recorded on samples; its bias set as a further version.</summary>
public sealed class RecordSpectraTests
{
    private static readonly SpectralCalibration Made = new(
        new("protein", "%", "14mb"), new([1100, 1200, 1300], "nm"), Pretreatment.None, 0, [10, 0, 0], new double[3], [[1, 0, 0]], [[1, 0, 0]], [30], 0.01, 20, 9, 14, new CalibrationErrors(0.16, 0.17));

    [Theory, OnSqlite, OnPostgres]
    public void Record_OnSamples_StandsBesideWhatWasReadBefore(Store store)
    {
        using var site = new TestSite(store);
        using var mill = site.Open();
        var kept = Fill(mill);
        Assert.Equal(2, Record(kept, "a").In(mill, "Ben", Hour(3)).Receipt!.Added);
        Assert.Equal(0, Record(kept, "a").In(mill, "Ben", Hour(3)).Receipt!.Added);
        Assert.Equal(2, Record(kept, "b").In(mill, "Ada", Hour(4)).Receipt!.Added);
        var inside = mill.Ask(v => TakenSample.Find(v.Book, "S-1", Hour(9)))!;
        Assert.True(inside.IsTested);
        Assert.Equal([(11.873m, 0.1712m, "NIR", "NIR-2"), (11.873m, 0.1712m, "NIR", "NIR-2")], inside.Readings.Select(r => (r.Value, r.StandardUncertainty!.Value, r.Method, r.Instrument)));
        Assert.Equal(["By calibration protein, version 1.", "By calibration protein, version 1."], LabRounds.Of(mill, inside, LabMethods.Start).Select(r => r.Note));

        // Outside: shown and flagged, and the test of the sample waits for a reading that may decide.
        var outside = mill.Ask(v => TakenSample.Find(v.Book, "S-2", Hour(9)))!;
        Assert.False(outside.IsTested);
        Assert.All(outside.Readings, r => Assert.Equal("NIR, outside calibration", r.Method));
        Assert.Contains("Outside it: far from the set. Releases and prices nothing; ask the reference method.", LabRounds.Of(mill, outside, LabMethods.Start)[0].Note, StringComparison.Ordinal);
    }

    [Theory, OnSqlite]
    public void Record_WhatCannotBe_IsRefused(Store store)
    {
        using var site = new TestSite(store);
        using var mill = site.Open();
        var kept = Fill(mill);
        var good = Record(kept, "a");
        foreach (var (record, says) in new[]
        {
            (good with { Read = [("S-9", 11.9, 0.2, [])] }, "There is no sample \"S-9\""), (good with { Read = [("S-1", 11.9, 0.2, []), ("s-1", 11.9, 0.2, [])] }, "stands there 2 times"), (good with { Method = "" }, "say by which method"),
            (good with { Measured = Hour(0) }, "before the sample was taken"), (good with { With = kept with { Calibration = Made with { Purpose = new("colour", "%") } } }, "no property of readings"),
            (good with { With = kept with { Calibration = Made with { Purpose = new("protein", "%") } } }, "basis"),
        })
        {
            var (receipt, objections) = record.In(mill, "Ben");
            Assert.Null(receipt);
            Assert.Contains(objections, o => o.Words.Contains(says, StringComparison.Ordinal));
        }

        Assert.Empty(mill.Ask(v => TakenSample.Find(v.Book, "S-1", Hour(9)))!.Readings);
    }

    [Theory, OnSqlite, OnPostgres]
    public void Bias_SetByPairs_IsAFurtherVersionWithItsTest(Store store)
    {
        using var site = new TestSite(store);
        using var mill = site.Open();
        var kept = SpectralCalibrations.Keep(mill, Made, "Ada");
        double[] reference = [.. Enumerable.Range(0, 12).Select(i => 10 + (i * 0.3))], read = [.. reference.Select((r, i) => r + 0.2 + (i % 2 * 0.02))];
        var adjust = new AdjustCalibration(kept, reference, read, AdjustmentKind.Bias, "new lamp");
        var next = adjust.In(mill, "Ben", Hour(5), out _)!;
        Assert.Equal((2, "Ben"), (next.Version, next.By));
        Assert.Equal(-0.21, Assert.Single(next.Calibration.Adjustments).Bias, 1e-9);
        Assert.Empty(SpectralCalibrations.Find(mill, "protein", 1)!.Calibration.Adjustments); // The version it came from stays.
        Assert.Null(adjust.In(mill, "Ben", Hour(6), out var late));
        Assert.Contains("Version 2 of protein is kept since", Assert.Single(late), StringComparison.Ordinal);
        Assert.Null((adjust with { With = next, Read = read[..3] }).In(mill, "Ben", Hour(6), out var faults));
        Assert.Contains("12 reference results and 3", faults[0], StringComparison.Ordinal);
    }

    private static KeptCalibration Fill(Mill mill)
    {
        mill.Record(SmallMill.Places, "Ada", "test");
        foreach (var (code, hour) in new[] { ("S-1", 1), ("S-2", 2) })
        {
            new TakeLabSample("B1", Hour(hour), new LabSample(code, "", [new SampleTest(Property.Protein, "NIR")], "")).In(mill, "Ada");
        }

        return SpectralCalibrations.Keep(mill, Made, "Ada");
    }

    private static RecordSpectra Record(KeptCalibration kept, string key) => new(key, kept, [("S-1", 11.8731, 0.17123, []), ("s-2", 12.2, 0.4, ["far from the set"])], "NIR", "NIR-2", Hour(3));

    private static Instant Hour(int hour) => Instant.FromUtc(2025, 9, 15, 11, 0) + Duration.FromHours(hour);
}
