namespace Evengrist.Ledger;

/// <summary>What happened to a place without grain being moved. The numbers are stored; a kind keeps its number for ever.</summary>
public enum HappeningKind
{
    /// <summary>Nothing; the default value is refused.</summary>
    None = 0,

    /// <summary>Proven empty: cleaned out and signed. Cuts the chain of origin.</summary>
    ProvenEmpty = 1,

    /// <summary>Put on hold: nothing may leave it.</summary>
    Held = 2,

    /// <summary>Released from hold by a named person.</summary>
    Released = 3,

    /// <summary>A state in words: open, filling, shut, under gas, person inside.</summary>
    State = 4,

    /// <summary>A note for the people who come after, and for Today.</summary>
    Note = 5,

    /// <summary>The contract and version under which a truck is settled; the text names it.</summary>
    Contract = 6,
}
