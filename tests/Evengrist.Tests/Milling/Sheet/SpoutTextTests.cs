using CsCheck;
using Evengrist.Milling.Sheet;

namespace Evengrist.Tests.Milling.Sheet;

/// <summary>Outlets as a person types them, and what changed between sheets.</summary>
public sealed class SpoutTextTests
{
    [Theory]
    [InlineData("B2", "B2 1")]
    [InlineData(" 1B 30 %, 2B 70% ", "1B 0.3|2B 0.7")]
    [InlineData("1B 30, 2B", "1B 0.3|2B 0.7")]
    [InlineData("", "")]
    [InlineData(null, "")]
    public void TryRead_WhatCanBe_IsReadWithItsShares(string? text, string expected)
    {
        Assert.True(SpoutText.TryRead(text, out var outlet, out var fault), fault);
        Assert.Equal(expected, string.Join('|', outlet.Select(s => FormattableString.Invariant($"{s.To} {Math.Round(s.Share, 12)}"))));
    }

    [Theory]
    [InlineData("1B, 2B", "give the shares of 1B, 2B; one may go without and takes what is left")]
    [InlineData("1B many", "the share of 1B is a number in per cent; read “many”")]
    [InlineData("1B 1e3", "the share of 1B is a number in per cent; read “1e3”")]
    [InlineData("1B 30 of it", "write a code, or codes with their shares as 1B 30 %, 2B 70 %; read “1B 30 of it”")]
    [InlineData("%", "read “%”")]
    public void TryRead_WhatCannotBe_SaysWhatToWrite(string text, string said)
    {
        Assert.False(SpoutText.TryRead(text, out _, out var fault));
        Assert.Contains(said, fault, StringComparison.Ordinal);
    }

    // Shares that are 1 together are so again after they were written and read, as closely as a sheet asks.
    [Fact]
    public void Text_ThereAndBack_KeepsTheSharesTogether() => Gen.Double[0.01, 1].Array[1, 5].Sample(weights =>
    {
        Spout[] outlet = [.. weights.Select((w, i) => new Spout($"P{i}", w / weights.Sum()))];
        Assert.True(SpoutText.TryRead(SpoutText.Write(outlet), out var read, out _));
        Assert.InRange(Math.Abs(read.Sum(s => s.Share) - 1), 0, 1e-9);
        Assert.All(outlet.Zip(read), p => Assert.InRange(Math.Abs(p.First.Share - p.Second.Share), 0, 1e-12));
    });

    [Fact]
    public void Changes_OfASheet_AreNamedOneByOne()
    {
        Assert.True(FlowSheetJson.TryRead(Small.Json, out var before, out _));
        Assert.Empty(FlowSheetChanges.Of(before, before));
        Assert.True(FlowSheetJson.TryRead(Small.But("\"apertureMicrometres\": 1000", "\"apertureMicrometres\": 1120").Replace("\"share\": 0.6", "\"share\": 0.5", StringComparison.Ordinal).Replace("\"share\": 0.4", "\"share\": 0.5", StringComparison.Ordinal)
            .Replace("\"detacher\": true", "\"detacher\": false", StringComparison.Ordinal).Replace("\"tonnesPerDay\": 20", "\"tonnesPerDay\": 24", StringComparison.Ordinal), out var now, out _));
        Assert.Equal(
            ["S1 detacher: yes, now gone", "built for: 20 t in 24 h, now 24 t in 24 h", "B1 cloth 1: overs of 1000 µm to F1, now overs of 1120 µm to F1", "B1 the rest: to M1 60 %, S1 40 %, now to M1 50 %, S1 50 %"],
            FlowSheetChanges.Of(before, now));
        Assert.Contains("S1 detacher: new, yes", FlowSheetChanges.Of(now, before));
    }
}
