namespace Evengrist.Laboratory.Conformity;

/// <summary>What of a lot's results is held against the limits.</summary>
public enum ResultRule
{
    /// <summary>Not said; the default value is refused.</summary>
    None = 0,

    /// <summary>Each result by itself: the one least likely inside decides.</summary>
    Single = 1,

    /// <summary>The mean of at least so many results.</summary>
    MeanOf = 2,

    /// <summary>Every part of the lot: the lot's own spread counts beside what is not known of its mean.</summary>
    LotRange = 3,
}
