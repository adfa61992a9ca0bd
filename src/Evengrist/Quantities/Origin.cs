namespace Evengrist.Quantities;

/// <summary>Where a number on a screen comes from.</summary>
public enum Origin
{
    /// <summary>Not said; the default value is refused.</summary>
    None = 0,

    /// <summary>Weighed, measured, counted or agreed: it stands in a record.</summary>
    Seen = 1,

    /// <summary>Worked out from seen numbers by a formula.</summary>
    Reckoned = 2,
}
