using Evengrist.Laboratory.Lots;
using Evengrist.Packing.Codes;
using NodaTime;

namespace Evengrist.Tests.Packing.Codes;

public sealed class LotCodeTests
{
    [Theory]
    [InlineData("WB-251007-3")] // a lot of the demonstration mill
    [InlineData("P-WB-250917-0100")] // a pallet of it
    [InlineData("L-WB-250917-1")] // a bulk load of it
    [InlineData("F24-0915-2")]
    [InlineData("12345678901234567890")]
    public void LotCode_CodesOfTheLedger_FitASymbol(string text)
    {
        Assert.True(LotCode.TryParse(text, out var code, out _));
        Assert.Equal(text, code.Text);
    }

    [Theory]
    [InlineData("", "no lot code")]
    [InlineData("123456789012345678901", "21 characters")]
    [InlineData("WB#251007", "position 3")]
    [InlineData("WB 251007", "position 3")]
    [InlineData("ÄB-251007", "position 1")]
    public void LotCode_OthersAreRefused_WithTheReason(string text, string reason)
    {
        Assert.False(LotCode.TryParse(text, out _, out var refusal));
        Assert.Contains(reason, refusal, StringComparison.Ordinal);
    }

    [Fact]
    public void LotCode_OfALotWithALongFlour_IsRefusedAndNotCut()
    {
        var lot = new FlourLot("WHOLEMEAL-BREAD-251007-3", "WHOLEMEAL-BREAD", new LocalDate(2025, 10, 7), default, default, []);
        Assert.False(LotCode.TryOf(lot, out _, out var refusal));
        Assert.Contains("24 characters", refusal, StringComparison.Ordinal);
    }

    [Fact]
    public void LabelCharacters_AreEightyTwo_EachOnce() => Assert.Equal(82, LabelCharacters.All.Distinct().Count());
}
