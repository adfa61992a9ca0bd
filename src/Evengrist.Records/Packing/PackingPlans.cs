using Evengrist.Ledger;
using Evengrist.Packing.Boards;
using NodaTime;

namespace Evengrist.Records.Packing;

/// <summary>The plans of a mill's packing hall, by version: the newest that has begun is in force.</summary>
public static class PackingPlans
{
    private const string Code = "hall";

    /// <summary>All versions, the first first.</summary>
    public static IReadOnlyList<KeptPackingPlan> Versions(Mill mill)
    {
        ArgumentNullException.ThrowIfNull(mill);
        return [.. Read(mill.Papers(PackingPlan.PaperKind).All())];
    }

    /// <summary>The plan in force at a moment: the newest that begins by then; null where none is kept.</summary>
    public static KeptPackingPlan? InForce(Mill mill, Instant at)
    {
        ArgumentNullException.ThrowIfNull(mill);
        // From the newest back, so that years of plans are not read for one.
        return Read(mill.Papers(PackingPlan.PaperKind).All().Reverse()).FirstOrDefault(v => v.Plan.Start <= at);
    }

    /// <summary>Keeps a plan as the next version; every fault where it cannot be, and then nothing is kept.</summary>
    /// <param name="mill">The mill.</param>
    /// <param name="plan">The plan.</param>
    /// <param name="why">Why it is kept.</param>
    /// <param name="by">Who keeps it.</param>
    /// <param name="after">The version it follows, so that nobody's is overwritten unseen; 0 for the first, null for whichever is newest.</param>
    public static (KeptPackingPlan? Kept, IReadOnlyList<string> Faults) Keep(Mill mill, PackingPlan plan, string? why, string? by, int? after = null)
    {
        ArgumentNullException.ThrowIfNull(plan);
        var newest = Versions(mill) is { Count: > 0 } versions ? versions[^1].Version : 0;
        string[] faults =
        [
            .. string.IsNullOrWhiteSpace(by) ? ["Say who you are first: every record carries a name."] : Array.Empty<string>(),
            .. string.IsNullOrWhiteSpace(why) || why.Length > 300 ? ["Say why this plan is kept, in at most 300 characters."] : Array.Empty<string>(),
            .. after is { } seen && seen != newest ? [$"Another plan was kept meanwhile: version {newest}. Look at it first."] : Array.Empty<string>(),
            .. plan.Faults(),
        ];
        if (faults.Length > 0)
        {
            return (null, faults);
        }

        try
        {
            mill.Papers(PackingPlan.PaperKind).KeepNext(Code, (plan with { Why = why!.Trim() }).ToJson(), by!.Trim());
            return (Versions(mill)[^1], []);
        }
        catch (LedgerRefusal taken) when (taken.Rule == LedgerRule.KeyTaken)
        {
            return (null, ["Another plan was kept meanwhile. Look at it first."]);
        }
    }

    private static IEnumerable<KeptPackingPlan> Read(IEnumerable<Paper> papers) =>
        papers.Where(p => p.Code == Code).Read<PackingPlan>(PackingPlan.TryRead).Select(r => new KeptPackingPlan(r.Paper.Version, r.Paper.By, r.Paper.Recorded, r.Value));

    /// <summary>Locks a run of the plan in force, or lets it go; every fault where it cannot be.</summary>
    public static (KeptPackingPlan? Kept, IReadOnlyList<string> Faults) Lock(Mill mill, string order, bool isLocked, Instant at, string? by) =>
        InForce(mill, at) is not { } kept ? (null, ["No plan is kept: make one first."])
        : kept.Plan.Runs.FirstOrDefault(r => r.Order == order) is not { } run ? (null, [$"The plan has no run of {order}."])
        : run.From < at && isLocked ? (null, [$"The run of {order} has begun: what is under way stays by itself."])
        : Keep(mill, kept.Plan with { Runs = [.. kept.Plan.Runs.Select(r => r == run ? r with { IsLocked = isLocked } : r)] }, $"{order} {(isLocked ? "stays where it is" : "may be moved")}", by, kept.Version);
}
