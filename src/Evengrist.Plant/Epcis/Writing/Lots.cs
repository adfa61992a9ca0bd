using System.Globalization;
using Evengrist.Ledger;
using Evengrist.Quantities;
using NodaTime;

namespace Evengrist.Plant.Epcis.Writing;

/// <summary>The lots of a reckoning by their names: a truck's load, an additive's delivery, what lay mixed in a place from a moment on, what is on a pallet.</summary>
internal sealed class Lots
{
    private readonly Book book;
    private readonly MillNames names;
    private readonly Bags bags;
    private readonly Dictionary<int, int> further = [];
    private readonly Dictionary<(PlaceId, Instant), List<int>> filled = [];

    public Lots(Book book, ParcelGraph parcels, MillNames names, Bags bags)
    {
        (this.book, Parcels, this.names, this.bags) = (book, parcels, names, bags);

        // Of several mixtures that began in a place at one moment all but the first are numbered.
        var begun = new Dictionary<(PlaceId, Instant), int>();
        for (var p = 0; p < parcels.Count; p++)
        {
            if (parcels.MovementOf(p) < 0)
            {
                var began = (parcels.PlaceOf(p), parcels[p].From);
                if ((begun[began] = begun.GetValueOrDefault(began) + 1) is > 1 and var number)
                {
                    further[p] = number;
                }
            }

            if (book[parcels.PlaceOf(p)].Kind.Role() == PlaceRole.Unit && IsMade(p))
            {
                var at = (parcels.PlaceOf(p), parcels[p].Until);
                (filled.TryGetValue(at, out var others) ? others : filled[at] = []).Add(p);
            }
        }
    }

    public ParcelGraph Parcels { get; }

    /// <summary>Whether a parcel is of water, which is no lot.</summary>
    public bool IsWater(int parcel) => book[Parcels.PlaceOf(parcel)].Kind == PlaceKind.Water;

    /// <summary>Whether a parcel is a lot of its own made of others: a mixture, or what was loaded on a unit that is no truck from a field.</summary>
    public bool IsMade(int parcel)
    {
        var parents = Parcels.Rows.ParentsOf(parcel);
        if (parents.IsEmpty)
        {
            return false;
        }

        // What lies mixed on a unit is the unit's one lot: each load onto it is told, not that they lie together.
        var place = book[Parcels.PlaceOf(parcel)];
        if (Parcels.MovementOf(parcel) < 0)
        {
            return place.Kind.Role() != PlaceRole.Unit;
        }

        return place.Kind.Role() == PlaceRole.Unit && !(place.Kind == PlaceKind.Truck && Parcels[parents[0]].IsOrigin);
    }

    /// <summary>All that came onto a unit at the moment a parcel did.</summary>
    public IReadOnlyList<int> Together(int parcel) => filled.GetValueOrDefault((Parcels.PlaceOf(parcel), Parcels[parcel].Until)) ?? [parcel];

    /// <summary>What makes a made lot its own: the unit it is on, or the mixture's code.</summary>
    public string CodeOf(int parcel) => book[Parcels.PlaceOf(parcel)] is { } place && place.Kind.Role() == PlaceRole.Unit ? MillNames.Escaped(place.Code) : MillNames.CodeIn(NameOf(parcel));

    /// <summary>What lies on a unit of so much as whole bags of a lot; null where it is none.</summary>
    public (string Lot, int Count)? BagsOf(Place unit, Mass mass) => bags.On(book, unit, mass);

    /// <summary>URI of the lot a parcel is, or is part of.</summary>
    public string NameOf(int parcel)
    {
        var place = book[Parcels.PlaceOf(parcel)];
        if (place.Kind.Role() is PlaceRole.Unit)
        {
            return bags.LotOf(book, place) ?? names.Lot(place.Code, place.Material);
        }

        var parents = Parcels.Rows.ParentsOf(parcel);
        if (Parcels.MovementOf(parcel) is var movement && movement >= 0)
        {
            // A layer in a bin, or what went to a sink, is still the lot that came.
            return parents.Length == 1 ? NameOf(parents[0])
                : parents.IsEmpty && place.Kind.Role() == PlaceRole.Source ? names.Lot(place.Code, place.Material)
                : names.Lot(string.Create(CultureInfo.InvariantCulture, $"{place.Code}-unknown-{book.Movements[movement].Id.Value}"), "");
        }

        var began = Parcels[parcel].From.InUtc().LocalDateTime.ToString("uuuuMMdd'T'HHmmssfff", CultureInfo.InvariantCulture);
        return names.Lot($"{place.Code}-{began}" + (further.TryGetValue(parcel, out var number) ? string.Create(CultureInfo.InvariantCulture, $"-{number}") : ""), place.Material);
    }

    /// <summary>Mass of a parcel, to the gram.</summary>
    public decimal KilogramsOf(int parcel) => MassOf(parcel).Kilograms;

    /// <summary>Mass of parcels together, to the gram.</summary>
    public Mass MassOf(IEnumerable<int> parcels) => parcels.Aggregate(Mass.Zero, (sum, p) => sum + MassOf(p));

    /// <summary>What parcels were made of, all of them: one act.</summary>
    public (IReadOnlyList<(string Lot, decimal Kilograms)> From, decimal Water, decimal Made) Making(IReadOnlyList<int> parcels)
    {
        var all = parcels.Select(Making).ToList();
        return all.Count == 1 ? all[0] : ([.. all.SelectMany(m => m.From).GroupBy(f => f.Lot).Select(g => (g.Key, g.Sum(f => f.Kilograms)))], all.Sum(m => m.Water), all.Sum(m => m.Made));
    }

    /// <summary>What a made parcel was made of: lots with kilograms, and water; together its mass to the gram.</summary>
    public (IReadOnlyList<(string Lot, decimal Kilograms)> From, decimal Water, decimal Made) Making(int parcel)
    {
        var parents = Parcels.Rows.ParentsOf(parcel).ToArray();
        var mass = MassOf(parcel);

        // What flowed at even rates can leave a share some 1e-15 below zero: nothing.
        var shares = Array.ConvertAll(Parcels.Rows.SharesOf(parcel).ToArray(), s => Math.Max(0, s));
        var parts = mass.Split(shares).Zip(parents).ToList();
        return (
            [.. parts.Where(p => !IsWater(p.Second) && p.First > Mass.Zero).GroupBy(p => NameOf(p.Second)).Select(g => (g.Key, g.Sum(p => p.First.Kilograms)))],
            parts.Where(p => IsWater(p.Second)).Sum(p => p.First.Kilograms), mass.Kilograms);
    }

    private Mass MassOf(int parcel) => Mass.FromGrams((long)Math.Round(Parcels.GramsOf(parcel)));
}
