using Evengrist.Packing.Orders;
using Evengrist.Quantities;
using NodaTime;

namespace Evengrist.Packing.Boards;

/// <summary>What a plan in force still packs of each order, whatever became of the order since it was made. Model: docs/model/run-order.md.</summary>
public static class PlanCover
{
    /// <summary>Orders with what the runs of a plan still cover of each: grams of its runs that have not ended, less what was packed since the plan began, at least 0.</summary>
    /// <param name="plan">The plan in force.</param>
    /// <param name="then">The orders as they are kept now, with what was packed of each when the plan began.</param>
    /// <param name="now">The same with what is packed now.</param>
    /// <param name="at">The present moment: a run that has ended covers nothing more.</param>
    /// <remarks>A run of another product than the order wants now covers nothing.</remarks>
    public static IReadOnlyList<OrderStanding> Of(PackingPlan plan, IReadOnlyList<OrderStanding> then, IReadOnlyList<OrderStanding> now, Instant at)
    {
        ArgumentNullException.ThrowIfNull(plan);
        ArgumentNullException.ThrowIfNull(then);
        ArgumentNullException.ThrowIfNull(now);
        var runs = plan.Runs.Where(r => r.Until > at).ToLookup(r => r.Order, StringComparer.OrdinalIgnoreCase);
        var packed = then.ToDictionary(s => s.Order.Number, s => s.Packed, StringComparer.OrdinalIgnoreCase);
        return [.. now.Select(s => s with { Covered = Covered(s, [.. runs[s.Order.Number]], packed.GetValueOrDefault(s.Order.Number)) })];
    }

    private static Mass Covered(OrderStanding order, PlannedRun[] runs, Mass before)
    {
        var planned = runs.Where(r => r.Product.Equals(order.Order.Product, StringComparison.OrdinalIgnoreCase)).Sum(r => r.Grams);
        var since = order.Packed > before ? order.Packed - before : Mass.Zero;
        return Mass.FromGrams(Math.Max(0, planned - since.Grams));
    }
}
