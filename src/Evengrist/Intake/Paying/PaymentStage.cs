namespace Evengrist.Intake.Paying;

/// <summary>How far a load is paid for.</summary>
public enum PaymentStage
{
    /// <summary>Nothing was paid.</summary>
    Open = 0,

    /// <summary>An advance was paid.</summary>
    Advanced = 1,

    /// <summary>Paid in full.</summary>
    Settled = 2,

    /// <summary>Paid in full once, and worth something else by now.</summary>
    SettledOtherwise = 3,

    /// <summary>The ticket was voided; what was paid is to be got back.</summary>
    Voided = 4,
}
