namespace Evengrist.Season.Futures;

/// <summary>What comes of asking for a promise.</summary>
public abstract record PromiseOutcome;

/// <summary>There is one.</summary>
/// <param name="Promise">The promise.</param>
/// <param name="Took">Time it took.</param>
/// <param name="IsWhole">Whether every future asked for was reckoned; otherwise somebody stopped it, and it rests on the first ones.</param>
public sealed record Promised(SeasonPromise Promise, TimeSpan Took, bool IsWhole) : PromiseOutcome;

/// <summary>What was asked cannot be meant.</summary>
/// <param name="Faults">Every fault found.</param>
public sealed record NotPromised(IReadOnlyList<SeasonFault> Faults) : PromiseOutcome;

/// <summary>It was stopped before there were enough futures to say anything.</summary>
/// <param name="Futures">How many there were.</param>
public sealed record PromiseStopped(int Futures) : PromiseOutcome;
