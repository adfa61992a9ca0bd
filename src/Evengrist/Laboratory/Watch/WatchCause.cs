namespace Evengrist.Laboratory.Watch;

/// <summary>What may have moved. Each rival but the first has one start and one size.</summary>
public enum WatchCause
{
    /// <summary>Nothing moved.</summary>
    None = 0,

    /// <summary>The instrument moved at once: the instrument alone reads otherwise.</summary>
    Instrument = 1,

    /// <summary>The instrument drifts: it reads a little further off from pair to pair.</summary>
    InstrumentDrift = 2,

    /// <summary>The flour moved, by wheat, mix or mill: reference and instrument read otherwise alike. Where the wheat was read too: the wheat or the mix, which moved by as much.</summary>
    Flour = 3,

    /// <summary>The mill moved the flour: wheat as before. Only where the wheat was read too.</summary>
    Mill = 4,

    /// <summary>The flour and the instrument moved at once, each by its own size.</summary>
    Both = 5,
}
