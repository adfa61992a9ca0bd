using Evengrist.Ledger;
using Evengrist.Quantities;
using NodaTime;

namespace Evengrist.Tempering;

/// <summary>What lies in a temper bin, in the order in which it went in: first in first out.</summary>
/// <param name="Stock">How much, to the gram.</param>
/// <param name="FirstIn">When the wheat that lies there longest went in; null where nothing lies there.</param>
/// <param name="LastIn">When the newest went in; null where nothing lies there.</param>
/// <param name="MixedUntil">When the newest of what is mixed at the outlet went in; null where the bin has no stirred stage or nothing lies there.</param>
/// <param name="TonnesPerHourIn">What runs in at the moment, t/h.</param>
/// <param name="TonnesPerHourOut">What runs out at the moment, t/h.</param>
public sealed record TemperQueue(Mass Stock, Instant? FirstIn, Instant? LastIn, Instant? MixedUntil, double TonnesPerHourIn, double TonnesPerHourOut)
{
    /// <summary>How long the wheat that goes in now will have rested when it leaves, at the flow out of the moment; null where none runs out.</summary>
    public Duration? RestOfNewest => TonnesPerHourOut > 0 ? Duration.FromHours((double)Stock.Tonnes / TonnesPerHourOut) : null;

    /// <summary>Looks at a temper bin: as much as has gone out is taken from the oldest that went in.</summary>
    /// <remarks>
    /// A movement under way counts by its elapsed part, evenly. Where the bin has a stirred stage, wheat mixes in it: the oldest of it may be older than first in first out says, and
    /// the newest of it can leave at once, so <see cref="MixedUntil"/> is the least rest of what leaves. What a count found missing or over counts as gone out or in.
    /// </remarks>
    /// <param name="book">The ledger.</param>
    /// <param name="bin">A temper bin.</param>
    /// <param name="at">The moment.</param>
    public static TemperQueue Of(Book book, Place bin, Instant at)
    {
        ArgumentNullException.ThrowIfNull(book);
        ArgumentNullException.ThrowIfNull(bin);
        var (_, outOf) = book.ThroughputOf(bin.Id, at);
        var stock = book.StockOf(bin.Id, at);
        var (into, flowIn, flowOut) = (new List<Movement>(), 0.0, 0.0);
        foreach (var movement in book.MovementsOf(bin.Id).Select(i => book.Movements[i]).Where(m => m.At <= at))
        {
            var rate = movement.Until > at ? (double)movement.Mass.Tonnes / (movement.Until - movement.At).TotalHours : 0;
            if (movement.To == bin.Id)
            {
                into.Add(movement);
                flowIn += rate;
            }
            else
            {
                flowOut += rate;
            }
        }

        if (stock <= Mass.Zero)
        {
            return new TemperQueue(stock, null, null, null, flowIn, flowOut);
        }

        into.Sort();
        var stirred = Math.Min(bin.Stirred.Grams, stock.Grams);
        return new TemperQueue(
            stock, Reached(into, outOf.Grams, at), Earlier(into.Max(m => m.Until), at), stirred > 0 ? Reached(into, outOf.Grams + stirred, at) : null, flowIn, flowOut);
    }

    // When so many grams in all had gone in.
    private static Instant Reached(List<Movement> into, long grams, Instant at)
    {
        foreach (var movement in into)
        {
            if (grams < movement.Mass.Grams)
            {
                return Earlier(movement.At + ((movement.Until - movement.At) * ((double)grams / movement.Mass.Grams)), at);
            }

            grams -= movement.Mass.Grams;
        }

        return Earlier(into[^1].Until, at);
    }

    private static Instant Earlier(Instant left, Instant right) => left < right ? left : right;
}
