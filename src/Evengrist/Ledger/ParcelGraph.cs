using Evengrist.Ledger.Reckoned;

namespace Evengrist.Ledger;

/// <summary>All parcels of one reckoning: what each was made of, where and when it was, and how much.</summary>
/// <remarks>Grows as facts arrive and is cut back when a late fact makes a stretch be reckoned again. About 33 bytes a parcel and 12 an edge.</remarks>
public sealed class ParcelGraph : IParcelMaker
{
    private int[] places = new int[1024];
    private int[] movements = new int[1024];
    private long[] from = new long[1024];
    private long[] until = new long[1024];
    private float[] grainShares = new float[1024];
    private double[] grams = new double[1024];
    private int[] parents = new int[16];
    private double[] shares = new double[16];
    private long now;
    private long next;

    internal ParcelGraph()
    {
    }

    /// <summary>What each parcel was made of.</summary>
    public ParentRows Rows { get; } = new();

    /// <summary>Number of parcels.</summary>
    public int Count => Rows.Count;

    /// <summary>The parcel with the number.</summary>
    public Parcel this[int parcel] => new(parcel, PlaceOf(parcel), movements[parcel], Micros.ToInstant(from[parcel]), Micros.ToInstant(until[parcel]), grams[parcel], grainShares[parcel])
    {
        IsOrigin = Rows.ParentsOf(parcel).IsEmpty,
    };

    /// <summary>Place of a parcel.</summary>
    public PlaceId PlaceOf(int parcel) => new(places[parcel]);

    /// <summary>Grams of a parcel.</summary>
    public double GramsOf(int parcel) => grams[parcel];

    /// <summary>Share of a parcel that is neither water nor an additive.</summary>
    public double GrainShareOf(int parcel) => grainShares[parcel];

    /// <summary>Movement that brought or gave a parcel; −1 for a mixture.</summary>
    public int MovementOf(int parcel) => movements[parcel];

    /// <summary>When a parcel was whole, microseconds.</summary>
    internal long UntilOf(int parcel) => until[parcel];

    /// <summary>When a parcel began, microseconds.</summary>
    internal long FromOf(int parcel) => from[parcel];

    void IParcelMaker.Stretch(long begin, long end) => (now, next) = (begin, end);

    int IParcelMaker.Mix(int place, List<Layer> parts, double mass) => Add(place, -1, now, next, parts, mass);

    int IParcelMaker.Load(int place, int movement, long at, long end, List<Layer> parts, double mass) => Add(place, movement, at, end, parts, mass);

    int IParcelMaker.Origin(int place, int movement, long at, long end, double mass, bool isGrain)
    {
        Ensure();
        Set(Count, place, movement, at, end, mass, isGrain ? 1 : 0);
        return Rows.Add([], []);
    }

    void IParcelMaker.Extend(int parcel, double more)
    {
        until[parcel] = next;
        grams[parcel] += more;
    }

    /// <summary>Takes over a parcel of another graph, without what it was made of.</summary>
    internal int TakeOver(ParcelGraph other, int parcel)
    {
        Ensure();
        Set(Count, other.places[parcel], other.movements[parcel], other.from[parcel], other.until[parcel], other.grams[parcel], other.grainShares[parcel]);
        return Rows.Add([], []);
    }

    internal void CutBackTo(int count) => Rows.CutBackTo(count);

    /// <summary>Makes room for what so many movements are likely to come to, so that arrays need not grow step by step; a mill's year came to 1.6 parcels and 4 to 5 edges a movement.</summary>
    internal void MakeRoomFor(int count)
    {
        Resize(Math.Max(places.Length, count + count / 2));
        Rows.MakeRoomFor(count + count / 2, count * 4);
    }

    // A load or a mixture of parts; their shares are by grams.
    private int Add(int place, int movement, long at, long end, List<Layer> parts, double mass)
    {
        Ensure();
        if (parents.Length < parts.Count)
        {
            Array.Resize(ref parents, parts.Count * 2);
            Array.Resize(ref shares, parts.Count * 2);
        }

        double sum = 0;
        foreach (var part in parts)
        {
            sum += part.Grams;
        }

        double grain = 0;
        for (var i = 0; i < parts.Count; i++)
        {
            parents[i] = parts[i].Parcel;
            shares[i] = parts[i].Grams / sum;
            grain += shares[i] * grainShares[parents[i]];
        }

        Set(Count, place, movement, at, end, mass, grain);
        return Rows.Add(parents.AsSpan(0, parts.Count), shares.AsSpan(0, parts.Count));
    }

    private void Set(int parcel, int place, int movement, long at, long end, double mass, double grain)
    {
        places[parcel] = place;
        movements[parcel] = movement;
        from[parcel] = at;
        until[parcel] = end;
        grams[parcel] = mass;
        grainShares[parcel] = (float)grain;
    }

    private void Ensure()
    {
        if (Count < places.Length)
        {
            return;
        }

        Resize(places.Length + places.Length / 2);
    }

    private void Resize(int size)
    {
        Array.Resize(ref places, size);
        Array.Resize(ref movements, size);
        Array.Resize(ref from, size);
        Array.Resize(ref until, size);
        Array.Resize(ref grainShares, size);
        Array.Resize(ref grams, size);
    }
}
