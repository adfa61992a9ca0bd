using Evengrist.Ledger;

namespace Evengrist.Intake;

/// <summary>The rules a scale keeps as data, so that a look-up cannot go wrong.</summary>
internal static class ScaleCheck
{
    private const decimal MostValue = 1_000_000m;
    private const decimal LeastStep = 0.001m;

    public static IEnumerable<string> Of(ContractScale scale) =>
        Table(scale).Concat(Effects(scale)).Concat(End("below", scale.Below)).Concat(End("above", scale.Above));

    private static IEnumerable<string> Table(ContractScale scale)
    {
        if (string.IsNullOrWhiteSpace(scale.Code) || scale.Version < 1)
        {
            yield return "it needs a code and a version from 1.";
        }

        if (!Readings.UnitsOf(scale.Factor).Contains(scale.Unit))
        {
            yield return $"{scale.Factor.Words()} is not read in \"{scale.Unit}\"; write one of: {string.Join(", ", Readings.UnitsOf(scale.Factor))}.";
        }

        if (scale.Factor.NeedsBasis() != scale.Basis.IsStated)
        {
            yield return scale.Basis.IsStated ? $"{scale.Factor.Words()} has no moisture basis: leave it out." : $"{scale.Factor.Words()} needs a moisture basis: say dry, 12mb, 14mb or another.";
        }

        if (scale.RecordedDecimals is < 0 or > 6)
        {
            yield return $"a factor is recorded at 0 to 6 decimals; got {scale.RecordedDecimals}.";
        }

        if (scale.Steps.Count == 0)
        {
            yield return "it has no steps.";
        }

        foreach (var fault in Order(scale.Steps).Concat(Tiers(scale)))
        {
            yield return fault;
        }

        if (scale.Steps.Count > 0 && scale.End < scale.Table[^1].From)
        {
            yield return FormattableString.Invariant($"the table ends at {scale.End} before its last step begins.");
        }

        if (scale.Until < scale.From)
        {
            yield return FormattableString.Invariant($"it ends on {scale.Until:R} before it begins on {scale.From:R}.");
        }
    }

    private static IEnumerable<string> Order(IReadOnlyList<ScaleStep> steps)
    {
        for (var i = 1; i < steps.Count; i++)
        {
            if (steps[i].From == steps[i - 1].From)
            {
                yield return FormattableString.Invariant($"two steps begin at {steps[i].From}, with {steps[i - 1].Effect} and {steps[i].Effect}: they overlap. Keep one.");
            }
            else if (steps[i].From < steps[i - 1].From)
            {
                yield return FormattableString.Invariant($"the steps are not in rising order: {steps[i].From} follows {steps[i - 1].From}. Put the lower one first.");
            }
        }
    }

    private static IEnumerable<string> Tiers(ContractScale scale)
    {
        var (from, count) = (scale.Steps.Count > 0 ? scale.Steps[^1].From : 0m, scale.Steps.Count);
        foreach (var tier in scale.Tiers ?? [])
        {
            if (tier.StepsFrom(from) is not { } more || (count += more) > ScaleTier.MostSteps)
            {
                yield return FormattableString.Invariant($"a tier goes on from {from} to {tier.Until} in steps of {tier.StepSize}: it needs whole steps of at least {LeastStep} upward, none beyond {MostValue}, and not above {ScaleTier.MostSteps} in all.");
                yield break;
            }

            from = tier.Until;
        }

        if (scale.NotReadCountsAs is { } assumed && Readings.Fault(scale.Factor, assumed, scale.Unit, scale.Basis) is { } fault)
        {
            yield return $"what counts where nothing was read cannot be: {fault}";
        }
    }

    private static IEnumerable<string> Effects(ContractScale scale)
    {
        if (!Enum.IsDefined(scale.Effect) || scale.Effect == ScaleEffect.None || !Enum.IsDefined(scale.Rounding) || scale.Rounding == StepRounding.None)
        {
            yield return "say what a step does (AddsToPrice, MultipliesMass) and how it is rounded (Floor, Nearest, Begun).";
        }

        var adds = scale.Effect == ScaleEffect.AddsToPrice;
        if (adds != (scale.Currency is not null) || adds != (scale.Per is Quantities.PriceUnit.Bushel or Quantities.PriceUnit.Tonne))
        {
            yield return "a scale that adds to the price names a currency and Bushel or Tonne; one that multiplies the mass names neither.";
        }

        if (scale.Cap < scale.Floor)
        {
            yield return FormattableString.Invariant($"its cap of {scale.Cap} lies below its floor of {scale.Floor}.");
        }

        if (scale.Table.Any(s => Math.Abs(s.Effect) > MostValue || Math.Abs(s.From) > MostValue) || Math.Abs(scale.Cap ?? 0m) > MostValue || Math.Abs(scale.Floor ?? 0m) > MostValue)
        {
            yield return FormattableString.Invariant($"no step, effect, cap or floor goes beyond {MostValue}.");
        }

        if (scale.Effect == ScaleEffect.MultipliesMass && scale.Table.Any(s => s.Effect <= -100m))
        {
            yield return "a step takes less than the whole mass: above −100 %.";
        }
    }

    private static IEnumerable<string> End(string where, Beyond beyond)
    {
        if (!Enum.IsDefined(beyond.Rule))
        {
            yield return $"{where}: write NotCovered, Hold or PerStep.";
        }

        if (beyond.Rule == BeyondRule.PerStep && (beyond.StepSize < LeastStep || beyond.StepSize > MostValue || Math.Abs(beyond.PerStep) > MostValue))
        {
            yield return FormattableString.Invariant($"{where}: a step size lies from {LeastStep} to {MostValue} and an effect not beyond {MostValue}.");
        }
    }
}
