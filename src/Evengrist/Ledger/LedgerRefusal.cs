using Evengrist.Quantities;
using NodaTime;

namespace Evengrist.Ledger;

/// <summary>A fact was refused because it breaks a rule of the ledger; nothing of its batch was taken.</summary>
public sealed class LedgerRefusal : Exception
{
    /// <summary>A refusal with the rule that was broken and a sentence that says what was wrong and what to do.</summary>
    /// <param name="rule">The rule.</param>
    /// <param name="message">What was wrong and what to do.</param>
    public LedgerRefusal(LedgerRule rule, string message)
        : base(message) => Rule = rule;

    /// <summary>The rule that was broken.</summary>
    public LedgerRule Rule { get; }

    /// <summary>Code of the place, where there is one.</summary>
    public string? Place { get; init; }

    /// <summary>The moment at which the rule was broken, where there is one.</summary>
    public Instant? At { get; init; }

    /// <summary>By how much, where it is a matter of mass.</summary>
    public Mass? By { get; init; }

    /// <summary>Position in the batch of the draft or fact at fault, from 0; −1 where it is no single one.</summary>
    public int Index { get; init; } = -1;
}
