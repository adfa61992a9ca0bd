using Evengrist.Ledger;
using NodaTime;

namespace Evengrist.Records.Streams;

/// <summary>A named person records what was delivered, or counted, of a lot of an additive; a lot that is not in the ledger yet is opened with it.</summary>
/// <param name="Key">The source's own key, so that the same entry sent twice is one.</param>
/// <param name="Lot">Code of the lot.</param>
/// <param name="At">When.</param>
/// <param name="Kilograms">What was there then, kg; 0 where it was used up.</param>
/// <param name="How">Weighed, counted by bags, from the maker's note, in words.</param>
public sealed record CountLot(string Key, string Lot, Instant At, decimal Kilograms, string How)
{
    /// <summary>What the lot is of; demanded where it is to be opened.</summary>
    public string Additive { get; init; } = "";

    /// <summary>One standard uncertainty, kg; null where not known.</summary>
    public decimal? StandardUncertainty { get; init; }

    /// <summary>Records it.</summary>
    /// <exception cref="LedgerRefusal">The place is no additive lot, a new lot lacks what it is of, or a figure cannot be; nothing was recorded.</exception>
    public Receipt In(Mill mill, string by, Instant? recorded = null)
    {
        ArgumentNullException.ThrowIfNull(mill);
        return mill.Record(
            view =>
            {
                var place = view.Book.Find(Lot);
                Demand(place is null || place.Kind == PlaceKind.AdditiveLot, "is no lot of an additive.");
                Demand(!string.IsNullOrWhiteSpace(How), "say how it was found: weighed, counted by bags, the maker's note.");
                var stock = new Measure(Key + "/stock", place?.Code ?? Lot, At, Property.SoundedStock, Kilograms / 1000, "t", default, How.Trim(), "", StandardUncertainty / 1000);
                return place is null ? [Opening(view.Book), stock] : [stock];
            },
            by, "additions", recorded);
    }

    // Written as other lots of the additive are.
    private OpenPlace Opening(Book book)
    {
        var additive = Additive.Trim();
        Demand(additive.Length > 0, "it is not in the ledger yet: say which additive it is of, and it is opened.");
        var like = book.OfKind(PlaceKind.AdditiveLot).FirstOrDefault(p => p.Material.Equals(additive, StringComparison.OrdinalIgnoreCase));
        return new OpenPlace(Key + "/lot", Lot, PlaceKind.AdditiveLot, "", like?.Material ?? additive);
    }

    private void Demand(bool holds, string otherwise)
    {
        if (!holds)
        {
            throw new LedgerRefusal(LedgerRule.Malformed, $"{Lot}: {otherwise}") { Place = Lot, At = At };
        }
    }
}
