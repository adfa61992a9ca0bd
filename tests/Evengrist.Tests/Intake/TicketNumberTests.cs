using CsCheck;
using Evengrist.Intake;
using NodaTime;

namespace Evengrist.Tests.Intake;

public sealed class TicketNumberTests
{
    [Fact]
    public void TryParse_AnyPrinted_ReadsBackTheSame() =>
        Gen.Select(Gen.Int[0, 36_523], Gen.Int[1, 999]).Sample((days, number) =>
        {
            var ticket = TicketNumber.Of(new LocalDate(2000, 1, 1).PlusDays(days), number);
            Assert.True(TicketNumber.TryParse(ticket.ToString(), out var back));
            Assert.Equal(ticket, back);
        });

    [Theory]
    [InlineData("25-0709-061", true)]
    [InlineData(" 25-0709-061 ", true)]
    [InlineData("24-0229-001", true)]
    [InlineData("25-0229-001", false)]
    [InlineData("25-0709-000", false)]
    [InlineData("25-1309-001", false)]
    [InlineData("25-0709-61", false)]
    [InlineData("25-0709-06x", false)]
    [InlineData("25-0-09-061", false)]
    [InlineData("٢٥-0709-061", false)]
    [InlineData("", false)]
    [InlineData(null, false)]
    public void TryParse_Text_OnlyTheFixedForm(string? text, bool reads) => Assert.Equal(reads, TicketNumber.TryParse(text, out _));

    [Fact]
    public void Of_MomentBeforeTheDayBegins_BelongsToTheDayBefore()
    {
        var zone = DateTimeZone.ForOffset(Offset.FromHours(-6));
        var early = TicketNumber.Of(Instant.FromUtc(2025, 7, 10, 11, 30), zone, new LocalTime(6, 0), 112);
        Assert.Equal("25-0709-112", early.ToString());
        Assert.Equal("25-0709-113", early.Next.ToString());
        Assert.True(early < early.Next);
    }

    [Fact]
    public void Next_AfterTheLast_Refused() => Assert.Throws<ArgumentOutOfRangeException>(() => TicketNumber.Of(Loads.Day, 999).Next);
}
