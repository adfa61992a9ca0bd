namespace Evengrist.Season;

/// <summary>What comes of planning a crop year.</summary>
public abstract record SeasonOutcome;

/// <summary>There is a plan, and it has passed our own check.</summary>
/// <param name="Plan">The plan.</param>
public sealed record SeasonPlanned(SeasonPlan Plan) : SeasonOutcome;

/// <summary>No plan can keep all that has to be kept: capacities, carry-out, what people have decided.</summary>
/// <param name="Clash">A smallest set of demands that cannot all be kept, each in words; drop any one of them and the rest can.</param>
/// <param name="Ways">What would have to yield, and by how much, at the least.</param>
public sealed record SeasonInfeasible(IReadOnlyList<string> Clash, IReadOnlyList<string> Ways) : SeasonOutcome;

/// <summary>What was asked cannot be meant.</summary>
/// <param name="Faults">Every fault found.</param>
public sealed record SeasonBadInput(IReadOnlyList<SeasonFault> Faults) : SeasonOutcome;

/// <summary>No plan came of it, though one may exist.</summary>
/// <param name="Exit">Why planning stopped.</param>
/// <param name="Reason">In a sentence, and what to do.</param>
public sealed record SeasonFailed(SeasonExit Exit, string Reason) : SeasonOutcome;
