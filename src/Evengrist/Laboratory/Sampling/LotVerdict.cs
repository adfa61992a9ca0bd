namespace Evengrist.Laboratory.Sampling;

/// <summary>What a sample says of its lot; a named person decides.</summary>
public enum LotVerdict
{
    /// <summary>The lot passes.</summary>
    Accepted,

    /// <summary>The lot passes; the next ones are looked at by the normal plan.</summary>
    AcceptedBackToNormal,

    /// <summary>The lot does not pass.</summary>
    Rejected,
}
