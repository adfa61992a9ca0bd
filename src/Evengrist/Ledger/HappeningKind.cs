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

    /// <summary>A truck stands at the gate.</summary>
    Arrived = 7,

    /// <summary>A sample was taken; the particulars hold pattern, cuts, mass, and where the retained part stands.</summary>
    Sampled = 8,

    /// <summary>What was smelt or seen and is no number: an odour, heating, treated seed.</summary>
    Observed = 9,

    /// <summary>What the driver or grower declares: the trailer's last loads, its cleaning.</summary>
    Declared = 10,

    /// <summary>Accepted, discounted, diverted, set aside or turned away, with reasons, by a named person.</summary>
    Decided = 11,

    /// <summary>Paid for: an advance or the final settlement.</summary>
    Settled = 12,

    /// <summary>Fumigant is in the place: nothing may enter or leave until a licensed person clears it.</summary>
    UnderGas = 13,

    /// <summary>Cleared of fumigant, as stated by the licensed person named.</summary>
    GasCleared = 14,

    /// <summary>A person is in the place: nothing may enter or leave.</summary>
    PersonInside = 15,

    /// <summary>Nobody is in the place any more.</summary>
    PersonOut = 16,

    /// <summary>Shut: nothing may enter it.</summary>
    Shut = 17,

    /// <summary>Open again after it was shut.</summary>
    Reopened = 18,

    /// <summary>Air was blown through; the particulars hold how long and how much.</summary>
    Aerated = 19,

    /// <summary>A route or trailer was cleaned out.</summary>
    Swept = 20,

    /// <summary>A ticket was voided; it stays, and says so.</summary>
    Voided = 21,

    /// <summary>What a person did at a temper bin: filling or drawing begun or ended, water set; the particulars hold the rates.</summary>
    Tempered = 22,
}
