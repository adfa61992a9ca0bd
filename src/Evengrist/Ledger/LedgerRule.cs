namespace Evengrist.Ledger;

/// <summary>The rules a fact can break; the name says which.</summary>
public enum LedgerRule
{
    /// <summary>A code names no place.</summary>
    UnknownPlace,

    /// <summary>The code is taken by another place.</summary>
    CodeTaken,

    /// <summary>The same source has used the key for a fact with other content.</summary>
    KeyTaken,

    /// <summary>A mass, time, unit, basis or text that cannot be.</summary>
    Malformed,

    /// <summary>Something that has not happened yet.</summary>
    InTheFuture,

    /// <summary>More would leave a place than it held.</summary>
    WouldOverdraw,

    /// <summary>More would lie in a place than it can hold.</summary>
    WouldOverfill,

    /// <summary>Grain cannot go from the one to the other.</summary>
    NotConnected,

    /// <summary>The place is on hold.</summary>
    OnHold,

    /// <summary>The place is shut.</summary>
    Shut,

    /// <summary>The place is under gas.</summary>
    UnderGas,

    /// <summary>A person is in the place.</summary>
    PersonInside,

    /// <summary>Grain goes into or out of the place at the time for which a person or gas is said to be in it.</summary>
    InUse,

    /// <summary>A correction that names no fact of its sort, or one already corrected, or gives no reason.</summary>
    BadCorrection,

    /// <summary>Proven empty was said of a place whose stock is not zero.</summary>
    NotEmpty,

    /// <summary>Somebody else changed it since it was looked at.</summary>
    ChangedMeanwhile,
}
