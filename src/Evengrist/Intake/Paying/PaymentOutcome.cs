namespace Evengrist.Intake.Paying;

/// <summary>What comes of paying for a load: a <see cref="ToPay"/>, or the reasons why nothing may be paid.</summary>
public abstract record PaymentOutcome;

/// <summary>A payment to be recorded.</summary>
/// <param name="Payment">Its particulars.</param>
public sealed record ToPay(Payment Payment) : PaymentOutcome;

/// <summary>Nothing may be paid as things stand.</summary>
/// <param name="Reasons">Each a sentence that says what stands in the way and what to do; at least one.</param>
public sealed record NotPaid(IReadOnlyList<string> Reasons) : PaymentOutcome;
