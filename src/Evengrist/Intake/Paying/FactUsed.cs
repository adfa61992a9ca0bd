using Evengrist.Ledger;
using Evengrist.Quantities;

namespace Evengrist.Intake.Paying;

/// <summary>A reading that a payment was reckoned from, as it stood then.</summary>
/// <param name="Fact">Number of the fact.</param>
/// <param name="What">The property.</param>
/// <param name="Value">The value as reported.</param>
/// <param name="Unit">Its unit.</param>
/// <param name="Basis">Its basis; not stated where it has none.</param>
public sealed record FactUsed(long Fact, Property What, decimal Value, string Unit, Basis Basis)
{
    /// <summary>The reading as it is used.</summary>
    public static FactUsed Of(Reading reading)
    {
        ArgumentNullException.ThrowIfNull(reading);
        return new(reading.Id.Value, reading.What, reading.Value, reading.Unit, reading.Basis);
    }

    /// <summary>Whether another says the same of the same property, whichever fact it is.</summary>
    public bool SaysTheSame(FactUsed? other) => other is not null && What == other.What && Value == other.Value && Unit == other.Unit && Basis == other.Basis;

    /// <summary><c>13.1 % 12mb</c>.</summary>
    public string Said => FormattableString.Invariant($"{Value} {Unit}{(Basis.IsStated ? " " + Basis : "")}");
}
