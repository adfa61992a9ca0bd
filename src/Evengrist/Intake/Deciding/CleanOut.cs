namespace Evengrist.Intake.Deciding;

/// <summary>How thoroughly a trailer was or must be cleaned; each includes the ones before.</summary>
public enum CleanOut
{
    /// <summary>Not at all.</summary>
    Nothing = 0,

    /// <summary>Swept or blown out until nothing is seen.</summary>
    Swept = 1,

    /// <summary>Washed with water and dried.</summary>
    Washed = 2,

    /// <summary>Washed with detergent or disinfectant, dried, looked into by a named person and signed.</summary>
    WashedAndInspected = 3,

    /// <summary>No cleaning suffices.</summary>
    Never = 4,
}
