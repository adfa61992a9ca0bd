using Evengrist.Ledger;
using NodaTime;

namespace Evengrist.Plant.Epcis.Writing;

/// <summary>The events of a scope in the order of time, made one by one as they are asked for.</summary>
internal sealed class ToldEvents
{
    private readonly Book book;
    private readonly ParcelGraph parcels;
    private readonly Lots lots;
    private readonly FactEvents facts;
    private readonly LotEvents made;
    private readonly Dictionary<FactId, Fact> corrections;

    public ToldEvents(MillDocument document, MillNames names)
    {
        (book, parcels) = (document.Book, document.Reckoning.Parcels);
        var bags = new Bags(document.Products, document.FlourLots, names);
        lots = new Lots(book, parcels, names, bags);
        facts = new FactEvents(book, names, bags, document.Zone);
        made = new LotEvents(book, lots, names, document.Reckoning.Outflow, document.Zone);
        corrections = document.Corrections.Where(c => c.Attribution.Corrects is not null).ToDictionary(c => c.Attribution.Corrects!.Value);
    }

    private enum Sort
    {
        Fact,
        Layer,
        Lot,
        Unit,
        Waste,
        Missing,
        Happening,
    }

    public IEnumerable<WrittenEvent> In(Scope scope)
    {
        var planned = new List<(Instant At, Sort Sort, int Index)>();
        for (var m = 0; m < book.Movements.Count; m++)
        {
            if (scope.Movement(m))
            {
                planned.Add((book.Movements[m].At, Sort.Fact, m));
            }
        }

        for (var p = 0; p < parcels.Count; p++)
        {
            if (scope.Parcel(p))
            {
                Plan(p, planned);
            }
        }

        for (var h = 0; h < book.Happenings.Count; h++)
        {
            if (scope.Happening(book.Happenings[h]))
            {
                planned.Add((book.Happenings[h].At, Sort.Happening, h));
            }
        }

        // What came onto a unit at one moment is told once, whichever of it is asked about.
        planned = [.. planned.Distinct()];
        planned.Sort();
        return planned.Select(Tell).OfType<WrittenEvent>();
    }

    /// <summary>What happened at some moments, made some lots, or puts something right.</summary>
    /// <param name="moments">Milliseconds of Unix time.</param>
    /// <param name="codes">Codes of lots.</param>
    /// <param name="corrections">Whether facts that put others right are told, whenever they happened, and those they put right.</param>
    public Scope At(IEnumerable<long> moments, IEnumerable<string> codes, bool corrections)
    {
        var (at, made) = (moments.ToHashSet(), codes.ToHashSet(StringComparer.Ordinal));
        HashSet<FactId> facts = corrections ? [.. this.corrections.Keys, .. this.corrections.Values.Select(c => c.Id)] : [];
        bool Holds(Instant moment) => at.Contains(moment.ToUnixTimeMilliseconds());
        return new(
            m => Holds(book.Movements[m].At) || facts.Contains(book.Movements[m].Id),
            p => Holds(parcels[p].Until) || (made.Count > 0 && !lots.IsWater(p) && made.Contains(lots.CodeOf(p))),
            h => Holds(h.At) || facts.Contains(h.Id));
    }

    private void Plan(int parcel, List<(Instant At, Sort Sort, int Index)> planned)
    {
        var at = parcels[parcel].Until;
        if (lots.IsMade(parcel))
        {
            var isUnit = book[parcels.PlaceOf(parcel)].Kind.Role() == PlaceRole.Unit;
            var first = isUnit ? lots.Together(parcel)[0] : parcel;
            planned.Add((at, Sort.Lot, first));
            if (isUnit)
            {
                planned.Add((at, Sort.Unit, first));
            }
        }
        else if (book[parcels.PlaceOf(parcel)].Kind == PlaceKind.Bin && parcels.MovementOf(parcel) >= 0)
        {
            planned.Add((at, Sort.Layer, parcel));
        }
        else if (book[parcels.PlaceOf(parcel)].Kind is PlaceKind.Waste or PlaceKind.Loss or PlaceKind.Shortage && parcels.MovementOf(parcel) >= 0 && lots.Making(parcel).From.Count > 0)
        {
            planned.Add((at, book[parcels.PlaceOf(parcel)].Kind == PlaceKind.Waste ? Sort.Waste : Sort.Missing, parcel));
        }
    }

    private WrittenEvent? Tell((Instant At, Sort Sort, int Index) planned) => planned.Sort switch
    {
        Sort.Fact => OfMovement(planned.Index),
        Sort.Layer => made.Stored(planned.Index),
        Sort.Lot => made.Made(planned.Index),
        Sort.Unit => made.OnUnit(planned.Index),
        Sort.Waste => made.Wasted(planned.Index),
        Sort.Missing => made.Missing(planned.Index),
        _ => OfHappening(book.Happenings[planned.Index]),
    };

    private WrittenEvent? OfMovement(int index)
    {
        var movement = book.Movements[index];
        var told = facts.Of(movement);
        return told is null || book.Counts(index) ? told : Declared(told, movement.Id, later => later is Moved moved ? facts.Of(moved.Movement) : null);
    }

    private WrittenEvent? OfHappening(Happening happening)
    {
        var told = facts.Of(happening);
        return told is null || book.Counts(happening) ? told : Declared(told, happening.Id, later => later is Happened happened ? facts.Of(happened.Happening) : null);
    }

    // What was put right is told as it was sent before, with the declaration; without its correction at hand nothing would be declared, so it is left out.
    private WrittenEvent? Declared(WrittenEvent told, FactId wrong, Func<Fact, WrittenEvent?> corrective) =>
        corrections.TryGetValue(wrong, out var later) ? told.Wrong(later.Attribution.Recorded, corrective(later)) : null;
}
