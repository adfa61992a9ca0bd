namespace Evengrist.Season;

/// <summary>What is to be left at the end of the plan.</summary>
/// <param name="WheatClass">Of this class; empty for all wheat together.</param>
/// <param name="LeastTonnes">t, 0 or more.</param>
public sealed record CarryOut(string WheatClass, double LeastTonnes);
