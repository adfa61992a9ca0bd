using Evengrist.Intake.Sampling;
using Evengrist.Quantities;
using Evengrist.Web.Sights.Trucks;

namespace Evengrist.Web.Sights.Sampling;

/// <summary>A rule of acceptance for DON as a person types it.</summary>
public sealed class RisksAsk
{
    private const string Page = "docs/model/sampling.md";
    private static readonly double[] Shares = [0.4, 0.6, 0.8, 0.9, 1.0, 1.1, 1.2, 1.5, 2.0];

    private RisksAsk(IReadOnlyList<string> faults, AcceptanceSpec? spec) => (Faults, Spec) = (faults, spec);

    /// <summary>What is wrong, each a sentence.</summary>
    public IReadOnlyList<string> Faults { get; }

    /// <summary>The rule; null where the form cannot be read.</summary>
    public AcceptanceSpec? Spec { get; }

    /// <summary>Reads the form; the risk is in per cent.</summary>
    public static RisksAsk Read(string? limit, string? accept, string? kilograms, string? grams, string? determinations, string? risk)
    {
        var typed = new Typed();
        var (most, level) = (typed.Number("limit", limit, "mg/kg", "the limit"), typed.Number("accept", accept, "mg/kg", "the level of acceptance"));
        var (sample, portion) = (typed.Number("kg", kilograms, "kg", "the laboratory sample"), typed.Number("g", grams, "g", "the portion"));
        var (tests, percent) = (typed.Number("n", determinations, "tests", "how many tests"), typed.Number("risk", risk, "%", "the buyer's risk to keep"));
        string[] faults = [.. typed.Faults.Select(f => f.Fault), .. typed.Missing.Select(m => $"Still needed: {m}.")];
        if (faults.Length > 0)
        {
            return new RisksAsk(faults, null);
        }

        if (most is not (> 0 and <= 1000) || level is not (> 0 and <= 1000) || percent is not (> 0 and <= 50) || tests is not (>= 1 and <= 1000) || tests != decimal.Truncate(tests.Value))
        {
            return new RisksAsk(["Limit and level lie above 0 and at most at 1000 mg/kg, the buyer's risk above 0 and at most at 50 %, and tests are a whole number from 1."], null);
        }

        var sizes = new DonSizes((double)sample!.Value, (double)portion!.Value, (int)tests.Value);
        return sizes.AreSound ? new RisksAsk([], new AcceptanceSpec((double)most.Value, (double)level.Value, sizes) { BuyersRisk = (double)percent.Value / 100 })
            : new RisksAsk(["The sample weighs more than 0 kg and the portion more than 0 g."], null);
    }

    /// <summary>Chance that a load at the limit is accepted.</summary>
    public Figure Buyers => Chance("buyer's risk", AcceptanceModel.BuyersRisk(Spec!, Spec!.LimitMilligrams), "Φ((L − C)/s(C)) at the limit");

    /// <summary>Chance that a load at half the limit is not accepted.</summary>
    public Figure Sellers => Chance("seller's risk", AcceptanceModel.SellersRisk(Spec!, Spec!.LimitMilligrams / 2), "1 − Φ((L − C)/s(C)) at half the limit");

    /// <summary>The level that keeps the buyer's risk; null where there is none above 0.</summary>
    public Figure? Guarded => AcceptanceModel.GuardedLevel(Spec!) is { } level
        ? Figure.Reckoned("guarded level", (decimal)level, "mg/kg", 2, new Because("limit − z·s(limit)", [Figure.Seen("limit", (decimal)Spec!.LimitMilligrams, "mg/kg")], Page))
        : null;

    /// <summary>True content, its standard deviation and the chance of acceptance.</summary>
    public IEnumerable<(double Truth, double Deviation, double Chance)> Rows => Shares.Select(s => s * Spec!.LimitMilligrams)
        .Select(c => (c, DonVariance.Of(c, Spec!.Sizes).StandardDeviation, AcceptanceModel.Accepted(Spec!, c)));

    private Figure Chance(string what, double chance, string formula) => Figure.Reckoned(what, (decimal)(100 * chance), "%", 1,
        new Because(formula, [Figure.Seen("accepted at or below", (decimal)Spec!.AcceptAtMilligrams, "mg/kg"), Figure.Seen("limit", (decimal)Spec.LimitMilligrams, "mg/kg")], Page));
}
