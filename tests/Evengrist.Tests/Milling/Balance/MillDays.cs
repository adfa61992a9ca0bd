using Evengrist.Milling.Balance;

namespace Evengrist.Tests.Milling.Balance;

/// <summary>Days of a mill to balance.</summary>
internal static class MillDays
{
    private static readonly UsualErrors Usual = new();

    /// <summary>A day: 600 t of 11.6 %, 8.4 t of screenings, water to 16.0 %, products as weighed. Common practice.</summary>
    public static BalanceSpec Day(double flour) => new(
        Weighed.Of(600, Usual.WheatPercent),
        [new("flour", WeighedKind.Flour, Weighed.Of(flour, Usual.FlourPercent)), new("wheatfeed and bran", WeighedKind.ByProduct, Weighed.Of(150, Usual.ByProductPercent)), new("germ", WeighedKind.ByProduct, Weighed.Of(1.2, Usual.ByProductPercent))])
    {
        Screenings = Weighed.Of(8.4, Usual.ScreeningsPercent), Water = Weighed.Of(30.99, Usual.WaterPercent),
    };

    /// <summary>A mill in which everything is weighed and read, without error: what evaporates and every moisture are as given.</summary>
    public static BalanceSpec Exact(double wheat = 600, double moisture = 11.6, double firstBreak = 16, double evaporated = 1.2, double flourShare = 0.75, double flourMoisture = 14.2)
    {
        var clean = wheat - 8.4;
        var water = clean * (firstBreak - moisture) / (100 - firstBreak);
        var rolls = clean + water;
        var air = rolls * evaporated / 100;
        var flour = (rolls - air) * flourShare;
        var feed = rolls - air - flour;
        // The water that neither the air nor the flour has is in the feed.
        var feedMoisture = 100 * ((rolls * firstBreak / 100) - air - (flour * flourMoisture / 100)) / feed;
        return new BalanceSpec(
            Weighed.Of(wheat, 0.25),
            [
                new("flour", WeighedKind.Flour, Weighed.Of(flour, 0.25)) { Moisture = new(flourMoisture, 0.1) }, new("feed", WeighedKind.ByProduct, Weighed.Of(feed, 0.5)) { Moisture = new(feedMoisture, 0.3) },
            ])
        {
            Screenings = Weighed.Of(8.4, 2), Water = Weighed.Of(water, 2), FirstBreak = Weighed.Of(rolls, 0.25), WheatMoisture = new(moisture, 0.15), FirstBreakMoisture = new(firstBreak, 0.15),
        };
    }

    public static MillBalance Made(BalanceSpec spec) => Assert.IsType<MillBalance>(BalanceModel.Of(spec));
}
