using Evengrist.Ledger;

namespace Evengrist.Records.Browsing;

/// <summary>One page of facts, newest first.</summary>
/// <param name="Lines">The facts.</param>
/// <param name="Next">What to ask for as <see cref="FactFilter.Before"/> to get the page after; null on the last.</param>
public sealed record FactPage(IReadOnlyList<FactLine> Lines, FactId? Next);
