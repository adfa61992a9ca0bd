using NodaTime;

namespace Evengrist.Ledger;

/// <summary>Who recorded a fact, when, and under which key of which source, so that the same fact sent twice is one fact.</summary>
/// <param name="Recorded">When it was recorded; what it tells may have happened long before.</param>
/// <param name="By">Who recorded it; never empty.</param>
/// <param name="Source">Where it came from: a station, a file, an instrument; never empty.</param>
/// <param name="SourceKey">The source's own key of the fact; unique within the source; never empty.</param>
/// <param name="Corrects">The earlier fact of the same sort that this one stands in for; that one no longer counts.</param>
/// <param name="Note">Why, in the recorder's words; demanded of a correction.</param>
public readonly record struct Attribution(Instant Recorded, string By, string Source, string SourceKey, FactId? Corrects = null, string? Note = null);
