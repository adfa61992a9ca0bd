namespace Evengrist.Laboratory.Watch;

/// <summary>What the pairs say.</summary>
public enum WatchVerdict
{
    /// <summary>Not sure yet: no answer is likely enough, or a shift worth finding would not have been seen.</summary>
    None = 0,

    /// <summary>Nothing moved.</summary>
    NothingMoved = 1,

    /// <summary>The instrument.</summary>
    Instrument = 2,

    /// <summary>The flour: wheat, mix or mill; the wheat or the mix where the wheat was read too.</summary>
    Flour = 3,

    /// <summary>The mill.</summary>
    Mill = 4,

    /// <summary>The flour and the instrument.</summary>
    Both = 5,
}
