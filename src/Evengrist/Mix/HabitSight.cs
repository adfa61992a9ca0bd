namespace Evengrist.Mix;

/// <summary>The old habit beside the answer.</summary>
/// <param name="Gates">Its gates.</param>
/// <param name="Cost">What it costs.</param>
/// <param name="Limits">How far it is from every limit; below zero where it misses one.</param>
public sealed record HabitSight(IReadOnlyList<GateShare> Gates, MixCost Cost, IReadOnlyList<Headroom> Limits);
