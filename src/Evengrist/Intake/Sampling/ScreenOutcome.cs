namespace Evengrist.Intake.Sampling;

/// <summary>What a composite proves, before test error.</summary>
/// <param name="ProofLimit">L·w_min: a composite at or below it proves that no load exceeds L, mg/kg.</param>
/// <param name="ExpectedTests">Tests to expect when the composite is tested first and, where it does not clear, every retained sample after it; null without a prior.</param>
/// <param name="ChanceClears">Chance that the composite clears all; null without a prior.</param>
public abstract record ScreenOutcome(decimal ProofLimit, double? ExpectedTests, double? ChanceClears);

/// <summary>The composite is still to be tested.</summary>
public sealed record ScreenPlanned(decimal ProofLimit, double? ExpectedTests, double? ChanceClears) : ScreenOutcome(ProofLimit, ExpectedTests, ChanceClears);

/// <summary>No load can exceed the limit.</summary>
public sealed record ScreenClears(decimal ProofLimit, double? ExpectedTests, double? ChanceClears) : ScreenOutcome(ProofLimit, ExpectedTests, ChanceClears);

/// <summary>Some load may exceed the limit, or is known to.</summary>
/// <param name="ProofLimit">L·w_min.</param>
/// <param name="ExpectedTests">Tests to expect.</param>
/// <param name="ChanceClears">Chance that a composite clears all.</param>
/// <param name="Remainder">What is left of the composite's content after the loads that were tested, mg/kg of the whole; 0 where they account for all of it and more.</param>
/// <param name="TestNext">Retained samples to test, in this order: the likeliest first, then the one that could hold most.</param>
/// <param name="Cleared">Loads that cannot exceed the limit although the composite does not clear all, or whose own test is at or below it.</param>
/// <param name="Over">Loads whose own test exceeds the limit.</param>
public sealed record ScreenOpen(
    decimal ProofLimit, double? ExpectedTests, double? ChanceClears, decimal Remainder, IReadOnlyList<SuspectTruck> TestNext, IReadOnlyList<ScreenTruck> Cleared, IReadOnlyList<ScreenTruck> Over)
    : ScreenOutcome(ProofLimit, ExpectedTests, ChanceClears);

/// <summary>A load that may exceed the limit.</summary>
/// <param name="Truck">The load.</param>
/// <param name="CouldHold">The most it could hold, were all that remains its own, mg/kg.</param>
public sealed record SuspectTruck(ScreenTruck Truck, decimal CouldHold);
