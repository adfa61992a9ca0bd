namespace Evengrist.Records.Browsing;

/// <summary>The sorts of fact the ledger holds.</summary>
public enum FactSort
{
    /// <summary>A place was opened.</summary>
    Place,

    /// <summary>Two places were connected.</summary>
    Connection,

    /// <summary>Grain was moved.</summary>
    Movement,

    /// <summary>Something was measured.</summary>
    Reading,

    /// <summary>Something happened to a place.</summary>
    Happening,
}
