using Evengrist.Quantities;
using NodaTime;

namespace Evengrist.Tracing;

/// <summary>What is to be traced.</summary>
/// <param name="Code">Code of a place: a pallet, a truck's ticket, a field, an additive lot, a bin, a mill unit, a customer.</param>
public sealed record TraceQuestion(string Code)
{
    /// <summary>Only what left the place from this moment on (what reached it, for a customer); null for no lower limit.</summary>
    public Instant? From { get; init; }

    /// <summary>Only what left the place before this moment; null for no upper limit.</summary>
    public Instant? Until { get; init; }

    /// <summary>The moment from which one looks back; null for the newest in the ledger.</summary>
    public Instant? AsOf { get; init; }

    /// <summary>Packages holding less under every hypothesis are counted but not listed; 0 lists every one reached.</summary>
    public Mass Threshold { get; init; } = Mass.Zero;
}
