using Evengrist.Ledger;
using NodaTime;

namespace Evengrist.Tracing;

/// <summary>A place that what was traced went through, and when the bulk of it did.</summary>
/// <param name="Place">The place.</param>
/// <param name="From">When the first of it was there; under the first hypothesis, amounts under a thousandth of the whole set aside.</param>
/// <param name="Until">When the last of it was there.</param>
/// <param name="Share">The highest share seen there: of the whole when tracing back, of what lay there when tracing forward (of the grain in it when grain is traced); a fraction.</param>
public sealed record Passage(Place Place, Instant From, Instant Until, double Share);
