using Evengrist.Ledger;
using Evengrist.Quantities;
using Evengrist.Tracing.Bounds;
using NodaTime;

namespace Evengrist.Tracing.Recall;

/// <summary>Gathers what a recall does not know.</summary>
internal sealed class Gaps(Book book, RecallQuestion question, Instant asOf, Unread unread)
{
    public IEnumerable<StillUnknown> Of(IReadOnlyList<RecallPackage> packages, IReadOnlyList<RecallWhere> where, BoundsOutcome bounds)
    {
        foreach (var origin in question.Starts.SelectMany(Sources).DistinctBy(p => p.Id))
        {
            if (origin.Kind is PlaceKind.Elevator or PlaceKind.Opening or PlaceKind.Gain)
            {
                yield return new StillUnknown(origin.Kind == PlaceKind.Elevator ? UnknownKind.FieldBehindElevator : UnknownKind.OriginUnknown, origin, null, []);
            }
        }

        foreach (var unknown in question.Starts.Where(s => s.Place.Kind == PlaceKind.AdditiveLot).SelectMany(s => new Doses(book, asOf).Missing(s.Place)).Concat(unread.All()))
        {
            yield return unknown;
        }

        foreach (var row in where)
        {
            var kind = row.Words switch
            {
                "in bins and machines" => row.Place is { } store && store.Kind.Role() == PlaceRole.Store ? UnknownKind.NeverProvenEmpty : UnknownKind.NotPackedYet,
                "loss, waste and shortage" => UnknownKind.GoneAstray,
                "with customers" => UnknownKind.SecondaryUse,
                "on trucks" => UnknownKind.NotPackedYet,
                _ => (UnknownKind?)null,
            };
            if (kind is { } known && Math.Max(row.Grams.Most, row.Bound.Most) >= 1)
            {
                yield return new StillUnknown(known, row.Place, Math.Max(row.Grams.Most, row.Bound.Most), []);
            }
        }

        foreach (var package in packages)
        {
            var (onward, parts, returned, line) = Onward(package.Place);
            if (line is { } off)
            {
                yield return new StillUnknown(UnknownKind.Flushed, package.Place, Math.Max(package.Grams.Most, package.Bound.Most), [off]) { From = package.Made };
            }

            if (package.Place.Kind == PlaceKind.ReworkTote || onward.Any(p => p.Kind.IsFixed() || p.Kind == PlaceKind.ReworkTote))
            {
                yield return new StillUnknown(UnknownKind.Rework, package.Place, Math.Max(package.Grams.Most, package.Bound.Most), [.. onward.Where(p => p.Kind.Role() != PlaceRole.Sink)]);
            }

            if (parts)
            {
                yield return new StillUnknown(UnknownKind.PartLeft, package.Place, Math.Max(package.Grams.Most, package.Bound.Most), onward);
            }

            if (returned is { } back)
            {
                yield return new StillUnknown(UnknownKind.Returned, package.Place, Math.Max(package.Grams.Most, package.Bound.Most), [book[back.From]]) { From = back.At };
            }
        }

        if (bounds.Unexplained >= 1)
        {
            yield return new StillUnknown(UnknownKind.Unexplained, null, bounds.Unexplained, []);
        }
    }

    private IEnumerable<Place> Sources(Suspicion start)
    {
        if (start.Place.Kind.Role() == PlaceRole.Source)
        {
            return [start.Place];
        }

        return book.MovementsOf(start.Place.Id).Select(i => book.Movements[i]).Where(m => m.To == start.Place.Id && m.At <= asOf).Select(m => book[m.From]).Where(p => p.Kind.Role() == PlaceRole.Source);
    }

    // Where it went, whether it went in parts or part of it stayed, how it came back from a customer, and for a tote the line it was filled from.
    private (Place[] Onward, bool InParts, Movement? Returned, Place? OffLine) Onward(Place package)
    {
        var onward = new List<Place>();
        var (leaves, returned, line) = (0, (Movement?)null, (Place?)null);
        foreach (var index in book.MovementsOf(package.Id))
        {
            var movement = book.Movements[index];
            if (movement.At > asOf || movement.Mass == Mass.Zero)
            {
                continue;
            }

            if (movement.From == package.Id)
            {
                leaves++;
                onward.Add(book[movement.To]);
            }
            else if (book[movement.From].Kind == PlaceKind.Customer)
            {
                returned = movement;
            }
            else if (package.Kind == PlaceKind.ReworkTote && book[movement.From].Kind == PlaceKind.PackingLine)
            {
                line = book[movement.From];
            }
        }

        return ([.. onward.DistinctBy(p => p.Id)], leaves > 1 || (leaves == 1 && book.StockOf(package.Id, asOf) > Mass.Zero), returned, line);
    }
}
