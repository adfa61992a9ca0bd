namespace Evengrist.Intake.Sampling;

/// <summary>A rule "accept at a result of L or less" for DON, to be judged.</summary>
/// <param name="LimitMilligrams">What a load must not exceed, mg/kg; above 0.</param>
/// <param name="AcceptAtMilligrams">L, the highest result at which a load is accepted, mg/kg; above 0.</param>
/// <param name="Sizes">Sizes of the test.</param>
public sealed record AcceptanceSpec(double LimitMilligrams, double AcceptAtMilligrams, DonSizes Sizes)
{
    /// <summary>s_b of the site, mg/kg; 0 for one well-mixed lot.</summary>
    public double BetweenProbes { get; init; }

    /// <summary>Probes in the composite.</summary>
    public int Probes { get; init; } = 1;

    /// <summary>The buyer's risk that a guard band is to keep: chance to accept a load that lies at the limit; above 0, at most 0.5.</summary>
    public double BuyersRisk { get; init; } = 0.05;
}
