namespace Evengrist.Streams.Dividing;

/// <summary>A divide: which share of which stream goes where, and what comes of it. Page: docs/model/divide.md.</summary>
/// <param name="Flours">Every flour in order, and last the rest; all of them together are all streams.</param>
public sealed record Divided(IReadOnlyList<DividedFlour> Flours)
{
    /// <summary>What an hour brings.</summary>
    public decimal ValuePerHour => Flours.Sum(f => f.ValuePerHour);

    /// <summary>Limits missed anywhere.</summary>
    public IReadOnlyList<MissedLimit> Missed(double? sure = null) => [.. Flours.SelectMany(f => f.Missed(sure))];

    /// <summary>What comes of a divide.</summary>
    /// <param name="spec">The question.</param>
    /// <param name="shareOf">Share of a stream, by its number in the table, that goes to a place, by its number among <see cref="DivideSpec.Places"/>; 0 to 1.</param>
    public static Divided Of(DivideSpec spec, Func<int, int, double> shareOf)
    {
        ArgumentNullException.ThrowIfNull(spec);
        ArgumentNullException.ThrowIfNull(shareOf);
        return new Divided([.. spec.Places.Select((place, p) => Of(spec, place, [.. spec.Table.Streams.Select((s, i) => (s, shareOf(i, p))).Where(part => part.Item2 > 0).OrderBy(part => part.s.AshPercent)]))]);
    }

    /// <summary>As it is divided now; null where that is not said of every stream.</summary>
    public static Divided? Now(DivideSpec spec)
    {
        ArgumentNullException.ThrowIfNull(spec);
        string?[] now = [.. spec.Table.Streams.Select(s => spec.ValveOf(s).Now)];
        return now.All(n => n is not null) ? Of(spec, (s, p) => spec.Places[p].Code == now[s] ? 1 : 0) : null;
    }

    private static DividedFlour Of(DivideSpec spec, FlourWish place, (MillStream Stream, double Share)[] parts)
    {
        var yield = parts.Sum(p => p.Share * p.Stream.Yield);
        var flour = new DividedFlour(place, parts, yield, spec.PerHour(yield, place.PricePerTonne));
        return parts.Length == 0 ? flour : flour with
        {
            Means = [.. StreamScale.All.Select(w => StreamMean.Of(w, parts, spec.Table.Methods)).OfType<StreamMean>()],
            Rooms = [.. place.Ends(spec.Table.Basis).Select(e => LimitRoom.Of(e, parts, spec.Table.Methods)).OfType<LimitRoom>()],
            MayBeCalledFlour = LimitRoom.Of(LimitEnd.Identity(spec.Table.Basis), parts, spec.Table.Methods)?.IsKept,
        };
    }
}
