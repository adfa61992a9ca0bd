using Evengrist.Tempering;

namespace Evengrist.Tests.Tempering;

public sealed class TemperAimsTests
{
    [Theory]
    [InlineData(Hardness.VeryHard, 16.5, 17.5)] // A milling article of 2017, flourpedia.com, Wheat Milling Part 3.
    [InlineData(Hardness.Hard, 16.0, 16.5)]
    [InlineData(Hardness.SemiHard, 15.5, 16.0)]
    [InlineData(Hardness.Soft, 14.5, 15.0)]
    public void Start_OfAHardness_HasTheRangeThatWasReadAndSaysSo(Hardness hardness, double least, double most)
    {
        var aim = TemperAims.Start.Of(hardness)!;
        Assert.Equal((least, most, TemperMark.Read, TemperMark.Memory), (aim.LeastPercent, aim.MostPercent, aim.MoistureMark, aim.RestMark));
        Assert.Equal([most, (least + most) / 2, least], TemperWords.Seasons.Select(aim.Percent));
        Assert.Empty(TemperAims.Start.Faults());
    }

    [Fact]
    public void Of_FlourThatMayNotBeMoist_LowersTheAim()
    {
        var hard = TemperAims.Start.Of(Hardness.Hard)!;
        Assert.Equal(16.5, AimAdvice.Of(hard, TemperSeason.Dry, 15).Percent);
        var bound = AimAdvice.Of(hard, TemperSeason.Damp, 14);
        Assert.Equal(15, bound.Percent);
        Assert.Contains("That lowers the aim.", bound.Reasons[^1], StringComparison.Ordinal);
        Assert.Throws<ArgumentOutOfRangeException>(() => AimAdvice.Of(hard, TemperSeason.None, null));
    }

    [Fact]
    public void Json_ThereAndBack_IsTheSame()
    {
        var json = TemperAimsJson.Write(TemperAims.Start);
        Assert.True(TemperAimsJson.TryRead(json, out var read, out _));
        Assert.Equal(json, TemperAimsJson.Write(read));
        Assert.Equal(Hardness.Soft, read.OfClass("sw"));
        Assert.Equal(Hardness.None, read.OfClass("rye"));
    }

    [Theory]
    [InlineData("\"leastPercent\": 14.5", "\"leastPercent\": 18", "moistures at first break lie from 10 to 20 %")]
    [InlineData("\"mostHours\": 8", "\"mostHours\": 80", "rests lie from 0 to 72 hours")]
    [InlineData("\"hardness\": \"SemiHard\"", "\"hardness\": \"Soft\"", "soft stands twice")]
    [InlineData("\"HW\": \"Hard\"", "\"HW\": \"None\"", "Class HW is \"not said\"")]
    [InlineData("\"HW\": \"Hard\"", "\"sw\": \"Hard\"", "Class SW stands twice")]
    [InlineData("\"aims\"", "\"aim\"", "aim")]
    public void TryRead_ATableThatCannotBe_IsRefusedInWords(string what, string by, string said)
    {
        var json = TemperAimsJson.Write(TemperAims.Start);
        Assert.Contains(what, json, StringComparison.Ordinal);
        Assert.False(TemperAimsJson.TryRead(json.Replace(what, by, StringComparison.Ordinal), out _, out var faults));
        Assert.Contains(faults, f => f.Contains(said, StringComparison.OrdinalIgnoreCase));
    }
}
