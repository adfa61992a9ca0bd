namespace Evengrist.Tracing.Structure;

/// <summary>What a way of keeping lots apart comes to, on paper.</summary>
/// <param name="Spec">The way.</param>
/// <param name="Sizes">Recall sizes over the trucks that were milled whole, kg of finished product.</param>
/// <param name="TrucksEachLot">Mean number of trucks in a finished lot.</param>
/// <param name="Lots">Finished lots, kg each.</param>
/// <param name="TrucksMilled">Trucks that were milled whole; the others still lie in bins and are not counted.</param>
/// <param name="FinishedKilograms">Finished product in all.</param>
/// <param name="SetAsideKilograms">Flushed through, or emptied out at clean-outs: it goes to feed or rework.</param>
/// <param name="CleanOuts">Times the flour bin was cleaned out.</param>
/// <param name="Hours">Hours that these took.</param>
/// <param name="LeftKilograms">Product still in the flour bin at the end.</param>
public sealed record StructureOutcome(
    StructureSpec Spec, RecallSizes Sizes, double TrucksEachLot, IReadOnlyList<double> Lots, int TrucksMilled, double FinishedKilograms, double SetAsideKilograms, int CleanOuts, double Hours, double LeftKilograms)
{
    /// <summary>Share of all product that is set aside, 0 to 1.</summary>
    public double SetAsideShare => FinishedKilograms + SetAsideKilograms > 0 ? SetAsideKilograms / (FinishedKilograms + SetAsideKilograms) : 0;
}
