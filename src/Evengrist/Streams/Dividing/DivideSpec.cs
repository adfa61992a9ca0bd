namespace Evengrist.Streams.Dividing;

/// <summary>What the best divide of flour streams is to be found for. Page: docs/model/divide.md.</summary>
/// <param name="Table">The survey.</param>
/// <param name="Flours">The flours wanted.</param>
/// <param name="RateTonnesPerHour">Tonnes an hour of the wheat that yields are per cent of, above 0.</param>
public sealed record DivideSpec(StreamTable Table, IReadOnlyList<FlourWish> Flours, double RateTonnesPerHour)
{
    /// <summary>Most flours at once [design].</summary>
    public const int MostFlours = 12;

    /// <summary>Where a stream goes that goes to no flour, and what a tonne brings there; always possible.</summary>
    public FlourWish Rest { get; init; } = new("feed", 0m);

    /// <summary>What is known of the spouts.</summary>
    public IReadOnlyList<StreamValve> Valves { get; init; } = [];

    /// <summary>The chance with which every limit of every flour has to be kept, each by itself, from 0.5 up to, not including, 1; null where the mean has to keep it.</summary>
    public double? Sure { get; init; }

    /// <summary>Hours a day that the mill runs, for the value of a day.</summary>
    public double HoursPerDay { get; init; } = 24;

    /// <summary>The currency of prices.</summary>
    public string Currency { get; init; } = "USD";

    /// <summary>Every place a stream can go to: the flours in order, and the rest.</summary>
    public IReadOnlyList<FlourWish> Places => [.. Flours, Rest];

    /// <summary>The valve of a stream.</summary>
    public StreamValve ValveOf(MillStream stream)
    {
        ArgumentNullException.ThrowIfNull(stream);
        return Valves.FirstOrDefault(v => v.Stream == stream.Code) ?? new StreamValve(stream.Code);
    }

    /// <summary>Whether a stream may go to a place.</summary>
    public bool MayGo(MillStream stream, FlourWish place)
    {
        ArgumentNullException.ThrowIfNull(place);
        var valve = ValveOf(stream);
        return valve.Locked is { } locked ? locked == place.Code : place.Code == Rest.Code || valve.May is null || valve.May.Contains(place.Code);
    }

    /// <summary>Money of an hour for one per cent of the wheat at a price.</summary>
    public decimal PerHour(double yieldPercent, decimal pricePerTonne) => (decimal)(yieldPercent / 100 * RateTonnesPerHour) * pricePerTonne;
}
