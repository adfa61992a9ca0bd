namespace Evengrist.Planning.Tests.Season.Futures;

/// <summary>Promises against crop years of the hidden truth: a small seeded run; the long one is in bench.</summary>
public sealed class CalibrationTests
{
    [Fact]
    public void Statements_OfTwelveHiddenYears_HoldAboutAsOftenAsTheySay()
    {
        var all = Enumerable.Range(1, 12).SelectMany(y => SimulatedYears.Year(y, 100)).ToArray();
        var stated = SimulatedYears.Nearest(all, 0.85, 0.1);
        Assert.True(stated.Count >= 8, $"{stated.Count} statements");
        var (mean, held) = (stated.Average(s => s.Stated), stated.Average(s => s.Held ? 1.0 : 0));

        // Three standard errors of a count, and a half more because flours of one year share its weather [design].
        Assert.InRange(held, mean - (4.5 * Math.Sqrt(mean * (1 - mean) / stated.Count)), 1);
        var hopeless = all.Where(s => s.Stated < 0.02).ToArray();
        Assert.True(hopeless.Length == 0 || hopeless.Average(s => s.Held ? 1.0 : 0) < 0.2);
    }
}
