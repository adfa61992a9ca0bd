namespace Evengrist.Laboratory.Sampling;

/// <summary>How severely lots are looked at, by how the last ones fared.</summary>
public enum Severity
{
    /// <summary>Where one begins.</summary>
    Normal,

    /// <summary>After 2 of 5 or fewer successive lots were rejected.</summary>
    Tightened,

    /// <summary>After 10 accepted in a row, with steady production and leave of whoever answers for it.</summary>
    Reduced,

    /// <summary>After 5 lots on tightened without return: nothing is accepted until the cause is mended.</summary>
    Stopped,
}
