namespace Evengrist.Tempering;

/// <summary>The air the mill works in, which decides how much water stock loses on its way.</summary>
public enum TemperSeason
{
    /// <summary>Not said; the default value is refused.</summary>
    None = 0,

    /// <summary>Dry air, as in a cold winter or a dry summer: much evaporates.</summary>
    Dry = 1,

    /// <summary>Neither.</summary>
    Mild = 2,

    /// <summary>Damp air: little evaporates.</summary>
    Damp = 3,
}
