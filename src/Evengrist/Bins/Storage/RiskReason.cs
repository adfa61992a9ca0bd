namespace Evengrist.Bins.Storage;

/// <summary>How pressing a reason is.</summary>
public enum RiskLevel
{
    /// <summary>These rules found nothing. That is no proof of anything.</summary>
    Nothing = 0,

    /// <summary>To be known.</summary>
    Note = 1,

    /// <summary>Somebody is to look.</summary>
    Look = 2,

    /// <summary>Somebody is to decide what to do.</summary>
    Act = 3,
}

/// <summary>What a reason is about; of two equally pressing ones the one with the lower number comes first.</summary>
public enum RiskKind
{
    /// <summary>Not said; the default value is refused.</summary>
    None = 0,

    /// <summary>A point of a cable warms, or stands out.</summary>
    Heating = 1,

    /// <summary>Live insects were found.</summary>
    Insects = 2,

    /// <summary>CO₂ in the bin's air rises.</summary>
    CarbonDioxide = 3,

    /// <summary>The time that the grain keeps is running out.</summary>
    Life = 4,

    /// <summary>The air between the kernels is moist.</summary>
    MoistAir = 5,

    /// <summary>No temperature was read for long.</summary>
    NotRead = 6,

    /// <summary>Moist for a warm region.</summary>
    Moist = 7,

    /// <summary>Insects can develop at the temperature.</summary>
    InsectWarmth = 8,

    /// <summary>The moisture is not known, or no constants are.</summary>
    NotKnown = 9,
}

/// <summary>One reason to look at a bin.</summary>
/// <param name="Level">How pressing.</param>
/// <param name="Kind">About what.</param>
/// <param name="Words">In words, with its figures.</param>
/// <param name="Source">The rule it rests on, and what is known of that.</param>
public sealed record RiskReason(RiskLevel Level, RiskKind Kind, string Words, string Source);
