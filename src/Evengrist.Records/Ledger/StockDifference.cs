using Evengrist.Ledger;
using Evengrist.Quantities;
using NodaTime;

namespace Evengrist.Records.Ledger;

/// <summary>The entry that brings the ledger's stock of a place to what was found there.</summary>
internal static class StockDifference
{
    /// <summary>Books what the ledger holds too much to a shortage, what it holds too little from a gain; opens either where the mill has none.</summary>
    /// <param name="book">The ledger.</param>
    /// <param name="place">The place.</param>
    /// <param name="tooMuch">What the ledger holds more than was found; below zero where it holds less.</param>
    /// <param name="at">When it was found.</param>
    /// <param name="note">Why.</param>
    /// <param name="ownKey">The source's own key; null: the place and the moment.</param>
    public static IEnumerable<Draft> Drafts(Book book, Place place, Mass tooMuch, Instant at, string note, string? ownKey = null)
    {
        if (tooMuch == Mass.Zero)
        {
            yield break;
        }

        var isTooMuch = tooMuch > Mass.Zero;
        var (kind, code) = isTooMuch ? (PlaceKind.Shortage, "SHORTAGE") : (PlaceKind.Gain, "GAIN");
        if (book.OfKind(kind).FirstOrDefault() is { } there)
        {
            code = there.Code;
        }
        else
        {
            yield return new OpenPlace(code, code, kind);
        }

        var key = ownKey ?? $"{place.Code} difference {at.ToMicros()}";
        yield return isTooMuch
            ? new Move(key, place.Code, code, tooMuch, at) { Note = note }
            : new Move(key, code, place.Code, -tooMuch, at) { Note = note };
    }
}
