namespace Evengrist.Ledger.Reckoned;

/// <summary>A movement under way, with the parcels it takes along.</summary>
internal sealed class Flow : UnderWay
{
    /// <summary>Order within a stretch: what lies further up the way of the grain goes first.</summary>
    public required int Rank { get; init; }

    /// <summary>Whether it leaves a bin for a place where it is blended with others: then a stretch ends where its parcel does.</summary>
    public bool MeetsOthers { get; init; }

    /// <summary>Whether it falls into a wheat bin, where each parcel makes a layer.</summary>
    public bool MakesLayers { get; init; }

    /// <summary>The parcel whose layer it is making; −1 for none yet.</summary>
    public int Layered { get; set; } = -1;

    /// <summary>The layer it is making.</summary>
    public int Layer { get; set; }

    /// <summary>The origin it takes out of a source; −1 where it leaves no source.</summary>
    public int Origin { get; set; } = -1;

    /// <summary>What has arrived so far, where it goes to a unit or a sink.</summary>
    public List<Layer>? Arrived { get; init; }

    /// <summary>Grams a microsecond; for a flow that takes time.</summary>
    public double Rate => Grams / (Until - At);

    public Flow Copy() => new()
    {
        Movement = Movement, From = From, To = To, Grams = Grams, At = At, Until = Until, Rank = Rank, MeetsOthers = MeetsOthers,
        MakesLayers = MakesLayers, Layered = Layered, Layer = Layer,
        Moved = Moved, Origin = Origin, Arrived = Arrived is null ? null : [.. Arrived],
    };

    /// <summary>Gives every parcel in it another number; the layer it was making goes on as another.</summary>
    public void Renumber(Func<int, int> number)
    {
        (Layered, Origin) = (-1, Origin < 0 ? Origin : number(Origin));
        Arrived?.Renumber(number);
    }

    /// <summary>Time in which so many grams flow, rounded up; at least a millisecond, so that crumbs of layers do not stop the clock.</summary>
    public long MicrosFor(double grams) => double.IsInfinity(grams) ? Until - At : Math.Max(1000, (long)Math.Min(Math.Ceiling(grams / Grams * (Until - At)), Until - At));
}
