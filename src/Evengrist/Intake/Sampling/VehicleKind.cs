namespace Evengrist.Intake.Sampling;

/// <summary>What stands on the scale, as far as a probe needs it.</summary>
public enum VehicleKind
{
    /// <summary>Nothing; the default value is refused.</summary>
    None = 0,

    /// <summary>A truck or trailer with one flat floor.</summary>
    FlatBottom = 1,

    /// <summary>A truck, trailer or railcar that empties through one hopper or more.</summary>
    HopperBottom = 2,
}
