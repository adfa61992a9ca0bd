namespace Evengrist.Ledger;

/// <summary>How a place keeps what it gets.</summary>
public enum PlaceRole
{
    /// <summary>Grain comes from it out of the world; its stock is minus what it gave and may not be positive.</summary>
    Source,

    /// <summary>A single load or package: what goes in becomes one parcel.</summary>
    Unit,

    /// <summary>Holds layers; how they leave is a hypothesis.</summary>
    Store,

    /// <summary>First in first out, then a stirred stage of a given mass; known, not a hypothesis.</summary>
    Through,

    /// <summary>Holds next to nothing: what flows in at one moment leaves blended at the same moment.</summary>
    Junction,

    /// <summary>Grain leaves the mill's hands here.</summary>
    Sink,
}
