using NodaTime;

namespace Evengrist.Demo;

/// <summary>What really was so in the demonstration mill. It never enters the program's records: tests alone may look.</summary>
public sealed class Truth
{
    private readonly Dictionary<string, TruckTruth> trucks = [];
    private readonly List<FlourTruth> flours = [];

    /// <summary>By ticket number.</summary>
    public IReadOnlyDictionary<string, TruckTruth> Trucks => trucks;

    /// <summary>The flour each unit made, stretch by stretch, by time.</summary>
    public IReadOnlyList<FlourTruth> Flours => flours;

    internal void Add(string ticket, TruckTruth truck) => trucks.Add(ticket, truck);

    internal void Add(FlourTruth flour) => flours.Add(flour);
}

/// <summary>A truckload as it really was.</summary>
/// <param name="NetKilograms">True net.</param>
/// <param name="Protein">Per cent, 12mb.</param>
/// <param name="Moisture">Per cent.</param>
/// <param name="TestWeight">kg/hL.</param>
/// <param name="FallingNumber">Seconds.</param>
/// <param name="Don">mg/kg.</param>
/// <param name="Dockage">Per cent.</param>
public sealed record TruckTruth(double NetKilograms, double Protein, double Moisture, double TestWeight, double FallingNumber, double Don, double Dockage);

/// <summary>The flour of a stretch of two hours as it really was.</summary>
/// <param name="Unit">A or B.</param>
/// <param name="At">The beginning of the stretch.</param>
/// <param name="Flour">Which flour.</param>
/// <param name="Protein">Per cent, 14mb.</param>
/// <param name="Ash">Per cent, 14mb.</param>
/// <param name="Moisture">Per cent.</param>
public sealed record FlourTruth(char Unit, Instant At, Flour Flour, double Protein, double Ash, double Moisture);
