namespace Evengrist.Intake.Paying;

/// <summary>One field, district or variety in the season report.</summary>
/// <param name="Group">Its loads.</param>
/// <param name="District">The district it is compared within; empty for a district itself.</param>
/// <param name="Rank">Place by pay for a tonne of net within the district, 1 the dearest; null where it is not ranked.</param>
/// <param name="Of">How many are ranked there.</param>
/// <param name="ProteinOverMean">Protein less the district's mean, in points on the report's basis; null where one of the two is not known.</param>
/// <param name="EachTonneOverMean">Pay for a tonne of net less the district's mean, not rounded; null where one of the two is not known.</param>
/// <param name="Words">What moved the price, in plain words.</param>
public sealed record SeasonRow(LoadGroup Group, string District, int? Rank, int Of, decimal? ProteinOverMean, decimal? EachTonneOverMean, string Words);
