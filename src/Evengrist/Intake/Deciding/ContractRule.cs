using Evengrist.Intake.Grading;

namespace Evengrist.Intake.Deciding;

/// <summary>What a load's contract says before it is weighed out: what it does not take, and what it takes money off for.</summary>
internal static class ContractRule
{
    public static IEnumerable<Ruling> Of(LoadToDecide load, ContractTerms terms)
    {
        foreach (var scale in terms.Scales)
        {
            if (load.Find(scale.Factor) is not { Fault: null } found || (scale.Basis.IsStated && !found.Basis.IsStated))
            {
                continue;
            }

            var (value, _) = ScaleLine.Carried(found, scale, terms.Durum);
            var name = Ledger.Readings.Words(scale.Factor);
            switch (scale.Ask(value))
            {
                case ScaleRejects rejects:
                    yield return new(LoadDecisionKind.TurnAway, $"The contract takes no load with {name} beyond {rejects.Limit} {scale.Unit}; this one has {rejects.Recorded}.", $"{terms.Title}, {scale.Title}", SourceMark.House);
                    break;
                case ScaleSilent silent:
                    yield return new(LoadDecisionKind.SetAside, $"The contract's table ends at {name} of {silent.End} {scale.Unit}; this load has {silent.Recorded}: agree a price first.", $"{terms.Title}, {scale.Title}", SourceMark.House);
                    break;
                case ScaleEffectOf { Effect: not 0m } effect when IsLoss(scale.Effect, effect.Effect):
                    yield return new(LoadDecisionKind.Discount, $"{char.ToUpperInvariant(name[0])}{name[1..]} of {effect.Recorded} {scale.Unit} costs {Says(scale, effect.Effect)}.", $"{terms.Title}, {scale.Title}", SourceMark.House);
                    break;
            }
        }
    }

    private static bool IsLoss(ScaleEffect kind, decimal effect) => kind == ScaleEffect.AddsToPrice ? effect < 0m : effect > 0m;

    private static string Says(ContractScale scale, decimal effect) => scale.Effect == ScaleEffect.AddsToPrice
        ? $"{-effect} {scale.Currency} a {scale.Per.ToString().ToLowerInvariant()}"
        : $"{effect} % of the mass";
}
