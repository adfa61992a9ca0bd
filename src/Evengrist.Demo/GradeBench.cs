using Evengrist.Ledger;
using NodaTime;

namespace Evengrist.Demo;

/// <summary>Picks the grade factors of about one harvest truck in four, as a busy scale house does. Invented, but as such wheat goes together: thin kernels where it was dry, damage where rain sprouted it.</summary>
internal sealed class GradeBench(ulong seed)
{
    private const double KernelsIn15Grams = 500;
    private readonly Dice dice = new(seed, "grades");

    // Damaged, foreign material, shrunken and broken, other classes: means in per cent.
    private static (double Damaged, double Foreign, double Shrunken, double Others) Usual(string district) => district switch
    {
        "Scarrow Rim" => (0.7, 0.25, 4.0, 0.4),
        "Lowmere" => (3.2, 0.40, 1.3, 0.7),
        "Talvin Bank" => (1.5, 0.30, 0.9, 0.6),
        "High Brack" => (0.7, 0.20, 1.0, 1.2),
        _ => (0.9, 0.25, 1.2, 0.5),
    };

    public void Read(Desk desk, string code, Instant at, TruckTruth real, District district)
    {
        if (!dice.Chance(0.25))
        {
            return;
        }

        var (damaged, foreign, shrunken, others) = Usual(district.Name);
        var thin = (district.TestWeight - real.TestWeight) / district.TestWeightSd;
        var sprouted = (district.Falling - real.FallingNumber) / district.FallingSd;
        var bad = Picked(Math.Max(0, damaged * (1 + (0.4 * sprouted) + (0.25 * dice.Normal(0, 1)))));
        Factor(desk, code, at, Property.Damaged, bad);
        Factor(desk, code, at, Property.HeatDamaged, Math.Min(bad, dice.Chance(0.05) ? 0.1m : 0m));
        Factor(desk, code, at, Property.ForeignMaterial, Picked(Math.Max(0, foreign * (1 + (0.4 * dice.Normal(0, 1))))));
        Factor(desk, code, at, Property.ShrunkenAndBroken, Math.Round((decimal)Math.Max(0.1, shrunken * (1 + (0.25 * thin) + (0.15 * dice.Normal(0, 1)))), 2));
        Factor(desk, code, at, Property.OtherClasses, dice.Chance(0.4) ? 0m : Picked(others));
        Factor(desk, code, at, Property.ContrastingClasses, 0m);
    }

    // What 500 kernels show of a share: its error is that of counting.
    private decimal Picked(double percent) =>
        Math.Round((decimal)Math.Max(0, percent + dice.Normal(0, Math.Sqrt(Math.Max(0, percent * (100 - percent)) / KernelsIn15Grams))), 2);

    private static void Factor(Desk desk, string code, Instant at, Property what, decimal percent) =>
        desk.Read(code, at, what, percent, "%", default, what == Property.ShrunkenAndBroken ? "oblong sieve" : "picked by hand");
}
