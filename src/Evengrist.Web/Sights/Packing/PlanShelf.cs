using Evengrist.Packing.Boards;
using NodaTime;

namespace Evengrist.Web.Sights.Packing;

/// <summary>Plans that were found and wait for a person to keep them.</summary>
public sealed class PlanShelf(IClock clock) : PutBy<FoundPlan>(clock);

/// <summary>A plan that was found.</summary>
/// <param name="Plan">The plan.</param>
/// <param name="After">The version in force when it was made; 0 for none.</param>
public sealed record FoundPlan(PackingPlan Plan, int After);
