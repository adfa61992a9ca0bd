namespace Evengrist.Records.Laboratory;

/// <summary>How a lot stands: by what was decided of it, and by holds on its packages.</summary>
public enum LotState
{
    /// <summary>Nothing was decided.</summary>
    Waiting,

    /// <summary>On hold by decision, or a hold lies on a package of it.</summary>
    Held,

    /// <summary>Released.</summary>
    Released,

    /// <summary>To be fed back.</summary>
    Rework,

    /// <summary>Released as another flour.</summary>
    Downgraded,
}
