using System.Globalization;

namespace Evengrist.Streams.Dividing;

/// <summary>What goes to one place.</summary>
/// <param name="Place">The flour, or the rest.</param>
/// <param name="Parts">Its streams from the least ash on, each with the share of it that goes there.</param>
/// <param name="Yield">How much that is, per cent of the wheat.</param>
/// <param name="ValuePerHour">What it brings in an hour.</param>
public sealed record DividedFlour(FlourWish Place, IReadOnlyList<(MillStream Stream, double Share)> Parts, double Yield, decimal ValuePerHour)
{
    /// <summary>What is known of all its streams; empty where nothing goes there.</summary>
    public IReadOnlyList<StreamMean> Means { get; init; } = [];

    /// <summary>Distance to each end of each limit; empty where nothing goes there.</summary>
    public IReadOnlyList<LimitRoom> Rooms { get; init; } = [];

    /// <summary>Whether the United States' rule of identity lets it be called flour by its ash; null where protein was not read or nothing goes there.</summary>
    public bool? MayBeCalledFlour { get; init; }

    /// <summary>A property's mean; null where it is not known.</summary>
    public StreamMean? MeanOf(StreamProperty what) => Means.FirstOrDefault(m => m.What == what);

    /// <summary>Limits it misses; empty where it keeps all.</summary>
    /// <param name="sure">The chance that is asked of its limits; null for their means.</param>
    public IReadOnlyList<MissedLimit> Missed(double? sure = null) =>
    [
        .. Yield < Place.LeastYield - 1e-6 ? [new MissedLimit(Place.Code, "yield", string.Create(CultureInfo.InvariantCulture, $"at least {Place.LeastYield:0.##} % of the wheat"))] : Array.Empty<MissedLimit>(),
        .. Yield > Place.MostYield + 1e-6 ? [new MissedLimit(Place.Code, "yield", string.Create(CultureInfo.InvariantCulture, $"at most {Place.MostYield:0.##} % of the wheat"))] : Array.Empty<MissedLimit>(),
        .. Rooms.Where(r => !r.IsKeptTo(sure)).Select(r => new MissedLimit(Place.Code, r.End.IsIdentity ? "“flour”" : r.End.What.Words(), r.End.Words)),
    ];
}

/// <summary>A limit of a flour that is missed.</summary>
/// <param name="Flour">Code of the flour.</param>
/// <param name="Of">What it is a limit on, in a word or two.</param>
/// <param name="End">The limit.</param>
public sealed record MissedLimit(string Flour, string Of, string End)
{
    /// <summary>In words: WB ash at most 0.46 % 14mb.</summary>
    public string Words => $"{Flour} {End}";
}
