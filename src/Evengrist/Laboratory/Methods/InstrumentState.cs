namespace Evengrist.Laboratory.Methods;

/// <summary>Whether an instrument may be believed by its checks.</summary>
public enum InstrumentState
{
    /// <summary>No check is laid down for it: nothing is known.</summary>
    Unchecked = 0,

    /// <summary>Its last check of every property passed and is still good.</summary>
    InCheck = 1,

    /// <summary>A check is overdue, or was never made.</summary>
    Overdue = 2,

    /// <summary>Its last check of a property failed.</summary>
    Out = 3,
}
