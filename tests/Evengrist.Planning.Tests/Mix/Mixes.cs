using Evengrist.Ledger;
using Evengrist.Mix;
using Evengrist.Quantities;

namespace Evengrist.Planning.Tests.Mix;

/// <summary>Questions that the tests ask.</summary>
internal static class Mixes
{
    public static MixBin Bin(string code, double cost, params (Property What, double Value, double Own)[] values) => new(code, code, cost)
    {
        Values = values.ToDictionary(v => v.What, v => new MixValue(v.Value, v.What.NeedsBasis() ? Basis.At12 : default, v.Own)),
    };

    public static MixLimit Least(Property what, double least, double? confidence = null) => new(what) { Least = least, Basis = BasisOf(what), Confidence = confidence };

    public static MixLimit Most(Property what, double most) => new(what) { Most = most, Basis = BasisOf(what) };

    public static Basis BasisOf(Property what) => what.NeedsBasis() ? Basis.At12 : default;

    /// <summary>A day's mix of four bins, with its limits; invented, its answer reckoned by hand (docs/model/mix.md).</summary>
    public static MixSpec Daily { get; } = DailyWith(Property.TestWeight);

    /// <summary>The same with another property in the place of test weight.</summary>
    public static MixSpec DailyWith(Property weight) => new()
    {
        Bins =
        [
            Wheat("B02", 12.1, 382, weight, 79.4, 0.15, 231), Wheat("B05", 13.9, 418, weight, 75.9, 0.10, 254),
            Wheat("B07", 11.0, 262, weight, 77.1, 0.70, 212), Wheat("B11", 14.6, 396, weight, 80.2, 0.12, 268) with { Class = "HS" },
        ],
        Limits = [Least(Property.Protein, 13.2), Least(Property.FallingNumber, 320), Least(weight, 77.5), Most(Property.Don, 0.45)],
        Habit = new Dictionary<string, double> { ["B02"] = 0.56, ["B11"] = 0.44 },
    };

    public static MixBin Wheat(string code, double protein, double falling, double weight, double don, double cost) => Wheat(code, protein, falling, Property.TestWeight, weight, don, cost);

    private static MixBin Wheat(string code, double protein, double falling, Property weight, double value, double don, double cost) =>
        Bin(code, cost, (Property.Protein, protein, 0), (Property.FallingNumber, falling, 0), (weight, value, 0), (Property.Don, don, 0)) with { Class = "HW" };

    public static MixSolved Solved(MixSpec spec)
    {
        var outcome = Evengrist.Planning.Mix.MixSolver.Solve(spec);
        return outcome is MixSolved solved ? solved : throw new InvalidOperationException(Say(outcome));
    }

    public static double Share(this MixSolved solved, string bin) => solved.Gates.FirstOrDefault(g => g.Bin.Code == bin)?.Share ?? 0;

    public static Predicted Of(this MixSolved solved, Property what) => solved.Wheat.Single(w => w.What == what);

    private static string Say(MixOutcome outcome) => outcome switch
    {
        MixRefused refused => string.Join(" ", refused.Faults),
        MixClash clash => $"Clash: {string.Join("; ", clash.Clash)}",
        MixNotSolved not => not.Reason,
        _ => outcome.ToString(),
    };
}
