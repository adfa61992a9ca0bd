using Evengrist.Intake.Paying;
using Evengrist.Ledger;
using NodaTime;

namespace Evengrist.Intake;

/// <summary>Reckons from the facts of a truck how far it has come. Model: docs/model/yard.md.</summary>
public static class TruckStages
{
    /// <summary>Where the truck stands at a moment; null where it has not come by then. Never <see cref="TruckStage.Booked"/>: a booking is no fact of a truck.</summary>
    /// <param name="book">The ledger.</param>
    /// <param name="truck">A place of kind truck.</param>
    /// <param name="at">The moment; later facts do not count.</param>
    public static TruckState? Of(Book book, Place truck, Instant at)
    {
        ArgumentNullException.ThrowIfNull(book);
        ArgumentNullException.ThrowIfNull(truck);
        var happened = book.HappeningsOn(truck.Id).Where(h => h.At <= at).ToArray();
        var readings = book.ReadingsOn(truck.Id).Where(r => r.At <= at).ToArray();
        var way = LoadWay.Of(book, truck, at);
        Instant? First(HappeningKind kind) => Array.Find(happened, h => h.Kind == kind)?.At;
        Instant? Weight(Property what) => Array.Find(readings, r => r.What == what)?.At;
        var read = Array.Find(readings, r => r.What is not (Property.GrossWeight or Property.TareWeight))?.At;
        var (decision, decided, bin) = Decision(book, happened, way);
        var left = way.Where(m => m.From == truck.Id && m.Mass.Grams > 0).Select(m => (Instant?)m.Until).Max();

        // A load that a file brought in without weights is at least at the gate once it was put on the truck.
        (TruckStage Stage, Instant? At)[] marks =
        [
            (TruckStage.AtGate, First(HappeningKind.Arrived) ?? (Weight(Property.GrossWeight) is null && way.Count > 0 ? way[0].At : null)),
            (TruckStage.Weighed, Weight(Property.GrossWeight)),
            (TruckStage.Probed, First(HappeningKind.Sampled) ?? read),
            (TruckStage.Graded, read),
            (decision, decided),
            (TruckStage.Empty, decision == TruckStage.TurnedAway ? null : Weight(Property.TareWeight) ?? left),
            (TruckStage.Settled, Array.Find(happened, IsSettled)?.At),
            (TruckStage.Voided, First(HappeningKind.Voided)),
        ];
        StageReached[] reached = [.. marks.Where(m => m.At is { } when && when <= at).Select(m => new StageReached(m.Stage, m.At!.Value))];
        return reached is [] ? null : new TruckState(reached[^1].Stage, reached[^1].At, reached, bin);
    }

    // An advance is paid before the quality is final: the load is not settled by it.
    private static bool IsSettled(Happening happening) => happening.Kind == HappeningKind.Settled && !(Payment.TryRead(happening, out var paid) && paid.Kind == PaymentKind.Advance);

    // A movement into a bin says more than an earlier decision: grain that lies there was sent there.
    private static (TruckStage Stage, Instant? At, string Bin) Decision(Book book, Happening[] happened, IReadOnlyList<Movement> way)
    {
        var last = Array.FindLast(happened, h => h.Kind == HappeningKind.Decided);
        var decision = last is null ? null : LoadDecision.Read(last);
        var tipped = way.Where(m => m.Mass.Grams > 0 && book[m.To].Kind is PlaceKind.Bin or PlaceKind.FlourBin).Select(m => (Movement?)m).LastOrDefault();
        return (decision, tipped) switch
        {
            ({ } said, null) => (said.Stage, last!.At, said.Bin),
            ({ Stage: TruckStage.SentTo }, { } into) => (TruckStage.SentTo, last!.At, book[into.To].Code),
            (_, { } into) => (TruckStage.SentTo, into.At, book[into.To].Code),
            _ => (TruckStage.SentTo, null, ""),
        };
    }
}
