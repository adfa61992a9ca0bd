namespace Evengrist.Mix;

/// <summary>What one step of relaxing saves; solved again, not read off a slope.</summary>
/// <param name="What">What is relaxed, in words.</param>
/// <param name="To">To what, in words.</param>
/// <param name="PerTonne">What is saved for a tonne of the mix, money, by the cost that is kept least; 0 or more.</param>
/// <param name="IsProven">Whether no more can be saved; otherwise that much at least, since the search was cut short.</param>
/// <param name="End">The end of a limit that is relaxed; null for gates and shares.</param>
public sealed record Saving(string What, string To, double PerTonne, bool IsProven, LimitEnd? End = null);
