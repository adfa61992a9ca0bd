namespace Evengrist.Tempering;

/// <summary>What a person did at a temper bin.</summary>
public enum TemperAct
{
    /// <summary>Not said; the default value is refused.</summary>
    None = 0,

    /// <summary>Wheat with its water began to run in.</summary>
    FillingBegun = 1,

    /// <summary>It stopped running in, and the water with it.</summary>
    FillingEnded = 2,

    /// <summary>The water was set, or trimmed, to so many litres an hour.</summary>
    WaterSet = 3,

    /// <summary>Wheat began to run out to the mill.</summary>
    DrawingBegun = 4,

    /// <summary>It stopped running out.</summary>
    DrawingEnded = 5,
}
