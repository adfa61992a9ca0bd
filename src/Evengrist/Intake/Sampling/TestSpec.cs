namespace Evengrist.Intake.Sampling;

/// <summary>A test that might be made on a load before it is tipped, and what hangs on it.</summary>
/// <param name="Prior">What is believed before.</param>
/// <param name="Limit">The limit: seconds for a falling number (bad is below), mg/kg for a toxin (bad is above); above 50 s, above 0 mg/kg.</param>
/// <param name="Tonnes">The load, t; above 0.</param>
public sealed record TestSpec(LoadPrior Prior, double Limit, double Tonnes)
{
    /// <summary>Cost of a bad load in the good bin, money per t; at least 0.</summary>
    public double WrongBinPerTonne { get; init; }

    /// <summary>Cost of a bad load in the good bin that does not grow with the load (a claim), money; at least 0.</summary>
    public double Claim { get; init; }

    /// <summary>Cost of a good load in the lesser bin, money per t; at least 0.</summary>
    public double DivertedGoodPerTonne { get; init; }

    /// <summary>Discount that a result beyond the limit entitles to, money per t; at least 0. Counted only where the load is really bad.</summary>
    public double DiscountPerTonne { get; init; }

    /// <summary>Error of a falling number, sampling included: one standard deviation as a fraction of the value; above 0. Not used for a toxin.</summary>
    public double RelativeError { get; init; } = 0.05;

    /// <summary>Sizes of the toxin test; not used for a falling number.</summary>
    public DonSizes Sizes { get; init; } = DonSizes.Base;

    /// <summary>Minutes the truck waits for the result; at least 0.</summary>
    public double Minutes { get; init; }

    /// <summary>Cost of one truck waiting a minute, money; at least 0.</summary>
    public double CostPerMinute { get; init; }

    /// <summary>Trucks that wait for it, this one included; at least 1.</summary>
    public int TrucksWaiting { get; init; } = 1;

    /// <summary>What the test itself costs, money; at least 0.</summary>
    public double OwnCost { get; init; }

    /// <summary>What cannot be, each a sentence; empty where all can.</summary>
    public IReadOnlyList<string> Faults() => [.. new[]
    {
        Prior.IsSound ? null : "The prior needs a mean and a standard deviation above 0.",
        Limit > (Prior.Scale == PriorScale.Liquefaction ? 50 : 0) && double.IsFinite(Limit) ? null : "The limit is above 50 s for a falling number, above 0 mg/kg for a toxin.",
        Tonnes is > 0 and < 1e6 ? null : "The load is above 0 t.",
        new[] { WrongBinPerTonne, Claim, DivertedGoodPerTonne, DiscountPerTonne, Minutes, CostPerMinute, OwnCost }.All(c => c >= 0 && double.IsFinite(c)) ? null : "Costs and minutes are at least 0.",
        RelativeError is > 0 and <= 1 ? null : "The relative error of a falling number is above 0 and at most 1.",
        Sizes.AreSound ? null : "Sizes of the toxin test are above 0.",
        TrucksWaiting >= 1 ? null : "At least this truck waits.",
    }.OfType<string>()];
}
