namespace Evengrist.Milling.Drift;

/// <summary>What can have drifted.</summary>
public enum DriftKind
{
    /// <summary>Not said; never given.</summary>
    None = 0,

    /// <summary>Rolls that nip less and less.</summary>
    Wear = 1,

    /// <summary>Rolls that nip otherwise from one day on, with no gap written down: moved, bent, or no longer parallel.</summary>
    Moved = 2,

    /// <summary>A cloth torn, or its frame leaking.</summary>
    Torn = 3,

    /// <summary>Cloths of a passage that let less through: blinded, or the sifter choked.</summary>
    Choke = 4,

    /// <summary>Wheat wetter than was written down.</summary>
    WetFeed = 5,
}

/// <summary>Something that can have drifted.</summary>
/// <param name="Kind">What it is.</param>
/// <param name="Passage">Code of the passage; that of first break for wet feed.</param>
/// <param name="Outlet">Outlet of a torn cloth, from 0; 0 for the rest.</param>
public sealed record DriftCause(DriftKind Kind, string Passage, int Outlet = 0)
{
    /// <summary>What a person looks at, by hand, before anything is changed.</summary>
    public string ToLookAt => Kind switch
    {
        DriftKind.Wear => "Look at the flutes or the surface, and take the gap at both ends and the middle, the rolls standing and locked out.",
        DriftKind.Moved => "Take the gap at both ends and read it against the flow sheet; look for a lock that slipped, the rolls locked out.",
        DriftKind.Torn => "Look at the cloth and its frame with the sifter stopped and locked out; sieve what fell through it.",
        DriftKind.Choke => "Look for blinded cloths, lost cleaners and full spouts with the sifter stopped and locked out; compare the load with what it was laid out for.",
        _ => "Take the moisture at first break by oven, and compare the temper water with its order.",
    };
}
