using Evengrist.Quantities;

namespace Evengrist.Intake.Sampling;

/// <summary>A vehicle to be sampled.</summary>
/// <param name="Pattern">The rule.</param>
/// <param name="Vehicle">What stands on the scale.</param>
/// <param name="Mass">Grain on it, above 0.</param>
/// <param name="DepthMetres">Depth of the grain, m; above 0, at most 6.</param>
public sealed record ProbeSpec(ProbePattern Pattern, VehicleKind Vehicle, Mass Mass, double DepthMetres)
{
    /// <summary>Inner length, m; 1 to 30.</summary>
    public double LengthMetres { get; init; } = 10;

    /// <summary>Inner width, m; 1 to 5.</summary>
    public double WidthMetres { get; init; } = 2.4;

    /// <summary>Hoppers under it, 1 to 6; 1 for a flat bottom.</summary>
    public int Hoppers { get; init; } = 2;

    /// <summary>Where the scatter of points begins, so that two loads are not probed at the same points; any number.</summary>
    public int Seed { get; init; }

    /// <summary>What cannot be, each a sentence; empty where all can.</summary>
    public IReadOnlyList<string> Faults() => [.. new[]
    {
        Vehicle == VehicleKind.None ? "Say which vehicle it is: flat bottom or hopper bottom." : null,
        Mass <= Mass.Zero ? "The grain on the vehicle weighs more than nothing." : null,
        DepthMetres is > 0 and <= 6 ? null : "The grain is between 0 and 6 m deep.",
        LengthMetres is >= 1 and <= 30 ? null : "The vehicle is 1 to 30 m long inside.",
        WidthMetres is >= 1 and <= 5 ? null : "The vehicle is 1 to 5 m wide inside.",
        Hoppers is >= 1 and <= 6 ? null : "A vehicle has 1 to 6 hoppers.",
        Pattern.For.Count > 0 && Vehicle != VehicleKind.None && !Pattern.For.Contains(Vehicle) ? $"The rule \"{Pattern.Name}\" is not for this vehicle: choose another." : null,
    }.OfType<string>()];
}
