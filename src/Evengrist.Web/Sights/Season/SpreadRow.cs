namespace Evengrist.Web.Sights.Season;

/// <summary>By how much something may differ, and where that is changed.</summary>
/// <param name="What">What may differ.</param>
/// <param name="Spread">By how much, in words, with its unit.</param>
/// <param name="From">Where the figure comes from.</param>
/// <param name="Link">Where it is changed.</param>
public sealed record SpreadRow(string What, string Spread, string From, string Link);
