namespace Evengrist.Bins.Storage;

/// <summary>Grain and the air to be blown through it.</summary>
/// <param name="Constants">The equilibrium constants of the wheat.</param>
/// <param name="GrainCelsius">The grain, °C; −20 to 50.</param>
/// <param name="MoisturePercent">The grain's moisture, per cent, wet basis; 6 to 30.</param>
/// <param name="AirflowPerTonne">Airflow, m³/min for each tonne; above 0, at most 10.</param>
public sealed record AerationSpec(EmcConstants Constants, double GrainCelsius, double MoisturePercent, double AirflowPerTonne)
{
    /// <summary>m³/min for each tonne in one cfm/bu, from 1 ft = 0.3048 m and 1 bu = 60 lb by definition: 1.04047.</summary>
    public const double PerCfmPerBushel = 0.028316846592 / 0.0272155422;

    /// <summary>Depth of grain the air goes through, m; null where the pressure is not asked for. Above 0, at most 60.</summary>
    public double? DepthMetres { get; init; }

    /// <summary>Mass of a cubic metre of grain, kg; 785 by default, 500 to 1000.</summary>
    public double BulkDensity { get; init; } = 785;

    /// <summary>How much harder packed grain is to blow through than loose; 1.3 by default, 1.3 to 1.5 are usual [memory]; 1 to 3.</summary>
    public double PackedFactor { get; init; } = 1.3;

    /// <summary>Hours a day in which the weather lets the fan do its work; above 0, at most 24.</summary>
    public double FanHoursPerDay { get; init; } = 24;

    /// <summary>What is wrong, in a sentence; null where nothing is.</summary>
    public string? Fault() =>
        GrainCelsius is not (>= -20 and <= 50) ? "The grain's temperature lies from −20 to 50 °C."
        : MoisturePercent is not (>= 6 and <= 30) ? "The grain's moisture lies from 6 to 30 %, wet basis."
        : AirflowPerTonne is not (> 0 and <= 10) ? "The airflow lies above 0 and is at most 10 m³/min for each tonne."
        : DepthMetres is { } depth && depth is not (> 0 and <= 60) ? "The depth lies above 0 and is at most 60 m."
        : BulkDensity is not (>= 500 and <= 1000) ? "The bulk density lies from 500 to 1000 kg/m³."
        : PackedFactor is not (>= 1 and <= 3) ? "The packing factor lies from 1 to 3."
        : FanHoursPerDay is not (> 0 and <= 24) ? "The fan hours a day lie above 0 and are at most 24."
        : null;
}

/// <summary>Air outside, for an hour or on the mean.</summary>
/// <param name="Celsius">Dry bulb, °C; −20 to 50.</param>
/// <param name="Humidity">Relative humidity, as a fraction; above 0, below 1.</param>
public sealed record OutsideAir(double Celsius, double Humidity)
{
    /// <summary>What is wrong, in a sentence; null where nothing is.</summary>
    public string? Fault() =>
        Celsius is not (>= -20 and <= 50) ? "The air's temperature lies from −20 to 50 °C."
        : Humidity is not (> 0 and < 1) ? "The air's humidity lies above 0 and below 1, as a fraction."
        : null;
}
