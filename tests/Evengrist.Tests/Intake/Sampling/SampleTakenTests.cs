using Evengrist.Intake.Sampling;
using Evengrist.Ledger;
using NodaTime;

namespace Evengrist.Tests.Intake.Sampling;

public sealed class SampleTakenTests
{
    private static readonly SampleTaken Taken = new("us-hopper-bottom", 6, 2400, "R-25-0709-061", "A3", "2026-01-05");

    [Fact]
    public void Text_ThroughAHappening_IsTheSame()
    {
        var happening = new Happening(default, default, default, HappeningKind.Sampled, Taken.Text);
        Assert.Equal(Taken, SampleTaken.Of(happening));
        Assert.Equal("Sampled by US probe, hopper bottom: 6 probes, 2.40 kg; kept as R-25-0709-061 on shelf A3 until 2026-01-05.", happening.Words);
        Assert.Equal(new LocalDate(2026, 1, 5), Taken.LastDay);
    }

    [Theory]
    [InlineData(HappeningKind.Note, "words\n{}")]
    [InlineData(HappeningKind.Sampled, "words alone")]
    [InlineData(HappeningKind.Sampled, "words\n{\"pattern\":\"us-hopper-bottom\",\"cuts\":0,\"compositeGrams\":1}")]
    public void Of_NoSample_IsNull(HappeningKind kind, string text) => Assert.Null(SampleTaken.Of(new Happening(default, default, default, kind, text)));

    [Fact]
    public void Faults_WhatCannotBe_AreNamed()
    {
        Assert.Empty(Taken.Faults());
        Assert.Equal(3, new SampleTaken("nothing", 0, 0).Faults().Count);
        Assert.Contains("until when", (Taken with { KeepUntil = "soon" }).Faults().Single(), StringComparison.Ordinal);
        Assert.Contains("which shelf", (Taken with { Shelf = " " }).Faults().Single(), StringComparison.Ordinal);
        Assert.Contains("number", (Taken with { RetainedId = "" }).Faults().Single(), StringComparison.Ordinal);
    }

    [Fact]
    public void Policy_ThroughJson_IsTheSameAndFaultsAreNamed()
    {
        var policy = new SamplingPolicy { KeepDays = 200, Spreads = [new PropertySpread(Property.Protein, 0.4, 0.1, 0.1)] };
        Assert.True(SamplingPolicy.TryRead(policy.ToJson(), out var read, out var faults), string.Join(" ", faults));
        Assert.Equal(policy.ToJson(), read.ToJson());
        Assert.False(SamplingPolicy.TryRead(new SamplingPolicy { SureFrom = 0.2, KeepDays = 0, Spreads = [new PropertySpread(Property.Protein, -1, 0, 0)] }.ToJson(), out _, out faults));
        Assert.Equal(3, faults.Count);
    }
}
