using NodaTime;

namespace Evengrist.Demo;

/// <summary>What a unit makes of the wheat on its rolls, as shares of what goes in, and how good the flour really is. Invented within the trade's usual ranges.</summary>
internal static class Extraction
{
    // Wheat with its water for one part of wheat at the gates, in the survey week; elsewhere within a hundredth of it.
    private const double Damped = 1.04;

    // The survey week's shares are those of the stream survey of 16 September, of the wheat at the gates: patent 69.0 %, first clear 4.6 %, second clear 4.1 %.
    public static IReadOnlyList<(string To, double Share)> Of(char unit, Flour flour, bool survey, Dice dice)
    {
        var swing = survey || flour == Flour.WW ? 0 : dice.Normal(0, 0.004);
        var (patent, first, second, bran, germ) = flour switch
        {
            Flour.WW => (0.988 * Damped, 0.0, 0.0, 0.0, 0.0),
            Flour.HG => (0.685, 0.050, 0.043, 0.105, 0.004),
            Flour.PA => (0.665, 0.050, 0.045, 0.105, 0.004),
            _ when survey => (0.690, 0.046, 0.041, 0.105, 0.004),
            _ => (0.676, 0.046, 0.041, 0.105, 0.004),
        };
        const double loss = 0.012;
        patent += swing;
        return
        [
            ($"FM{unit}", patent / Damped), ("F-C1", first / Damped), ("F-C2", second / Damped), ("Y-BR", bran / Damped), ("Y-GM", germ / Damped), ("LOSS", loss),
            ("Y-WF", Math.Max(0, 1 - loss - ((patent + first + second + bran + germ) / Damped))),
        ];
    }

    // Patent protein at 14mb lies about a point below the wheat's at 12mb, and 0.3 lower still for a patent.
    public static FlourTruth Quality(char unit, Instant from, Flour flour, double wheatProtein, Dice dice)
    {
        var (drop, ash, moisture) = flour switch
        {
            Flour.WB => (1.3, 0.445, 13.8),
            Flour.AP => (1.3, 0.455, 13.8),
            Flour.HG => (1.0, 0.490, 13.8),
            Flour.PA => (1.0, 0.425, 13.2),
            _ => (0.3, 1.58, 13.1),
        };
        return new FlourTruth(unit, from, flour, wheatProtein - drop + dice.Normal(0, 0.03), ash + dice.Normal(0, 0.006), moisture + dice.Normal(0, 0.12));
    }
}
