namespace Evengrist.Bins.BestBin;

/// <summary>What a tonne in a bin is worth when the bin's mean protein is so much; null where it is not known.</summary>
/// <param name="bin">The bin.</param>
/// <param name="proteinPercentAt12">Mean protein, per cent at 12 % moisture.</param>
/// <returns>Money for a tonne, in the currency of the question.</returns>
public delegate double? ValueOfTonne(BinCandidate bin, double proteinPercentAt12);
