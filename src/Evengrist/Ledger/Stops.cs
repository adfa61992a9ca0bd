using NodaTime;

namespace Evengrist.Ledger;

/// <summary>The rules that keep grain away from a place that is held, shut, under gas or has a person in it, whichever of the two is recorded first.</summary>
internal sealed class Stops(Book book)
{
    private readonly List<(Happening Bar, int Index)> begun = [];

    /// <summary>Refuses a movement while something keeps grain from leaving the one place or from going into the other, at any moment of a flow.</summary>
    public void Against(Movement movement, Place from, Place to, int index)
    {
        if (First(movement, from, bars => bars.AgainstOut) is { } before)
        {
            throw Refuse(from, before, into: false, index);
        }

        if (First(movement, to, bars => bars.AgainstIn(to.Kind)) is { } behind)
        {
            throw Refuse(to, behind, into: true, index);
        }
    }

    /// <summary>Remembers that a person or gas is said to be in a place.</summary>
    public void Begun(Happening happening, int index)
    {
        if (happening.Kind is HappeningKind.PersonInside or HappeningKind.UnderGas)
        {
            begun.Add((happening, index));
        }
    }

    /// <summary>Refuses a person or gas in a place where grain is moved meanwhile, or where the other of the two is.</summary>
    public void InUse()
    {
        foreach (var (bar, index) in begun)
        {
            var place = book[bar.On];
            var until = Walk(bar, place, index);
            if (book.MovementWithin(bar.On, bar.At, until) is { } movement)
            {
                throw new LedgerRefusal(LedgerRule.InUse, $"{place.Code} cannot be said to {Has(bar)} from {bar.At} on: {movement.Mass} goes from {book[movement.From].Code} to {book[movement.To].Code} {When(movement)}. "
                    + "Stop what runs and enter when it ended; if this was over before then, record its beginning and its end together; if the movement's time is wrong, put it right first.")
                {
                    Place = place.Code, At = movement.At > bar.At ? movement.At : bar.At, Index = index,
                };
            }
        }
    }

    // Goes through what happened while the bar stood and returns its end.
    private Instant Walk(Happening bar, Place place, int index)
    {
        var ends = bar.Kind == HappeningKind.PersonInside ? HappeningKind.PersonOut : HappeningKind.GasCleared;
        var (bars, reached) = (Bars.None, false);
        foreach (var happening in book.HappeningsOn(bar.On))
        {
            if (reached && happening.Kind == ends)
            {
                return happening.At;
            }

            bars = bars.After(happening);
            reached |= ReferenceEquals(happening, bar);
            if (reached && bars is { PersonInside: { } person, UnderGas: { } gas })
            {
                throw new LedgerRefusal(bar.Kind == HappeningKind.PersonInside ? LedgerRule.UnderGas : LedgerRule.PersonInside,
                    $"{place.Code} is under gas since {gas.At} ({gas.Words}) and cannot have a person inside from {person.At} on. Nobody may enter until the licensed person has cleared it. If somebody is inside now, act by the site's emergency procedure first.")
                {
                    Place = place.Code, At = happening.At, Index = index,
                };
            }
        }

        return Instant.MaxValue;
    }

    private Happening? First(Movement movement, Place place, Func<Bars, Happening?> against)
    {
        var happenings = book.HappeningsOn(place.Id);
        if (happenings.Count == 0)
        {
            return null;
        }

        var bars = Bars.None;
        var i = 0;
        for (; i < happenings.Count && happenings[i].At <= movement.At; i++)
        {
            bars = bars.After(happenings[i]);
        }

        var bar = against(bars);
        for (; bar is null && i < happenings.Count && happenings[i].At < movement.Until; i++)
        {
            bars = bars.After(happenings[i]);
            bar = against(bars);
        }

        return bar;
    }

    private static LedgerRefusal Refuse(Place place, Happening bar, bool into, int index)
    {
        var since = $"since {bar.At} ({bar.Words})";
        var (rule, says) = bar.Kind switch
        {
            HappeningKind.Held => (LedgerRule.OnHold, $"is on hold {since}. Nothing may {(into ? "go into" : "leave")} it until a named person releases it."),
            HappeningKind.Shut => (LedgerRule.Shut, $"is shut {since}. Nothing may go into it until it is reopened; choose another bin."),
            HappeningKind.UnderGas => (LedgerRule.UnderGas, $"is under gas {since}. Nothing may go in or out until the licensed person has cleared it and the clearance is entered."),
            HappeningKind.PersonInside => (LedgerRule.PersonInside, $"has a person inside {since}. Nothing may go in or out. Make sure by the site's entry procedure that nobody is inside, and enter that they are out."),
            _ => (Said(bar), $"is said to be in the state \"{bar.Words}\" since {bar.At}. Nothing may go {(Said(bar) == LedgerRule.Shut ? "in" : "in or out")} until a named person enters that it has ended."),
        };
        return new LedgerRefusal(rule, $"{place.Code} {says}") { Place = place.Code, At = bar.At, Index = index };
    }

    private static LedgerRule Said(Happening state)
    {
        var said = Bars.None.After(state);
        return said.PersonInside is not null ? LedgerRule.PersonInside : said.UnderGas is not null ? LedgerRule.UnderGas : LedgerRule.Shut;
    }

    private static string Has(Happening bar) => bar.Kind == HappeningKind.PersonInside ? "have a person inside" : "be under gas";

    private static string When(Movement movement) => movement.IsFlow ? $"from {movement.At} to {movement.Until}" : $"on {movement.At}";
}
