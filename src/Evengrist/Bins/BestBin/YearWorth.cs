namespace Evengrist.Bins.BestBin;

/// <summary>What a tonne of the load is worth to the rest of the crop year in a bin, against the load in a bin of its own; null where the year knows nothing of the bin.</summary>
/// <param name="bin">Code of the bin.</param>
/// <returns>Money for a tonne of the load, in the currency of the question, and one standard uncertainty of it from the protein reading.</returns>
public delegate (double PerTonne, double Uncertainty)? YearWorth(string bin);
