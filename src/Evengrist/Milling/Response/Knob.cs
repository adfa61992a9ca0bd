namespace Evengrist.Milling.Response;

/// <summary>What is turned.</summary>
internal enum KnobKind
{
    /// <summary>Not said; never given.</summary>
    None = 0,

    /// <summary>How hard the rolls of a passage nip or its beaters strip; the index is the passage's.</summary>
    Nip = 1,

    /// <summary>How readily bran breaks in a passage; the index is the passage's.</summary>
    Bran = 2,

    /// <summary>Size that passes a cloth; the index is the outlet's.</summary>
    Cut = 3,

    /// <summary>Air of a purifier; the index is the passage's.</summary>
    Air = 4,

    /// <summary>Severity of first break on whole kernels.</summary>
    FirstBreak = 5,

    /// <summary>Flow of wheat.</summary>
    Feed = 6,

    /// <summary>Share of an outlet that goes one way, the others giving way in proportion; the index is the way's.</summary>
    Share = 7,

    /// <summary>Tear of a cloth, turned by an amount: the share of what would stay over it that falls through; the index is the outlet's.</summary>
    Tear = 8,
}

/// <summary>One thing that can be turned; all but a share and a tear by a factor, those by an amount.</summary>
/// <param name="Kind">What it is.</param>
/// <param name="Index">Which one.</param>
internal readonly record struct Knob(KnobKind Kind, int Index);
