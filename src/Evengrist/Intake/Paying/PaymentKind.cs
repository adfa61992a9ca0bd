namespace Evengrist.Intake.Paying;

/// <summary>What a payment for a load is. The names are stored.</summary>
public enum PaymentKind
{
    /// <summary>Not a payment; the default value is refused.</summary>
    None = 0,

    /// <summary>Paid at delivery, before the quality is final.</summary>
    Advance = 1,

    /// <summary>The rest of the pay once the quality is final.</summary>
    Final = 2,

    /// <summary>What a change after the final settlement adds, or takes back where it is negative.</summary>
    Difference = 3,
}
