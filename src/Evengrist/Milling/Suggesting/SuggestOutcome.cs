namespace Evengrist.Milling.Suggesting;

/// <summary>What became of a question for moves.</summary>
public abstract record SuggestOutcome;

/// <summary>The question cannot be asked so.</summary>
/// <param name="Reasons">What is wrong, each a sentence that says what to do.</param>
public sealed record SuggestRefused(IReadOnlyList<string> Reasons) : SuggestOutcome;

/// <summary>Sets of moves, the best first.</summary>
/// <param name="Sets">The sets; empty where no move changes the wished figure the right way within the bounds.</param>
/// <param name="Met">Whether the first does all that was asked; where not, it is the nearest found.</param>
/// <param name="Looked">How many single moves were allowed.</param>
/// <param name="Words">How it ended, in a sentence.</param>
public sealed record Suggested(IReadOnlyList<SuggestedSet> Sets, bool Met, int Looked, string Words) : SuggestOutcome;
