namespace Evengrist.Season;

/// <summary>A mill unit as the plan sees it: how much wheat it can grind.</summary>
/// <param name="Code">Its code.</param>
/// <param name="TonnesPerHour">Wheat ground in an hour, t as it lies, above 0.</param>
/// <param name="Hours">Hours it can run in each period, 0 or more.</param>
/// <param name="LeastCampaignHours">A flour that is milled in a period is milled for at least this long; null for no such rule. Kept by the plan that can be milled, not by the linear one.</param>
public sealed record MillUnit(string Code, double TonnesPerHour, IReadOnlyList<double> Hours, double? LeastCampaignHours = null);
