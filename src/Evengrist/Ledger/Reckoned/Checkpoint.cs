namespace Evengrist.Ledger.Reckoned;

/// <summary>Where a run stood at a moment, so that a late fact makes only the stretch after it be reckoned again.</summary>
internal sealed record Checkpoint(long Moment, int Parcels, List<Flow> Flows, List<(int Place, Content Content)> Contents);
