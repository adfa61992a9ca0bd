using NodaTime;

namespace Evengrist.Packing.Codes;

/// <summary>A line of what is suspect, as typed or scanned.</summary>
/// <param name="Kind">What the line names.</param>
/// <param name="Text">Its text without the word before it and the hours behind it.</param>
/// <param name="Keys">What the text names, where it is a code or scan; null for others.</param>
/// <param name="From">Suspect from this moment on; null for no lower limit.</param>
/// <param name="Until">Suspect before this moment; null for no upper limit.</param>
public sealed record SuspectLine(SuspectKind Kind, string Text, ScannedKeys? Keys = null, Instant? From = null, Instant? Until = null);

/// <summary>What a line of what is suspect names.</summary>
public enum SuspectKind
{
    /// <summary>A code or scan: a package, lot, load, place, or a lot of packaging where the ledger has no such place.</summary>
    Code,

    /// <summary>An instrument in doubt.</summary>
    Instrument,

    /// <summary>A lot of bags, film, labels or cases.</summary>
    Packaging,
}
