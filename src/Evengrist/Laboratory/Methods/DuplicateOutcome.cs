namespace Evengrist.Laboratory.Methods;

/// <summary>What repeated results of one test come to.</summary>
/// <param name="Words">In a sentence.</param>
public abstract record DuplicateOutcome(string Words);

/// <summary>One value alone: nothing to judge.</summary>
/// <param name="Value">The value.</param>
/// <param name="Words">In a sentence.</param>
public sealed record SingleResult(decimal Value, string Words) : DuplicateOutcome(Words);

/// <summary>The results agree: their mean is the result.</summary>
/// <param name="Mean">The mean, not rounded.</param>
/// <param name="Range">Largest less smallest.</param>
/// <param name="Limit">What the range may be.</param>
/// <param name="Words">In a sentence.</param>
public sealed record ResultsAgree(decimal Mean, decimal Range, decimal Limit, string Words) : DuplicateOutcome(Words);

/// <summary>They differ by more than they may: more have to be made, and no result stands till then.</summary>
/// <param name="More">How many.</param>
/// <param name="Range">Largest less smallest.</param>
/// <param name="Limit">What the range may be.</param>
/// <param name="Words">In a sentence.</param>
public sealed record MoreNeeded(int More, decimal Range, decimal Limit, string Words) : DuplicateOutcome(Words);

/// <summary>Four still differ by more than they may: the median is the result, and the cause is to be found.</summary>
/// <param name="Median">The median, not rounded.</param>
/// <param name="Range">Largest less smallest.</param>
/// <param name="Limit">What the range may be.</param>
/// <param name="Words">In a sentence.</param>
public sealed record MedianTaken(decimal Median, decimal Range, decimal Limit, string Words) : DuplicateOutcome(Words);

/// <summary>Not judged: no limit is filled in, or more than four were made.</summary>
/// <param name="Mean">The mean, not rounded.</param>
/// <param name="Range">Largest less smallest.</param>
/// <param name="Words">Why, in a sentence.</param>
public sealed record NotJudged(decimal Mean, decimal Range, string Words) : DuplicateOutcome(Words);
