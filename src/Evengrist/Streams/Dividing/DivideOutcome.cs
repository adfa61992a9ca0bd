namespace Evengrist.Streams.Dividing;

/// <summary>What comes of asking for the best divide.</summary>
public abstract record DivideOutcome;

/// <summary>A divide that keeps every limit, checked.</summary>
/// <param name="Best">The divide.</param>
/// <param name="IsProven">Whether no divide can bring more.</param>
/// <param name="Gap">Share of its value by which a better one may bring more; 0 where it is proven best.</param>
/// <param name="Exit">Why the solver stopped, in a sentence.</param>
/// <param name="Took">Time in the solver.</param>
/// <param name="Now">As it is divided now; null where that was not said of every stream.</param>
/// <param name="Moves">What each stream would bring elsewhere.</param>
public sealed record DivideSolved(Divided Best, bool IsProven, double Gap, string Exit, TimeSpan Took, Divided? Now, IReadOnlyList<StreamMove> Moves) : DivideOutcome;

/// <summary>No divide keeps all limits.</summary>
/// <param name="Clash">Demands that cannot be kept together, in words; leave any one of them out and the rest can.</param>
/// <param name="IsSmallest">Whether none of them can be spared; false where there was no time to see.</param>
public sealed record DivideClash(IReadOnlyList<string> Clash, bool IsSmallest) : DivideOutcome;

/// <summary>The question cannot be put.</summary>
/// <param name="Faults">Every fault, each a sentence.</param>
public sealed record DivideRefused(IReadOnlyList<string> Faults) : DivideOutcome;

/// <summary>The solver gave no answer that holds.</summary>
/// <param name="Reason">Why, in a sentence.</param>
public sealed record DivideNotSolved(string Reason) : DivideOutcome;
