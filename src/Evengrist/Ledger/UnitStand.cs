using Evengrist.Quantities;
using NodaTime;

namespace Evengrist.Ledger;

/// <summary>Where a pallet or bulk load stands at a moment, by the ledger alone: the one piece that tells it for scans, labels, the ramp, lots and orders. What is withdrawn does not count, and what came back has not gone.</summary>
/// <param name="Where">Where it stands.</param>
/// <param name="Packed">What was packed on it, as it lies; what came back is not packed anew.</param>
/// <param name="PackedAt">When the first of it was packed; null where nothing was.</param>
/// <param name="Here">What of it lies in the mill.</param>
/// <param name="Gone">What customers have of it: what left less what came back, at least 0.</param>
/// <param name="To">The customer that has some of it, or where in the mill it was used; null where neither.</param>
/// <param name="LeftAt">When the last of that left; null where none did.</param>
/// <param name="BackFrom">The customer it came back from last; null where none of it did.</param>
/// <param name="BackAt">When it came back.</param>
public sealed record UnitStand(UnitWhere Where, Mass Packed, Instant? PackedAt, Mass Here, Mass Gone, Place? To, Instant? LeftAt, Place? BackFrom, Instant? BackAt)
{
    /// <summary>The customer that has some of it; null where none has.</summary>
    public Place? Customer => Gone > Mass.Zero ? To : null;

    /// <summary>Looks at a package.</summary>
    /// <param name="book">The ledger.</param>
    /// <param name="unit">The pallet or bulk load.</param>
    /// <param name="at">The moment: what has ended by then counts, and what has left by then has left.</param>
    public static UnitStand Of(Book book, PlaceId unit, Instant at)
    {
        ArgumentNullException.ThrowIfNull(book);
        Movement[] all = [.. book.MovementsOf(unit).Select(m => book.Movements[m]).Where(m => m.Mass > Mass.Zero)];
        Movement[] into = [.. all.Where(m => m.To == unit && m.Until <= at).OrderBy(m => m.Until).ThenBy(m => m.Id)], outOf = [.. all.Where(m => m.From == unit && m.At <= at).OrderBy(m => m.At).ThenBy(m => m.Id)];
        bool IsCustomer(PlaceId place) => book[place].Kind == PlaceKind.Customer;
        Movement[] packed = [.. into.Where(m => !IsCustomer(m.From))], back = [.. into.Where(m => IsCustomer(m.From))], sent = [.. outOf.Where(m => IsCustomer(m.To))];
        var (here, gone) = (book.StockOf(unit, at), Mass.FromGrams(Math.Max(0, Sum(sent).Grams - Sum(back).Grams)));
        Movement? last = gone > Mass.Zero ? sent[^1] : here <= Mass.Zero && outOf.Length > 0 ? outOf[^1] : null;
        Movement? returned = back.Length > 0 ? back[^1] : null;
        var where = packed.Length == 0 ? UnitWhere.NotPacked
            : here > Mass.Zero ? returned is null ? UnitWhere.Here : UnitWhere.CameBack
            : gone > Mass.Zero && last is { } left && outOf[^1].Id == left.Id ? UnitWhere.Sent : UnitWhere.Used;
        return new(where, Sum(packed), packed.Length > 0 ? packed[0].Until : null, here, gone, last is { } to ? book[to.To] : null, last?.At, returned is { } from ? book[from.From] : null, returned?.Until);
    }

    private static Mass Sum(IEnumerable<Movement> movements) => movements.Aggregate(Mass.Zero, (sum, m) => sum + m.Mass);
}

/// <summary>Where a pallet or bulk load stands.</summary>
public enum UnitWhere
{
    /// <summary>Nothing was packed on it yet.</summary>
    NotPacked,

    /// <summary>In the mill, in part or whole.</summary>
    Here,

    /// <summary>In the mill again, in part or whole, after a customer had it.</summary>
    CameBack,

    /// <summary>With a customer.</summary>
    Sent,

    /// <summary>Used up or cleared away in the mill.</summary>
    Used,
}
