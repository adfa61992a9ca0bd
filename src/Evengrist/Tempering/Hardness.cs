namespace Evengrist.Tempering;

/// <summary>How hard a wheat's kernels are, as a miller groups them for tempering.</summary>
public enum Hardness
{
    /// <summary>Not said; the default value is refused.</summary>
    None = 0,

    /// <summary>Soft: takes little water and a short rest.</summary>
    Soft = 1,

    /// <summary>Between soft and hard.</summary>
    SemiHard = 2,

    /// <summary>Hard: the usual bread wheats.</summary>
    Hard = 3,

    /// <summary>Very hard and durum: the most water, the longest rest, often in two stages.</summary>
    VeryHard = 4,
}
