namespace Evengrist.Season.Terms;

/// <summary>What wheat left at the end is worth.</summary>
/// <param name="WheatClass">Its class.</param>
/// <param name="PerTonne">Money per t.</param>
public sealed record EndWorth(string WheatClass, double PerTonne);
