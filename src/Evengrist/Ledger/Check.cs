using System.Runtime.CompilerServices;
using Evengrist.Quantities;
using NodaTime;

namespace Evengrist.Ledger;

/// <summary>The rules of the ledger, asked of each fact of a batch before it is taken, and of the balances after the whole batch.</summary>
internal sealed class Check(Book book)
{
    private static readonly Mass MostOnWheels = Mass.FromTonnes(120m);
    private static readonly Mass MostInOneMovement = Mass.FromTonnes(100_000m);
    private readonly Dictionary<PlaceId, long> changed = [];
    private readonly List<(Happening Empty, int Index)> empties = [];
    private readonly Stops stops = new(book);

    public void Before(Fact fact, int index)
    {
        var attribution = fact.Attribution;
        Demand(!string.IsNullOrWhiteSpace(attribution.By), index, "Every fact carries who recorded it: give a name.");
        Demand(!string.IsNullOrWhiteSpace(attribution.Source) && !string.IsNullOrWhiteSpace(attribution.SourceKey), index, "Every fact carries its source and the source's own key.");
        Demand(fact.Id > book.Last, index, $"{fact.Id} does not follow {book.Last}.");
        if (attribution.Corrects is { } corrected)
        {
            Demand(book.CanCorrect(fact, corrected), index, $"{corrected} cannot be corrected by this: it is of another sort, unknown, or corrected already. Correct the newest one.", LedgerRule.BadCorrection);
            Demand(!string.IsNullOrWhiteSpace(attribution.Note), index, "A correction says why: give a note.", LedgerRule.BadCorrection);
        }

        switch (fact)
        {
            case PlaceOpened opened:
                Place(opened.Place, index);
                break;
            case Connected connected:
                Known(connected.From, index);
                Known(connected.To, index);
                Demand(connected.From != connected.To && book[connected.From].Kind.IsFixed() && book[connected.To].Kind.IsFixed(), index, "A connection joins two different places of the plant.");
                break;
            case Moved moved:
                Movement(moved, index);
                break;
            case Measured measured:
                Reading(measured, index);
                break;
            case Happened happened:
                Happening(happened, index);
                break;
        }
    }

    /// <summary>Remembers that the balance of both places changed from the movement's beginning on.</summary>
    public void Changed(Movement movement)
    {
        var at = movement.At.ToMicros();
        changed[movement.From] = Math.Min(at, changed.GetValueOrDefault(movement.From, long.MaxValue));
        changed[movement.To] = Math.Min(at, changed.GetValueOrDefault(movement.To, long.MaxValue));
    }

    public void Balances()
    {
        stops.InUse();
        foreach (var (id, from) in changed)
        {
            var place = book[id];
            if (place.Kind.Role() != PlaceRole.Source && book.TimelineOf(id).FirstBreach(from, place.Capacity) is { } breach)
            {
                throw Refuse(place, breach);
            }
        }

        foreach (var (empty, index) in empties)
        {
            var left = book.StockOf(empty.On, empty.At);
            Demand(left == Mass.Zero, index, $"{book[empty.On].Code} is to be proven empty on {empty.At} but stands at {left} in the ledger. Book the difference to a shortage or a gain first.", LedgerRule.NotEmpty);
        }
    }

    private void Place(Place place, int index)
    {
        Demand(place.Id.Value == book.Places.Count + 1, index, $"{place.Id} does not follow the last place.");
        Demand(!string.IsNullOrWhiteSpace(place.Code) && place.Code.Length <= 60 && place.Code.Trim() == place.Code, index, "A place needs a code of 1 to 60 characters without space at either end.");
        Demand(Enum.IsDefined(place.Kind) && place.Kind != PlaceKind.None, index, $"{place.Code}: not a kind of place.");
        Demand(book.Find(place.Code) is null, index, $"The code {place.Code} is taken by another place. Choose another code.", LedgerRule.CodeTaken);
        Demand(place.Capacity is not { } capacity || capacity > Mass.Zero, index, $"{place.Code}: a capacity is above zero; leave it out where there is none.");
        Demand(place.CoreShare is >= 0 and <= 1, index, $"{place.Code}: the core share lies from 0 to 1.");
        Demand(place.Stirred >= Mass.Zero, index, $"{place.Code}: the stirred stage is at least zero.");
    }

