using Evengrist.Quantities;

namespace Evengrist.Intake.Paying;

/// <summary>A load's worth, what was paid for it, and what is left.</summary>
/// <remarks>Nothing that was paid is ever changed: where readings or contract change afterwards, the difference is what is left. Model: docs/model/payments.md.</remarks>
public sealed record PaymentAccount
{
    private PaymentAccount(LoadFacts load, SettlementOutcome outcome) => (Load, Outcome) = (load, outcome);

    /// <summary>The load.</summary>
    public LoadFacts Load { get; }

    /// <summary>What it is worth now, or why it cannot be said.</summary>
    public SettlementOutcome Outcome { get; }

    /// <summary>The settlement as it stands now; null where there is none.</summary>
    public Settlement? Settled => Outcome as Settlement;

    /// <summary>What it is worth now: the pay, nothing for a voided ticket, null where it cannot be settled.</summary>
    public Money? Worth => Settled?.Pay ?? (Load.Voided is not null && Currency is { } currency ? Money.Of(0m, currency) : null);

    /// <summary>What was paid so far; null where nothing was.</summary>
    public Money? Paid => Load.Payments.Count == 0 ? null : Load.Payments.Select(p => p.Payment.Money).Aggregate((a, b) => a + b);

    /// <summary>What was paid in advance; null where nothing was.</summary>
    public Money? Advances => Load.Payments.Where(p => p.Payment.Kind == PaymentKind.Advance).Select(p => (Money?)p.Payment.Money).Aggregate((Money?)null, (a, b) => a is { } sum ? sum + b!.Value : b);

    /// <summary>Worth less paid: to pay, or to get back where it is negative; null where the worth cannot be said.</summary>
    public Money? Left => Worth is { } worth ? Paid is { } paid ? worth - paid : worth : null;

    /// <summary>How far it is paid for.</summary>
    public PaymentStage Stage => Load.Voided is not null ? PaymentStage.Voided
        : Load.Payments.Count == 0 ? PaymentStage.Open
        : Load.Payments.All(p => p.Payment.Kind == PaymentKind.Advance) ? PaymentStage.Advanced
        : Left is { Amount: 0m } ? PaymentStage.Settled
        : PaymentStage.SettledOtherwise;

    /// <summary>What the ticket says now that the last payment was not reckoned from, each a sentence; empty where nothing changed.</summary>
    public IReadOnlyList<string> ChangedSince => Load.Payments.Count == 0 ? [] : [.. Changes(Load.Payments[^1].Payment)];

    private string? Currency => Load.Terms?.Base.Money.Currency ?? (Load.Payments.Count > 0 ? Load.Payments[0].Payment.Currency : null);

    /// <summary>The account of a load.</summary>
    public static PaymentAccount Of(LoadFacts load)
    {
        ArgumentNullException.ThrowIfNull(load);
        return new(load, load.Settle());
    }

    private IEnumerable<string> Changes(Payment last)
    {
        var now = Load.PaidBy().Select(FactUsed.Of).ToList();
        foreach (var fact in now)
        {
            var then = last.From.FirstOrDefault(f => f.What == fact.What);
            if (!fact.SaysTheSame(then))
            {
                yield return $"{Ledger.Readings.Words(fact.What)} is {fact.Said} now and was {then?.Said ?? "not read"} then";
            }
        }

        foreach (var gone in last.From.Where(f => now.All(n => n.What != f.What)))
        {
            yield return $"{Ledger.Readings.Words(gone.What)} was {gone.Said} then and does not count now";
        }

        if (Settled is { } settled && last.Under.Length > 0 && settled.Under != last.Under)
        {
            yield return $"it is settled under {settled.Under} now and was under {last.Under} then";
        }
    }
}
