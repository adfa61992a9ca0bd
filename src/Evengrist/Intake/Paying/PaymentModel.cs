using Evengrist.Quantities;

namespace Evengrist.Intake.Paying;

/// <summary>Makes payments: an advance, the final settlement, or the difference that came after it; or says why not.</summary>
/// <remarks>Model: docs/model/payments.md.</remarks>
public static class PaymentModel
{
    /// <summary>An advance.</summary>
    /// <param name="account">The load as it stands.</param>
    /// <param name="rule">How it is reckoned.</param>
    /// <param name="by">Who pays it out.</param>
    public static PaymentOutcome Advance(PaymentAccount account, AdvanceRule rule, string by)
    {
        ArgumentNullException.ThrowIfNull(account);
        ArgumentNullException.ThrowIfNull(rule);
        var reasons = Standing(account).Concat(rule.Fault is { } fault ? [fault] : []).ToList();
        if (account.Load.Payments.Count > 0)
        {
            reasons.Add($"{account.Paid} was paid for this ticket already. Settle it finally instead.");
        }

        if (rule is PercentOfPay && account.Settled is null)
        {
            reasons.AddRange(((NotSettled)account.Outcome).Reasons.Prepend("A part of the pay cannot be reckoned yet; an advance by the tonne can be paid."));
        }

        if (rule is FixedPerTonne { Each: var each } && account.Load.Terms?.Base.Money.Currency is { } agreed && agreed != each.Currency)
        {
            reasons.Add($"The contract is in {agreed}, the advance in {each.Currency}: pay it in {agreed}.");
        }

        if (reasons.Count > 0)
        {
            return new NotPaid(reasons);
        }

        var amount = (rule is FixedPerTonne perTonne ? perTonne.Each * account.Load.Net.Tonnes : account.Settled!.Pay * (((PercentOfPay)rule).Percent / 100m)).Rounded();
        return amount.Amount <= 0m ? new NotPaid(["Nothing is left of such an advance when it is rounded: pay more, or none."])
            : account.Settled is { } settled && amount > settled.Pay ? new NotPaid([$"An advance of {amount} is above the provisional pay of {settled.Pay}. Lower it."])
            : new ToPay(Make(account, PaymentKind.Advance, amount, rule.Words, by));
    }

    /// <summary>The final settlement, or the difference where that was made before.</summary>
    /// <param name="account">The load as it stands.</param>
    /// <param name="by">Who pays it out.</param>
    public static PaymentOutcome Settle(PaymentAccount account, string by)
    {
        ArgumentNullException.ThrowIfNull(account);
        var final = account.Load.Payments.Any(p => p.Payment.Kind == PaymentKind.Final);
        var giveBack = account.Stage == PaymentStage.Voided && account.Paid is { Amount: not 0m };
        IReadOnlyList<string> reasons = giveBack ? [] : [.. Standing(account), .. account.Outcome is NotSettled not && account.Load.Voided is null ? not.Reasons : []];
        if (reasons.Count > 0)
        {
            return new NotPaid(reasons);
        }

        if (account.Left is not { } left)
        {
            return new NotPaid(["What the load is worth cannot be said yet."]);
        }

        return final && left.Amount == 0m
            ? new NotPaid([$"It is settled: {account.Paid} was paid and is what the load is worth."])
            : new ToPay(Make(account, final || giveBack ? PaymentKind.Difference : PaymentKind.Final, left, giveBack ? "the ticket was voided: got back" : Words(account, final), by));
    }

    private static string Words(PaymentAccount account, bool final) => final
        ? $"worth {account.Worth} on the readings of now, {account.Paid} was paid"
        : account.Paid is { } paid ? $"pay {account.Worth} less {paid} paid in advance" : $"pay {account.Worth}";

    private static IEnumerable<string> Standing(PaymentAccount account) => account.Load.Voided is { } voided
        ? [$"The ticket was voided: {voided.Words}"]
        : account.Load.NotForSettlement();

    private static Payment Make(PaymentAccount account, PaymentKind kind, Money amount, string rule, string by) => new()
    {
        Kind = kind,
        Amount = amount.Amount,
        Currency = amount.Currency,
        Pay = account.Settled?.Pay.Amount,
        Under = account.Settled?.Under ?? "",
        Rule = rule,
        NetKg = account.Load.Net.Kilograms,
        From = [.. account.Load.PaidBy().Select(FactUsed.Of)],
        By = by,
    };
}
