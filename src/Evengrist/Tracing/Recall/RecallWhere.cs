using Evengrist.Ledger;
using Evengrist.Tracing.Bounds;

namespace Evengrist.Tracing.Recall;

/// <summary>How much of the suspect is in one place or class of places.</summary>
/// <param name="Words">Where, in the words of <see cref="Whereabouts"/>.</param>
/// <param name="Place">The one place; null for a sum over packages.</param>
/// <param name="Grams">Under each hypothesis.</param>
/// <param name="Bound">Under any outflow.</param>
public sealed record RecallWhere(string Words, Place? Place, Spread Grams, Bound Bound);
