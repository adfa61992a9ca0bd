using CsCheck;
using Evengrist.Packing.Codes;

namespace Evengrist.Tests.Packing.Codes;

public sealed class KeyTests
{
    [Theory]
    [InlineData("629104150021", '3')] // gs1.org, page "Check digit calculator"
    [InlineData("730001100001", '7')] // gs1.se
    [InlineData("890400021003", '7')] // gs1india.org
    [InlineData("0952123400201", '7')] // derived by the formula of the first, as are those below but the SSCC of prefix 0614141
    [InlineData("1952123400201", '4')]
    [InlineData("09521234000000042", '6')]
    [InlineData("39521234000000042", '7')]
    [InlineData("10614141123456789", '7')] // Barcode Writer in Pure PostScript, page "GS1 Digital Link"
    [InlineData("952123400001", '3')]
    public void CheckDigit_PublishedBodies_AreAsPublished(string body, char digit)
    {
        Assert.Equal(digit, CheckDigit.Of(body));
        Assert.True(CheckDigit.IsRight(body + digit));
    }

    [Theory]
    [InlineData("09521234002071")] // two digits changed places
    [InlineData("09521234002016")] // one digit wrong
    public void Gtin_WrongDigits_AreRefusedWithTheDigitThatBelongs(string text)
    {
        Assert.False(Gtin.TryParse(text, out _, out var refusal));
        Assert.Contains("check digit", refusal, StringComparison.Ordinal);
    }

    [Fact]
    public void CheckDigit_AnySingleWrongDigit_IsFound() =>
        (from body in Gen.Char['0', '9'].Array[1, 20] from at in Gen.Int[0, 20] from off in Gen.Int[1, 9] select (body: new string(body), at, off)).Sample(t =>
        {
            var key = CheckDigit.Complete(t.body).ToCharArray();
            var at = t.at % key.Length;
            key[at] = (char)('0' + ((key[at] - '0' + t.off) % 10));
            Assert.False(CheckDigit.IsRight(key));
        });

    [Fact]
    public void CheckDigit_NeighboursThatDifferByFive_ChangeUnseen() => Assert.Equal(CheckDigit.Of("12051"), CheckDigit.Of("12501")); // derived: (5 − 0)·(3 − 1) = 10

    [Theory]
    [InlineData("12345670", "00000012345670")] // GTIN-8, common example
    [InlineData("614141007349", "00614141007349")] // GTIN-12 of the prefix in GS1's examples
    [InlineData(" 6291041500213 ", "06291041500213")]
    public void Gtin_ShorterForms_AreTheSameNumber(string text, string full)
    {
        Assert.True(Gtin.TryParse(text, out var gtin, out _));
        Assert.Equal(full, gtin.Digits);
    }

    [Theory]
    [InlineData(null)]
    [InlineData("")]
    [InlineData("123456789012345")]
    [InlineData("12345670X")]
    [InlineData("١٢٣٤٥٦٧٠")]
    public void Gtin_OtherText_IsRefusedInWords(string? text)
    {
        Assert.False(Gtin.TryParse(text, out _, out var refusal));
        Assert.Contains("GTIN", refusal, StringComparison.Ordinal);
        Assert.False(Sscc.TryParse(text, out _, out _));
        Assert.False(Gln.TryParse(text, out _, out _));
    }

    [Fact]
    public void CompanyPrefix_Demonstration_BuildsTheKeysOfTheExamples()
    {
        Assert.True(CompanyPrefix.TryParse("9521234", out var prefix, out _));
        var bag = prefix.TradeItem(201);
        Assert.Equal("09521234002017", bag.Digits);
        Assert.Equal("19521234002014", bag.Packed(1).Digits);
        Assert.Equal(bag.Packed(1), prefix.TradeItem(201, 1));
        Assert.Equal("095212340000000426", prefix.LogisticUnit(42).Digits);
        Assert.Equal("395212340000000427", prefix.LogisticUnit(42, 3).Digits);
        Assert.Equal("9521234000013", prefix.Location(1).Digits);
        Assert.Equal((100_000, 1_000_000_000), (prefix.TradeItems, prefix.LogisticUnits));
    }

    [Theory]
    [InlineData("9521")]
    [InlineData("952123400001")]
    public void CompanyPrefix_ShortestAndLongest_GiveTheirLastNumberAndNoneMore(string digits)
    {
        Assert.True(CompanyPrefix.TryParse(digits, out var prefix, out _));
        Assert.True(Gtin.TryParse(prefix.TradeItem(prefix.TradeItems - 1).Digits, out _, out _));
        Assert.True(Sscc.TryParse(prefix.LogisticUnit(prefix.LogisticUnits - 1, 9).Digits, out _, out _));
        Assert.True(Gln.TryParse(prefix.Location(prefix.Locations - 1).Digits, out _, out _));
        Assert.Throws<ArgumentOutOfRangeException>(() => prefix.TradeItem(prefix.TradeItems));
        Assert.Throws<ArgumentOutOfRangeException>(() => prefix.LogisticUnit(-1));
        Assert.Throws<ArgumentOutOfRangeException>(() => prefix.LogisticUnit(0, 10));
    }

    [Theory]
    [InlineData("952")]
    [InlineData("9521234567890")]
    [InlineData("95A1234")]
    public void CompanyPrefix_OtherText_IsRefused(string digits) => Assert.False(CompanyPrefix.TryParse(digits, out _, out _));
}
