namespace Evengrist.Intake;

/// <summary>How far a truck has come between booking and payment, in the order of the way.</summary>
public enum TruckStage
{
    /// <summary>A slot is booked; the truck has not come.</summary>
    Booked,

    /// <summary>It stands at the gate and has a ticket.</summary>
    AtGate,

    /// <summary>Weighed full.</summary>
    Weighed,

    /// <summary>A sample was taken.</summary>
    Probed,

    /// <summary>The sample was read.</summary>
    Graded,

    /// <summary>Sent to a bin.</summary>
    SentTo,

    /// <summary>Set aside: it waits for a further decision.</summary>
    SetAside,

    /// <summary>Turned away: it leaves full.</summary>
    TurnedAway,

    /// <summary>Tipped and weighed empty.</summary>
    Empty,

    /// <summary>Paid for.</summary>
    Settled,

    /// <summary>The ticket was voided.</summary>
    Voided,
}
