namespace Evengrist.Numerics.Reconciling;

/// <summary>What comes of looking for measurements that are worse than they were said to be.</summary>
/// <param name="First">The reconciliation with every measurement.</param>
public abstract record GrossErrorOutcome(ReconcileOutcome First);

/// <summary>The measurements go together within their uncertainties.</summary>
/// <param name="Adjusted">The reconciliation.</param>
public sealed record NoGrossError(Reconciled Adjusted) : GrossErrorOutcome(Adjusted);

/// <summary>Measurements that do not fit, named one after another until the rest go together.</summary>
/// <param name="Before">The reconciliation with every measurement.</param>
/// <param name="Suspects">In the order in which they were set aside.</param>
/// <param name="Rest">The balance without them; <see cref="NothingToAdjust"/> where nothing is left that checks it.</param>
public sealed record GrossErrorsNamed(Reconciled Before, IReadOnlyList<Suspect> Suspects, Balanced Rest) : GrossErrorOutcome(Before);

/// <summary>The measurements do not go together, and none stands out: an uncertainty is stated too small, a constraint does not hold, or several errors hide one another.</summary>
/// <param name="Before">The reconciliation with every measurement.</param>
/// <param name="Suspects">Those set aside before it came to that; often none.</param>
public sealed record GrossErrorNotNamed(Reconciled Before, IReadOnlyList<Suspect> Suspects) : GrossErrorOutcome(Before);

/// <summary>There was nothing to look at: the outcome says why.</summary>
/// <param name="Why">The outcome of reconciling.</param>
public sealed record GrossErrorNotSought(ReconcileOutcome Why) : GrossErrorOutcome(Why);

/// <summary>A measurement that does not fit the others.</summary>
/// <param name="Name">Which; of several alike the one whose bias would be the fewest of its own uncertainties.</param>
/// <param name="Z">How far it stood out when it was set aside.</param>
/// <param name="Alike">Others that would explain the misfit exactly as well, so that nothing here tells which of them it is; empty where it stands out alone.</param>
/// <param name="Bias">Measured less what the others say, in its unit; null where the others do not say.</param>
/// <param name="BiasUncertainty">One standard uncertainty of <paramref name="Bias"/>; null with it.</param>
public sealed record Suspect(string Name, double Z, IReadOnlyList<string> Alike, double? Bias, double? BiasUncertainty);
