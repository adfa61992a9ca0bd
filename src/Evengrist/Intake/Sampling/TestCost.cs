using Evengrist.Ledger;
using Evengrist.Quantities;

namespace Evengrist.Intake.Sampling;

/// <summary>What one test, and a wrong decision about its property, costs. Money in the currency of the paper.</summary>
/// <param name="What">Falling number or DON.</param>
/// <param name="Basis">Basis of the limit; none for falling number.</param>
/// <param name="Limit">Seconds, or mg/kg.</param>
/// <param name="Minutes">What the truck waits for the result, at least 0.</param>
/// <param name="OwnCost">What the test itself costs, at least 0.</param>
public sealed record TestCost(Property What, Basis Basis, double Limit, double Minutes, double OwnCost)
{
    /// <summary>Cost of a bad load in the good bin, per t.</summary>
    public double WrongBinPerTonne { get; init; }

    /// <summary>Cost of a bad load in the good bin that does not grow with the load.</summary>
    public double Claim { get; init; }

    /// <summary>Cost of a good load in the lesser bin, per t.</summary>
    public double DivertedGoodPerTonne { get; init; }

    /// <summary>Discount that a result beyond the limit entitles to, per t.</summary>
    public double DiscountPerTonne { get; init; }

    /// <summary>Error of a falling number with its sample, as a fraction of the value.</summary>
    public double RelativeError { get; init; } = 0.05;

    /// <summary>Sizes of the toxin test.</summary>
    public DonSizes Sizes { get; init; } = DonSizes.Base;

    /// <summary>The question put to the model.</summary>
    public TestSpec Ask(LoadPrior prior, double tonnes, double costPerMinute, int trucksWaiting) => new(prior, Limit, tonnes)
    {
        WrongBinPerTonne = WrongBinPerTonne, Claim = Claim, DivertedGoodPerTonne = DivertedGoodPerTonne, DiscountPerTonne = DiscountPerTonne, RelativeError = RelativeError,
        Sizes = Sizes, Minutes = Minutes, CostPerMinute = costPerMinute, TrucksWaiting = trucksWaiting, OwnCost = OwnCost,
    };

    /// <summary>What cannot be, each a sentence; empty where all can.</summary>
    public IReadOnlyList<string> Faults() => What is not (Property.FallingNumber or Property.Don)
        ? ["Only falling number and DON have a model of whether to test."]
        : [.. new[] { What.NeedsBasis() == Basis.IsStated ? null : What.NeedsBasis() ? "The limit of DON needs a basis: say dry, 12mb or another." : "A falling number has no basis." }.OfType<string>(),
            .. Ask(new LoadPrior(What == Property.Don ? PriorScale.Lognormal : PriorScale.Liquefaction, 1, 1), 1, 0, 1).Faults()];
}
