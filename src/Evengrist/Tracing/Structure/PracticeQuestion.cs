using Evengrist.Quantities;
using NodaTime;

namespace Evengrist.Tracing.Structure;

/// <summary>Whose recall sizes are asked of the ledger.</summary>
/// <param name="From">Trucks that came from this moment on.</param>
/// <param name="Until">Trucks that came before this moment.</param>
/// <param name="AsOf">The moment looked back from: packages filled by then count.</param>
public sealed record PracticeQuestion(Instant From, Instant Until, Instant AsOf)
{
    /// <summary>A package counts for a truck when it holds more of it than this under a hypothesis; 0 counts every contact above a thousand millionth of the truck.</summary>
    public Mass Threshold { get; init; } = Mass.Zero;

    /// <summary>Most trucks that are traced; of more, every so-manieth is, and the answer carries the standard error of that. At least 1.</summary>
    public int MostTraced { get; init; } = 400;
}
