using System.Globalization;
using Evengrist.Plant.Gs1.Checks;
using NodaTime;

namespace Evengrist.Edge.Tests.Plant.Gs1;

/// <summary>Each check against cases of the reference tests in GS1's repository gs1/gs1-syntax-dictionary (src/lint_*.c, Apache-2.0).</summary>
public sealed class CheckTests
{
    private static readonly Dictionary<string, PartCheck> ByName = NamedChecks.All.ToDictionary(c => c.Name);

    [Theory]
    [InlineData("csumalpha", "22 !22 !!22 12345678901234567890123NT 12345_ABCDEFGHIJKLMCP 12345_!\"%&'()*+,-./LC 12345_0123456789:;<=>?62 7907665Bm8v2AB 23956qk1&dB!23 99999zzzzzzzzzzzzzzzzzzT2")]
    [InlineData("iban", "FR7630006000011234567890189 DE91100000000123456789 GR9608100010000001234567890 MU43BOMM0101123456789101000MUR RO09BCYP0000001234567890 CH5604835012345678009 LC14BOSL123456789012345678901234")]
    [InlineData("pcenc", "A %00 %Ff ABC%ffXYZ ABCDEFGHIJKLMNOPQRSTUVWXYZ%00+12345")]
    [InlineData("pieceoftotal", "11 13 33 0101 9899 9999 001003 998999")]
    [InlineData("posinseqslash", "1/1 2/3 9/10 10/10 1/100 998/999")]
    [InlineData("couponcode", "012345612345611110123 012345612345611110123101101230123456 01234561234561111012310110123212345678 012345612345611110123101101239 012345612345611110123101101236123456789012")]
    [InlineData("couponposoffer", "101234561234560123456 0012345612345611234567 001234561234569123456789012345 061234567890121234569123456789012345")]
    [InlineData("packagetype", "1A 200 212 43 8 9 APE BGE BRI CBL PUE RB1 STL TWE UUE WRP X11 X3 ZZ")]
    [InlineData("gcppos1", "0123 01234 0123A")]
    [InlineData("hasnondigit", "/ A1 012345678:")]
    [InlineData("yymmd0", "000606 500606 990606 200600 000229 960229 240229")]
    public void Check_PublishedGoodOnes_Hold(string name, string values) => Assert.All(values.Split(' '), v => Assert.Null(ByName[name].Expected(v, 2021)));

    [Theory]
    [InlineData("csumalpha", "2 33 12345678901234567890123NZ")]
    [InlineData("iban", "LC14BOSL123456789012345678901230 BE71 LC14BOSLxx3456789012345678901230 XX361234567890")]
    [InlineData("pcenc", "%fg %gf %g ABC%fg ABC%gXYZ")]
    [InlineData("pieceoftotal", "1 111 01 10 0000 001000 21 1110 101100 5x555555")]
    [InlineData("posinseqslash", "/ 1 x 1/ /1 1//2 x/y 1/02 01/2 10/9 100/99 999/998")]
    [InlineData("couponcode", "a12345612345611110123 012345 0123456 71234567890123 0123456123456 01234561234566123456 0123456123456110 012345612345611115 01234561234561111012 0123456123456111101237 01234561234561111012314 012345612345611110123101101230 0123456123456111101231011012371234567890123 0123456123456111101231011012391")]
    [InlineData("couponposoffer", "a01234561234560123456 0 00 0012345 07 00123456123456 001234561234561123456 0012345612345601234567")]
    [InlineData("packagetype", "0 000 _9 1A_ _200 B0")]
    [InlineData("gcppos1", "012 012A 0A23")]
    [InlineData("gcppos2", "1012 1012A")]
    [InlineData("hasnondigit", "0 0123456789")]
    [InlineData("yymmd0", "1 1111111 200010 201310 200132 210229 220229 000230")]
    [InlineData("yymmdd", "200600 210229")]
    [InlineData("yyyymmdd", "21000229 20200010 20201310 2020013x 20200600")]
    public void Check_PublishedBadOnes_AreRefusedInWords(string name, string values) => Assert.All(values.Split(' '), v => Assert.NotEmpty(ByName[name].Expected(v, 2021)!));

    [Fact]
    public void MediaType_All_AreThoseAssigned() => Assert.All(Enumerable.Range(0, 100), n =>
        Assert.Equal(n is (>= 1 and <= 10) or >= 80, ByName["mediatype"].Expected(n.ToString("00", CultureInfo.InvariantCulture), 2021) is null));

    [Theory]
    [InlineData("250315", 2026, 2025, 3, 15)]
    [InlineData("250200", 2026, 2025, 2, 28)] // day 00: last of the month
    [InlineData("240200", 2026, 2024, 2, 29)]
    [InlineData("760101", 2026, 2076, 1, 1)] // 50 ahead: this century
    [InlineData("770101", 2026, 1977, 1, 1)] // 51 ahead: the one before
    [InlineData("770101", 2027, 2077, 1, 1)]
    [InlineData("000101", 2050, 2100, 1, 1)] // 50 behind: the next
    [InlineData("010101", 2050, 2001, 1, 1)] // 49 behind: this century
    public void SymbolDate_Centuries_AreThoseOfTheWindow(string digits, int thisYear, int year, int month, int day) => Assert.Equal(new LocalDate(year, month, day), SymbolDate.Read(digits, thisYear));
}
