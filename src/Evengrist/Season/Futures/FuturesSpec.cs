namespace Evengrist.Season.Futures;

/// <summary>What a promise of flours is reckoned from: a plan and by how much the world may differ from it.</summary>
/// <remarks>Model: docs/model/season-promise.md.</remarks>
/// <param name="Plan">The plan that is followed; its duals say at what value wheat is swapped.</param>
/// <param name="Futures">How many futures are drawn, 2 or more.</param>
/// <param name="Seed">The same seed gives the same futures, however many cores reckon them.</param>
public sealed record FuturesSpec(SeasonPlan Plan, int Futures, long Seed) : FutureSpreads;