    private void Movement(Moved moved, int index)
    {
        var movement = moved.Movement;
        var from = Known(movement.From, index);
        var to = Known(movement.To, index);
        var route = $"{from.Code} to {to.Code}";
        Demand(movement.Mass > Mass.Zero || (movement.Mass == Mass.Zero && moved.Attribution.Corrects is not null), index, $"{route}: a movement is above zero; got {movement.Mass}.");
        Demand(movement.Mass <= MostInOneMovement, index, $"{route}: {movement.Mass} in one movement cannot be. Is the unit right (kg, not g or lb)?");
        Demand(from.Kind != PlaceKind.Truck && to.Kind != PlaceKind.Truck || movement.Mass <= MostOnWheels, index, $"{route}: {movement.Mass} on one truck or railcar cannot be. Is the unit right (kg, not g or lb)?");
        Demand(movement.Until >= movement.At, index, $"{route}: it ends before it begins.");
        NotInTheFuture(movement.Until, moved.Attribution, index);
        Demand(from.Id != to.Id && book.CanFlow(from, to), index, $"Nothing can go from {from.Code} ({from.Kind.Words()}) to {to.Code} ({to.Kind.Words()}). Connect the two first, or look for a typing error.", LedgerRule.NotConnected);
        if (moved.Attribution.Corrects is null)
        {
            stops.Against(movement, from, to, index);
        }
    }

    private void Reading(Measured measured, int index)
    {
        var reading = measured.Reading;
        var place = Known(reading.On, index);
        Demand(Enum.IsDefined(reading.What) && reading.What != Property.None, index, $"{place.Code}: not a property.");
        Demand(!string.IsNullOrWhiteSpace(reading.Method), index, $"{place.Code}: a reading says how it was measured.");
        Demand(reading.StandardUncertainty is not < 0m, index, $"{place.Code}: an uncertainty is at least zero.");
        if (Ledger.Readings.Fault(reading) is { } fault)
        {
            Demand(false, index, $"{place.Code}: {fault}");
        }

        NotInTheFuture(reading.At, measured.Attribution, index);
    }

    private void Happening(Happened happened, int index)
    {
        var happening = happened.Happening;
        var place = Known(happening.On, index);
        Demand(Enum.IsDefined(happening.Kind) && happening.Kind != HappeningKind.None, index, $"{place.Code}: not something that happens to a place.");
        Demand(happening.Kind == HappeningKind.ProvenEmpty || !string.IsNullOrWhiteSpace(happening.Text), index, $"{place.Code}: say why, or what, in words.");
        NotInTheFuture(happening.At, happened.Attribution, index);
        if (happening.Kind == HappeningKind.ProvenEmpty)
        {
            empties.Add((happening, index));
        }
        else if (happened.Attribution.Corrects is null)
        {
            stops.Begun(happening, index);
        }
    }

    private Place Known(PlaceId id, int index) => id.Value > 0 && id.Value <= book.Places.Count
        ? book[id]
        : throw new LedgerRefusal(LedgerRule.UnknownPlace, $"There is no {id}. Open it first.") { Index = index };

    private static void NotInTheFuture(Instant happened, Attribution attribution, int index) =>
        Demand(happened <= attribution.Recorded, index, $"It is said to have happened on {happened}, after it was recorded on {attribution.Recorded}. Check date, time and zone.", LedgerRule.InTheFuture);

    private static void Demand(bool holds, int index, [InterpolatedStringHandlerArgument(nameof(holds))] Otherwise otherwise, LedgerRule rule = LedgerRule.Malformed)
    {
        if (!holds)
        {
            throw new LedgerRefusal(rule, otherwise.ToString()) { Index = index };
        }
    }

    private static LedgerRefusal Refuse(Place place, Timeline.Breach breach)
    {
        var (at, by) = (Micros.ToInstant(breach.Moment), Mass.FromGrams(Math.Abs(breach.Grams)));
        return breach.TooLittle
            ? new LedgerRefusal(LedgerRule.WouldOverdraw, $"{place.Code} would stand {by} below zero on {at}. Look for a movement into it that is missing or too small, or correct the one out of it.") { Place = place.Code, At = at, By = by }
            : new LedgerRefusal(LedgerRule.WouldOverfill, $"{place.Code} would hold {by} more than its capacity of {place.Capacity} on {at}. Choose another place, or look for a movement out of it that is missing.") { Place = place.Code, At = at, By = by };
    }
}
