using Evengrist.Quantities;
using NodaTime;

namespace Evengrist.Web.Sights.Bins;

/// <summary>Figures of a bin's quality, age and purity.</summary>
public static class BinFigures
{
    private const string Page = "docs/model/bin-protein.md";

    /// <summary>Falling number of what lies there; null where no load was read.</summary>
    public static Figure? Falling(BinSight bin)
    {
        ArgumentNullException.ThrowIfNull(bin);
        return bin.Quality?.FallingNumber is { } falling ? Figure.Reckoned("Falling number", falling.Seconds, "s", 0, new Because(
            "6000/LN + 50, the loads' liquefaction numbers 6000/(FN − 50) weighted by mass; falling numbers themselves never average.", [Share("Share of the mass with a falling number", bin.Quality.ShareFalling)], Page)) : null;
    }

    /// <summary>Test weight of what lies there; null where no load was read.</summary>
    public static Figure? TestWeight(BinSight bin)
    {
        ArgumentNullException.ThrowIfNull(bin);
        return bin.Quality?.TestWeight is { } weight ? Figure.Reckoned("Test weight", (decimal)weight, "kg/hL", 1, new Because(
            "Mass over the loads' volumes, Σm/Σ(m/w).", [Share("Share of the mass with a test weight", bin.Quality.ShareTestWeight)], Page)) : null;
    }

    /// <summary>Share of what was read that lies in the bin's band; null without a band.</summary>
    public static Figure? Purity(BinSight bin)
    {
        ArgumentNullException.ThrowIfNull(bin);
        return bin is { Band: { } band, Quality.Purity: { } purity } ? Figure.Reckoned("Purity of the band", (decimal)(100 * purity), "%", 0, new Because(
            $"Share of the mass with protein read whose readings lie in the band: {band.Words}. By the readings as they were, not by their ±.", [Share("Share of the mass with protein", bin.Quality.ShareProtein)], "docs/model/best-bin.md")) : null;
    }

    /// <summary>Days since the oldest layer began to be set down; null where nothing lies there.</summary>
    public static Figure? Oldest(BinSight bin, Instant at) => Days(bin, b => b.Oldest, "Age of the oldest grain", "Since its layer began to be set down, under the hypothesis chosen.", at);

    /// <summary>Mean days in the bin; null where nothing lies there.</summary>
    public static Figure? Mean(BinSight bin, Instant at) => Days(bin, b => b.MeanSince, "Mean age", "Mean over the layers by mass, under the hypothesis chosen.", at);

    private static Figure? Days(BinSight bin, Func<BinSight, Instant?> since, string what, string how, Instant at)
    {
        ArgumentNullException.ThrowIfNull(bin);
        return since(bin) is { } moment ? Figure.Reckoned(what, (decimal)(at - moment).TotalDays, "d", 0, new Because(how, [], "the ledger's movements")) : null;
    }

    private static Figure Share(string what, double share) => Figure.Reckoned(what, (decimal)(100 * share), "%", 0, new Because("Mass of the loads read, over all.", [], "the readings on the trucks"));
}
