using Evengrist.Intake;
using Evengrist.Intake.Paying;

namespace Evengrist.Plant.Answers.Paying;

/// <summary>A grower's statement in plain values.</summary>
public sealed record StatementAnswer(string Grower, string Name, string From, string Until, string Currency, GroupAnswer All, IReadOnlyList<GroupAnswer> Fields, IReadOnlyList<PaidTicketAnswer> Tickets)
{
    /// <summary>The statement in plain values.</summary>
    public static StatementAnswer Of(Statement statement)
    {
        ArgumentNullException.ThrowIfNull(statement);
        return new(statement.Grower, statement.Name, $"{statement.From:R}", $"{statement.Until:R}", statement.Currency, GroupAnswer.Of(statement.All), [.. statement.Fields.Select(GroupAnswer.Of)],
            [.. statement.All.Accounts.Select(PaidTicketAnswer.Of)]);
    }
}

/// <summary>What was paid for a ticket. Stage: Open, Advanced, Settled, SettledOtherwise, Voided.</summary>
public sealed record PaidTicketAnswer(
    string Ticket, string Day, string Field, string Variety, string Class, decimal NetKg, decimal? SettledKg, decimal? Bushels, string? Price, decimal? Pay, string? Currency,
    decimal? Advances, decimal? Paid, decimal? Left, string Stage, IReadOnlyList<PaymentAnswer> Payments,
    IReadOnlyList<string> WhyNotSettled, IReadOnlyList<string> ChangedSincePaid, IReadOnlyList<string> NotForSettlement, bool ReceiptComplete, IReadOnlyList<string> ReceiptMissing)
{
    /// <summary>The account in plain values.</summary>
    public static PaidTicketAnswer Of(PaymentAccount account)
    {
        ArgumentNullException.ThrowIfNull(account);
        var (load, settled, receipt) = (account.Load, account.Settled, account.Load.Receipt());
        return new(load.Truck.Code, $"{load.Day:R}", load.Source?.Code ?? "", load.Variety, load.Truck.Material, load.Net.Kilograms, settled?.Settled.Kilograms, GroupAnswer.Rounded(settled?.Bushels), settled?.Price.ToString(),
            settled?.Pay.Amount, settled?.Pay.Currency ?? account.Paid?.Currency, account.Advances?.Amount, account.Paid?.Amount, account.Left?.Amount, account.Stage.ToString(),
            [.. load.Payments.Select(p => PaymentAnswer.Of(p.Fact.At, p.Payment))], account.Outcome is NotSettled not ? not.Reasons : [], account.ChangedSince, load.NotForSettlement(), receipt.IsComplete, receipt.Missing);
    }
}

/// <summary>One payment.</summary>
public sealed record PaymentAnswer(string Kind, decimal Amount, string Currency, string Rule, string Under, DateTimeOffset At, string By)
{
    internal static PaymentAnswer Of(NodaTime.Instant at, Payment payment) => new(Payment.Words(payment.Kind), payment.Amount, payment.Currency, payment.Rule, payment.Under, at.ToDateTimeOffset(), payment.By);
}
