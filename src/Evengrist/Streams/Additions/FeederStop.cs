using Evengrist.Ledger;
using Evengrist.Quantities;
using NodaTime;

namespace Evengrist.Streams.Additions;

/// <summary>Flour that left a mixer without what was put into the same flour before or after.</summary>
/// <param name="Mixer">Where the feeder stands.</param>
/// <param name="To">The bin the flour went to.</param>
/// <param name="Additive">What was missing.</param>
/// <param name="From">From when.</param>
/// <param name="Until">Until when.</param>
/// <param name="Flour">The flour that ran meanwhile.</param>
public sealed record FeederStop(Place Mixer, Place To, string Additive, Instant From, Instant Until, Mass Flour)
{
    /// <summary>How fast it ran, t/h.</summary>
    public double TonnesPerHour => (double)Flour.Tonnes / (Until - From).TotalHours;
}
