using Evengrist.Packing.Orders;
using Evengrist.Packing.Runs;
using NodaTime;

namespace Evengrist.Packing.Boards;

/// <summary>Runs posed from the records, to be put in order.</summary>
/// <param name="Start">The moment the plan begins.</param>
/// <param name="Spec">What is posed; a run's code is its order's number, its flour the code of its product.</param>
/// <param name="Orders">The orders the runs are of.</param>
/// <param name="LeftOut">Orders with no run, and why.</param>
public sealed record PosedRuns(Instant Start, RunOrderSpec Spec, IReadOnlyList<OrderStanding> Orders, IReadOnlyList<LeftOut> LeftOut)
{
    /// <summary>A placed run with its moments.</summary>
    internal PlannedRun Run(PlacedRun placed, Instant from, Instant until)
    {
        var order = Orders.First(o => o.Order.Number == placed.Run.Code);
        return new(placed.Run.Code, placed.Run.Flour, placed.Line, from, until, order.Remaining.Grams, order.Order.Due, placed.Run.Bin ?? "")
        {
            ChangeMinutes = placed.Before.Minutes, FlushTonnes = placed.Before.FlushTonnes, FlushTo = placed.Before.FlushTonnes > 0 ? placed.Before.FlushTo ?? "not said" : "", ToSign = placed.Before.Allergens, IsLocked = placed.Run.Locked is not null,
        };
    }
}
