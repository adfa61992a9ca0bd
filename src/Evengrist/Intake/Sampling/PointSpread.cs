namespace Evengrist.Intake.Sampling;

/// <summary>How a number of points is spread over the plan of a vehicle. Ours: no diagram of an authority was read.</summary>
public enum PointSpread
{
    /// <summary>No points: cuts are taken from the stream while it runs.</summary>
    Stream = 0,

    /// <summary>In columns along the vehicle, the first near a corner.</summary>
    Columns = 1,

    /// <summary>In each hopper, first at its middle, then off it.</summary>
    Hoppers = 2,

    /// <summary>Scattered evenly by a fixed sequence that another seed starts elsewhere.</summary>
    Scatter = 3,
}
