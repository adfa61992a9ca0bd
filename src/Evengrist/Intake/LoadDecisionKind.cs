namespace Evengrist.Intake;

/// <summary>What may be decided of a load.</summary>
public enum LoadDecisionKind
{
    /// <summary>Taken as it is.</summary>
    Accept,

    /// <summary>Taken at a discount.</summary>
    Discount,

    /// <summary>Taken, to another bin than its class would have.</summary>
    Divert,

    /// <summary>Not decided yet: it waits.</summary>
    SetAside,

    /// <summary>Not taken.</summary>
    TurnAway,
}
