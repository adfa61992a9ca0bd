using Evengrist.Ledger;
using NodaTime;

namespace Evengrist.Tracing.Drill;

/// <summary>Picks what a drill is about.</summary>
public static class DrillSubject
{
    /// <summary>A truck or pallet of the ledger, the same for the same seed and ledger; null where none has been emptied or filled in the span.</summary>
    /// <param name="book">The ledger.</param>
    /// <param name="seed">Chosen outside: by a person, or by chance.</param>
    /// <param name="from">Not earlier.</param>
    /// <param name="until">Not later.</param>
    public static Place? Pick(Book book, int seed, Instant from, Instant until)
    {
        ArgumentNullException.ThrowIfNull(book);
        Place[] there = [.. book.Places.Where(p => p.Kind is PlaceKind.Truck or PlaceKind.Pallet && book.MovementsOf(p.Id).Select(i => book.Movements[i])
            .Any(m => (p.Kind == PlaceKind.Truck ? m.From : m.To) == p.Id && m.At >= from && m.Until <= until))];

        // A truck or a pallet with the same chance, then any of them.
        var mixed = Mixed((ulong)(uint)seed);
        Place[] kind = [.. there.Where(p => p.Kind == (mixed % 2 == 0 ? PlaceKind.Truck : PlaceKind.Pallet))];
        var among = kind.Length > 0 ? kind : there;
        return among.Length == 0 ? null : among[(int)(Mixed(mixed) % (ulong)among.Length)];
    }

    // The finaliser of splitmix64, as in the genealogy bench.
    private static ulong Mixed(ulong number)
    {
        unchecked
        {
            var z = number + 0x9E3779B97F4A7C15;
            z = (z ^ (z >> 30)) * 0xBF58476D1CE4E5B9;
            z = (z ^ (z >> 27)) * 0x94D049BB133111EB;
            return z ^ (z >> 31);
        }
    }
}
