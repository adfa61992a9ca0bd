using Evengrist.Ledger;
using NodaTime;

namespace Evengrist.Bins.States;

/// <summary>Reckons how a bin stands from its happenings and movements. Model: docs/model/bin-states.md.</summary>
public static class BinStateModel
{
    /// <summary>How a place stands at a moment; what happened later does not count.</summary>
    /// <param name="book">The ledger.</param>
    /// <param name="bin">A bin.</param>
    /// <param name="at">The moment.</param>
    /// <param name="options">From when on it rests; the usual ones by default.</param>
    public static BinStanding Of(Book book, PlaceId bin, Instant at, BinStateOptions? options = null)
    {
        ArgumentNullException.ThrowIfNull(book);
        var (wanted, bars) = (options ?? BinStateOptions.Usual, book.BarsOn(bin, at));
        var (into, outOf, lastIn, lastOut) = Moved(book, bin, at, wanted);
        var last = lastIn is null || lastOut > lastIn ? lastOut : lastIn;
        var empty = ProvenEmpty(book, bin, at, lastIn);
        var states = new List<BinState>();
        void Add(bool holds, BinState state) => states.AddRange(holds ? [state] : []);
        Add(bars.PersonInside is not null, BinState.PersonInside);
        Add(bars.UnderGas is not null, BinState.UnderGas);
        Add(bars.Held is not null, BinState.Held);
        Add(bars.Shut is not null, BinState.Shut);
        Add(outOf, BinState.Drawing);
        Add(into, BinState.Filling);
        Add(empty is not null, BinState.ProvenEmpty);
        Add(last is { } moved && at - moved >= wanted.RestsAfter && book.StockOf(bin, at) > default(Quantities.Mass), BinState.Resting);
        Add(states.Count == 0, BinState.Open);
        return new BinStanding(states, bars, last, empty);
    }

    private static (bool Into, bool OutOf, Instant? LastIn, Instant? LastOut) Moved(Book book, PlaceId bin, Instant at, BinStateOptions options)
    {
        var (into, outOf) = (false, false);
        Instant? lastIn = null, lastOut = null;
        foreach (var movement in book.MovementsOf(bin).Select(i => book.Movements[i]).Where(m => m.At <= at && m.Mass > default(Quantities.Mass)))
        {
            var until = movement.IsFlow ? movement.Until : movement.At + options.LoadLasts;
            var runs = at < until;
            var touched = movement.Until < at ? movement.Until : at;
            if (movement.To == bin)
            {
                (into, lastIn) = (into || runs, lastIn is null || touched > lastIn ? touched : lastIn);
            }
            else
            {
                (outOf, lastOut) = (outOf || runs, lastOut is null || touched > lastOut ? touched : lastOut);
            }
        }

        return (into, outOf, lastIn, lastOut);
    }

    private static Happening? ProvenEmpty(Book book, PlaceId bin, Instant at, Instant? lastIn) =>
        book.HappeningsOn(bin).LastOrDefault(h => h.Kind == HappeningKind.ProvenEmpty && h.At <= at) is { } empty && (lastIn is null || empty.At >= lastIn) ? empty : null;
}
