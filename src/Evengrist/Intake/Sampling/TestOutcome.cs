namespace Evengrist.Intake.Sampling;

/// <summary>Whether to test a load now, with all that it rests on. Money in the currency of the costs; chances 0 to 1.</summary>
/// <param name="ChanceBad">Chance before the test that the load is beyond the limit.</param>
/// <param name="AcceptUntested">What is better without a test: into the good bin (true) or the lesser one (false).</param>
/// <param name="LossUntested">Expected loss of that.</param>
/// <param name="LossKnowing">Expected loss if the truth were known; below 0 where the discount outweighs the rest.</param>
/// <param name="LossTested">Expected loss with the test, decided by the best level.</param>
/// <param name="AcceptAt">The level that decides best: at or above it (falling number, s), at or below it (toxin, mg/kg) into the good bin; null where no result would change the decision.</param>
/// <param name="QueueCost">Minutes × cost per minute × trucks waiting.</param>
/// <param name="OwnCost">What the test itself costs.</param>
public abstract record TestOutcome(
    double ChanceBad, bool AcceptUntested, double LossUntested, double LossKnowing, double LossTested, double? AcceptAt, double QueueCost, double OwnCost)
{
    /// <summary>Loss that the test is expected to avoid.</summary>
    public double Value => LossUntested - LossTested;

    /// <summary>Loss that perfect knowledge would avoid: no test is worth more.</summary>
    public double ValueOfKnowing => LossUntested - LossKnowing;

    /// <summary>Value less the cost of the queue and of the test.</summary>
    public double Net => Value - QueueCost - OwnCost;

    /// <summary>Trucks waiting at which the advice would turn; null where waiting costs nothing.</summary>
    public double? TurnsAtTrucks { get; init; }
}

/// <summary>Test now: what it avoids outweighs the wait.</summary>
public sealed record TestNow(double ChanceBad, bool AcceptUntested, double LossUntested, double LossKnowing, double LossTested, double? AcceptAt, double QueueCost, double OwnCost)
    : TestOutcome(ChanceBad, AcceptUntested, LossUntested, LossKnowing, LossTested, AcceptAt, QueueCost, OwnCost);

/// <summary>Go without: the wait and the test cost more than they avoid.</summary>
public sealed record GoWithout(double ChanceBad, bool AcceptUntested, double LossUntested, double LossKnowing, double LossTested, double? AcceptAt, double QueueCost, double OwnCost)
    : TestOutcome(ChanceBad, AcceptUntested, LossUntested, LossKnowing, LossTested, AcceptAt, QueueCost, OwnCost);
