using Evengrist.Quantities;
using NodaTime;

namespace Evengrist.Tests.Quantities;

public sealed class MillingDayTests
{
    private static readonly DateTimeZone SixBehind = DateTimeZone.ForOffset(Offset.FromHours(-6));

    [Theory]
    [InlineData(11, 59, 8)]
    [InlineData(12, 0, 9)]
    public void Of_BeginAtSix_BelongsToTheDayThatBeganLast(int utcHour, int minute, int day) =>
        Assert.Equal(new LocalDate(2025, 7, day), MillingDay.Of(Instant.FromUtc(2025, 7, 9, utcHour, minute), SixBehind, new LocalTime(6, 0)));
}
