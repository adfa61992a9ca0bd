namespace Evengrist.Bins.BestBin;

/// <summary>How a load stands to the band of a bin; the best first.</summary>
public enum BandStanding
{
    /// <summary>It belongs there: the chance is at least a half.</summary>
    Belongs,

    /// <summary>The bin has no band.</summary>
    NoBand,

    /// <summary>It does not belong there.</summary>
    Stranger,
}
