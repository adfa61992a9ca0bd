using Evengrist.Numerics.Reconciling;

namespace Evengrist.Milling.Balance;

/// <summary>A mill's balance as a question to reconcile, and where in it each quantity stands.</summary>
/// <remarks>
/// Wheat − screenings + water − rise = first break, and the same in water; first break − products = evaporation, and the same in water, since what evaporates is water alone.
/// Screenings have the moisture of the wheat; what the temper bins rise by has that at first break.
/// </remarks>
internal static class BalanceQuestion
{
    public const int Wheat = 0, Screenings = 1, Water = 2, Rise = 3, FirstBreak = 4, WheatMoisture = 5, FirstBreakMoisture = 6, Evaporation = 7, EvaporatedShare = 8;
    public const string RiseName = "temper bins";
    private const int Fixed = 9;
    private const double UsualMoisture = 0.14;

    public static int Mass(int product) => Fixed + (2 * product);

    public static int Moisture(int product) => Fixed + (2 * product) + 1;

    public static ReconcileSpec Of(BalanceSpec spec)
    {
        int[] products = [.. Enumerable.Range(0, spec.Products.Count)];
        Unknown[] unknowns =
        [
            Weight("wheat", spec.Dirty), Weight("screenings", spec.Screenings), Weight("water", spec.Water), Weight(RiseName, spec.TemperRise),
            spec.FirstBreak is { } weighed ? Weight("wheat to first break", weighed) : Unknown.Sought("wheat to first break", spec.FirstBreakTonnes),
            Share("moisture of the wheat", spec.WheatMoisture), Share("moisture at first break", spec.FirstBreakMoisture), Unknown.Sought("evaporation", spec.UnexplainedTonnes),
            spec.Evaporation is { } share ? Share("share evaporated", share) : Unknown.Sought("share evaporated", spec.UnexplainedTonnes / spec.FirstBreakTonnes),
            .. spec.Products.SelectMany(p => new[] { Weight(p.Name, p.Mass), Share($"moisture of {p.Name}", p.Moisture) }),
        ];
        return new ReconcileSpec(unknowns,
        [
            new("mass up to first break", [new(1, Wheat), new(-1, Screenings), new(1, Water), new(-1, Rise), new(-1, FirstBreak)]),
            new("water up to first break", [new(1, Wheat, WheatMoisture), new(-1, Screenings, WheatMoisture), new(1, Water), new(-1, Rise, FirstBreakMoisture), new(-1, FirstBreak, FirstBreakMoisture)]),
            new("mass over the rolls", [new(1, FirstBreak), new(-1, Evaporation), .. products.Select(p => new Term(-1, Mass(p)))]),
            new("water over the rolls", [new(1, FirstBreak, FirstBreakMoisture), new(-1, Evaporation), .. products.Select(p => new Term(-1, Mass(p), Moisture(p)))]),
            new("share evaporated", [new(1, FirstBreak, EvaporatedShare), new(-1, Evaporation)]),
        ]);
    }

    private static Unknown Weight(string name, Weighed mass) => new(name, mass.Tonnes, mass.StandardUncertainty);

    private static Unknown Share(string name, MeanMoisture? read) => read is { } known ? new(name, known.Percent / 100, known.StandardUncertainty / 100) : Unknown.Sought(name, UsualMoisture);
}
