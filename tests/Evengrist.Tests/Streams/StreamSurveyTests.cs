using Evengrist.Quantities;
using Evengrist.Streams;
using Evengrist.Streams.Dividing;
using Evengrist.Streams.Surveys;
using NodaTime;

namespace Evengrist.Tests.Streams;

/// <summary>A kept survey and its flours: there and back as text, and what cannot be.</summary>
public sealed class StreamSurveyTests
{
    private static readonly StreamSurvey Survey = new("UA", Instant.FromUtc(2025, 9, 16, 9, 0), "Ada Miller", 17.5, new StreamTable([new MillStream("1M", 14, 0.37) { ProteinPercent = 11, FallingNumberSeconds = 350 }], Basis.At14) { Methods = new StreamMethods { Ash = 0.02 } })
    {
        MinutesWeighed = 3, Valves = [new StreamValve("1M") { Now = "WB", Splits = true, May = ["WB", "C1"] }], Remark = "as ever",
    };

    [Fact]
    public void Json_ThereAndBack_LosesNothing()
    {
        Assert.True(StreamSurvey.TryRead(Survey.ToJson(), out var read, out _));
        Assert.Equal(Survey.ToJson(), read.ToJson());
        Assert.Equal((Survey.TakenAt, 0.02, 350.0, "C1"), (read.TakenAt, read.Table.Methods.Ash, read.Table.Streams[0].FallingNumberSeconds!.Value, read.Valves[0].May![1]));
        var flours = new WantedFlours("UA", [new FlourWish("WB", 430.5m) { Limits = [new FlourLimit(StreamProperty.Ash) { Most = 0.46 }], CalledFlour = true, LeastYield = 50 }], new FlourWish("feed", 205m)) { HoursPerDay = 20 };
        Assert.True(WantedFlours.TryRead(flours.ToJson(), out var again, out _));
        Assert.Equal(flours.ToJson(), again.ToJson());
        Assert.Equal((17.5, 20.0, "EUR"), (again.On(Survey, "EUR").RateTonnesPerHour, again.On(Survey, "EUR").HoursPerDay, again.On(Survey, "EUR").Currency));
    }

    [Fact]
    public void Yield_OfKilogramsAnHour_IsPerCentOfTheWheat() => Assert.Equal(14, StreamSurvey.Yield(2450, 17.5), 12); // 2450 of 17 500 kg/h

    public static TheoryData<string, string, string> Bad => new()
    {
        { "\"unit\":\"UA\"", "\"unit\":\" \"", "of which unit" },
        { "\"takenBy\":\"Ada Miller\"", "\"takenBy\":\"\"", "who took it" },
        { "17.5", "0", "at most at 1000 t/h; got 0" },
        { "\"minutesWeighed\":3", "\"minutesWeighed\":-3", "got -3" },
        { "\"stream\":\"1M\"", "\"stream\":\"9Z\"", "no such stream" },
        { "\"ashPercent\":0.37", "\"ashPercent\":-0.37", "ash lies above 0" },
        { "\"yield\":14", "\"yield\":140", "more flour than wheat" },
        { "2025-09-16T09:00:00Z", "yesterday", "A moment is written like" },
        { "\"remark\"", "\"remarks\"", "remarks" },
    };

    [Theory]
    [MemberData(nameof(Bad))]
    public void Json_WhatCannotBe_IsNamed(string was, string becomes, string says)
    {
        Assert.Contains(was, Survey.ToJson(), StringComparison.Ordinal);
        Assert.False(StreamSurvey.TryRead(Survey.ToJson().Replace(was, becomes, StringComparison.Ordinal), out _, out var faults));
        Assert.Contains(says, string.Join(" ", faults), StringComparison.Ordinal);
    }

    [Fact]
    public void Flours_WhatCannotBe_IsNamed()
    {
        Assert.Contains("0 flours", string.Join(" ", new WantedFlours("UA", [], new FlourWish("feed", 1m)).Faults()), StringComparison.Ordinal);
        Assert.Contains("of which unit", string.Join(" ", new WantedFlours("", [new FlourWish("WB", 1m)], new FlourWish("feed", 1m)).Faults()), StringComparison.Ordinal);
        Assert.False(WantedFlours.TryRead("null", out _, out var faults));
        Assert.Contains("read null", faults[0], StringComparison.Ordinal);
    }
}
