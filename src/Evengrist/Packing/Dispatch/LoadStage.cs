namespace Evengrist.Packing.Dispatch;

/// <summary>How far a load has come.</summary>
public enum LoadStage
{
    /// <summary>Nobody has looked at the trailer yet.</summary>
    Planned,

    /// <summary>The trailer is being looked at.</summary>
    AtTheRamp,

    /// <summary>Something stands on it.</summary>
    Loading,

    /// <summary>It is sealed and has not left.</summary>
    Sealed,

    /// <summary>It has left.</summary>
    Departed,

    /// <summary>The trailer was turned away.</summary>
    TurnedAway,
}
