using Evengrist.Season;

namespace Evengrist.Planning.Tests.Season;

public sealed class SeasonJsonTests
{
    [Fact]
    public void Plan_WrittenAndRead_IsTheSamePlanAndPassesTheCheck()
    {
        var made = MadeSeason.Of(1, weeks: 6, bins: 6, flours: 2);
        var plan = Years.Linear(made with { Choices = [new UseChoice("B02", "F1", 1, 1, double.PositiveInfinity)] }) with { Version = "autumn" };
        var text = SeasonJson.Write(plan);
        Assert.True(SeasonJson.TryRead<SeasonPlan>(text, out var read, out var fault), fault);
        Assert.Equal(text, SeasonJson.Write(read));
        Assert.Equal("autumn", read.Version);
        Assert.Empty(SeasonCheck.Of(read));
        Assert.Equal(SeasonCoverModel.Of(plan), SeasonCoverModel.Of(read));
    }

    [Theory]
    [InlineData("{ \"periods\": [] }", "units")]
    [InlineData("{", "depth")]
    [InlineData("null", "read null")]
    public void Spec_Broken_IsAFaultInWords(string json, string words)
    {
        Assert.False(SeasonJson.TryRead<SeasonSpec>(json, out _, out var fault));
        Assert.Contains(words, fault, StringComparison.Ordinal);
    }
}
