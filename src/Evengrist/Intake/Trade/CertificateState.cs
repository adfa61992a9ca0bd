namespace Evengrist.Intake.Trade;

/// <summary>How a scale or meter stands on a day.</summary>
public enum CertificateState
{
    /// <summary>No certificate was ever entered.</summary>
    NoneEntered = 0,

    /// <summary>The first one begins later.</summary>
    NotYet = 1,

    /// <summary>One is in force.</summary>
    InForce = 2,

    /// <summary>One is in force and ends within thirty days, with none to follow it.</summary>
    EndsSoon = 3,

    /// <summary>The last one has ended, or there is a gap.</summary>
    Expired = 4,
}
