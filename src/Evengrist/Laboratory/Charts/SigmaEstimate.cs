namespace Evengrist.Laboratory.Charts;

/// <summary>How the standard deviation behind a chart was found; it stands beside every limit, since each sees another spread.</summary>
public enum SigmaEstimate
{
    /// <summary>Not said.</summary>
    None = 0,

    /// <summary>Mean moving range of two over 1.128: from one value to the next.</summary>
    MovingRange = 1,

    /// <summary>Mean range of groups over d₂: within groups.</summary>
    GroupRange = 2,

    /// <summary>Mean standard deviation of groups over c₄: within groups.</summary>
    GroupDeviation = 3,

    /// <summary>Standard deviation of all values together: within and between.</summary>
    Overall = 4,
}
