namespace Evengrist.Bins.Storage;

/// <summary>What became of a question to the equilibrium equations.</summary>
public abstract record EquilibriumOutcome
{
    private protected EquilibriumOutcome()
    {
    }
}

/// <summary>Grain and air that neither give nor take water.</summary>
/// <param name="Constants">The constants it rests on, with their mark.</param>
/// <param name="Celsius">Temperature, °C.</param>
/// <param name="Humidity">Relative humidity of the air, as a fraction.</param>
/// <param name="MoisturePercent">Moisture of the grain, per cent, wet basis.</param>
/// <param name="Notes">What must be said with it: the mark of the constants, a range left.</param>
public sealed record Equilibrium(EmcConstants Constants, double Celsius, double Humidity, double MoisturePercent, IReadOnlyList<string> Notes) : EquilibriumOutcome
{
    /// <summary>Moisture of the grain, per cent of dry matter: 100 M/(100 − M).</summary>
    public double PercentDry => 100 * MoisturePercent / (100 - MoisturePercent);
}

/// <summary>There is no answer.</summary>
/// <param name="Reason">Why, and what to do.</param>
public sealed record NoEquilibrium(string Reason) : EquilibriumOutcome;
