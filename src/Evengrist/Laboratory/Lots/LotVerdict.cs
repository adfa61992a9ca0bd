namespace Evengrist.Laboratory.Lots;

/// <summary>What a named person decides of a lot.</summary>
public enum LotVerdict
{
    /// <summary>Nothing; the default value is refused.</summary>
    None = 0,

    /// <summary>It may go.</summary>
    Release = 1,

    /// <summary>Nothing of it may leave.</summary>
    Hold = 2,

    /// <summary>It is to be fed back: its packages stay on hold, each is released as it is emptied.</summary>
    Rework = 3,

    /// <summary>It may go as another flour.</summary>
    Downgrade = 4,
}
