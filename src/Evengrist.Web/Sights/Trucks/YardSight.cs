using Evengrist.Intake;
using Evengrist.Quantities;
using Evengrist.Records.Intake;
using NodaTime;

namespace Evengrist.Web.Sights.Trucks;

/// <summary>The yard at one moment: who stands where, who is expected, how long it takes, what the day has brought.</summary>
public sealed record YardSight
{
    /// <summary>The moment looked at.</summary>
    public required Instant At { get; init; }

    /// <summary>The milling day.</summary>
    public required LocalDate Day { get; init; }

    /// <summary>Trucks in the yard, by state and then by how long they have been in it.</summary>
    public IReadOnlyList<YardTruck> InYard { get; init; } = [];

    /// <summary>Slots of the day whose truck has not come, by time.</summary>
    public IReadOnlyList<Booking> Expected { get; init; } = [];

    /// <summary>The hours of the day in which something was booked or came.</summary>
    public IReadOnlyList<YardHour> Hours { get; init; } = [];

    /// <summary>Trucks that came on the day.</summary>
    public int Came { get; init; }

    /// <summary>Trucks of the day that were weighed empty.</summary>
    public int Emptied { get; init; }

    /// <summary>Trucks of the day that were turned away.</summary>
    public int TurnedAway { get; init; }

    /// <summary>Net of those weighed empty.</summary>
    public Mass Net { get; init; }

    /// <summary>The same by bin, most first.</summary>
    public IReadOnlyList<(string Bin, int Trucks, Mass Net)> ByBin { get; init; } = [];

    /// <summary>Pits with what is sent there now and when the last load was tipped.</summary>
    public IReadOnlyList<(string Pit, IReadOnlyList<YardTruck> Sent, Instant? LastTipped)> Pits { get; init; } = [];

    /// <summary>Services of the day, weighed full to weighed empty, in minutes.</summary>
    public IReadOnlyList<double> Services { get; init; } = [];

    /// <summary>Trucks that are served at once.</summary>
    public int Lanes { get; init; }

    /// <summary>Wait of those that stand at the gate or are booked.</summary>
    public required YardOutcome Forecast { get; init; }

    /// <summary>Wait of a truck that would come at this moment; null where there is no forecast.</summary>
    public YardWait? ComesNow { get; init; }

    /// <summary>The truck that has been here longest; null where the yard is empty.</summary>
    public YardTruck? Longest => InYard.MaxBy(t => t.MinutesInAll);

    /// <summary>Median service in minutes; null where nobody has been through today.</summary>
    public double? Median => Services.Count == 0 ? null : MedianOf([.. Services.Order()]);

    private static double MedianOf(double[] sorted) => (sorted[(sorted.Length - 1) / 2] + sorted[sorted.Length / 2]) / 2;
}
