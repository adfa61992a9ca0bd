namespace Evengrist.Milling.Learning;

/// <summary>What tuning can find.</summary>
public enum TuneKind
{
    /// <summary>Not said; never given.</summary>
    None = 0,

    /// <summary>How hard the rolls of a passage nip, or its beaters strip: wear, parallelism, what the gap gauge does not tell.</summary>
    Nip = 1,

    /// <summary>How readily bran breaks in a passage.</summary>
    Bran = 2,

    /// <summary>Size that passes a cloth: its weave, wear, blinding.</summary>
    Cut = 3,

    /// <summary>Air of a purifier.</summary>
    Air = 4,

    /// <summary>Severity of first break on whole kernels.</summary>
    FirstBreak = 5,

    /// <summary>Ash of a part of the kernel.</summary>
    Ash = 6,

    /// <summary>Protein of a part of the kernel.</summary>
    Protein = 7,

    /// <summary>Tear of a cloth: share of what would stay over it that falls through. Looked for by drift alone; the share itself, no logarithm.</summary>
    Tear = 8,
}

/// <summary>One figure tuning can find, as the logarithm of a factor on what the model has without data.</summary>
/// <param name="Kind">What it is.</param>
/// <param name="Where">Code of the passage, or name of the part of the kernel.</param>
/// <param name="Outlet">Outlet of the passage, from 0, for a cloth; 0 for the rest.</param>
public sealed record TuneKey(TuneKind Kind, string Where, int Outlet = 0);
