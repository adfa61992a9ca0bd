using Evengrist.Quantities;

namespace Evengrist.Intake.Paying;

/// <summary>How an advance is reckoned.</summary>
public abstract record AdvanceRule
{
    /// <summary>What is wrong with the rule and what to do; null where nothing is.</summary>
    public abstract string? Fault { get; }

    /// <summary>The rule in words, kept with the payment.</summary>
    public abstract string Words { get; }
}

/// <summary>A part of what the load is worth as it stands.</summary>
/// <param name="Percent">Above 0 and at most 100.</param>
public sealed record PercentOfPay(decimal Percent) : AdvanceRule
{
    /// <inheritdoc/>
    public override string? Fault => Percent is > 0m and <= 100m ? null : FormattableString.Invariant($"An advance is above 0 and at most 100 per cent of the provisional pay; read {Percent}.");

    /// <inheritdoc/>
    public override string Words => FormattableString.Invariant($"{Percent} % of the provisional pay");
}

/// <summary>A fixed price for each tonne of net, whatever the quality.</summary>
/// <param name="Each">Money for a tonne, above zero.</param>
public sealed record FixedPerTonne(Money Each) : AdvanceRule
{
    /// <inheritdoc/>
    public override string? Fault => Each.Amount is > 0m and <= 1_000_000m ? null : $"An advance by the tonne is above zero; read {Each}.";

    /// <inheritdoc/>
    public override string Words => $"{Each} for each tonne of net";
}
