namespace Evengrist.Bins.States;

/// <summary>How a bin stands. Several can hold at once; the gravest comes first.</summary>
public enum BinState
{
    /// <summary>A person is in it: nothing may go in or out.</summary>
    PersonInside,

    /// <summary>Fumigant is in it: nothing may go in or out.</summary>
    UnderGas,

    /// <summary>On hold: nothing may go in or out until a named person releases it.</summary>
    Held,

    /// <summary>Shut: nothing may go in.</summary>
    Shut,

    /// <summary>Grain is going out.</summary>
    Drawing,

    /// <summary>Grain is coming in.</summary>
    Filling,

    /// <summary>Cleaned out and signed, and nothing has come in since.</summary>
    ProvenEmpty,

    /// <summary>Grain lies in it and has not been touched for some days.</summary>
    Resting,

    /// <summary>None of the others: it may be filled and drawn.</summary>
    Open,
}
