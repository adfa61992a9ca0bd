using Evengrist.Milling.OnPaper;
using Evengrist.Milling.Solving;
using Evengrist.Quantities;

namespace Evengrist.Plant.Answers;

/// <summary>A figure with its ±, k = 2.</summary>
public sealed record PlusMinus(double Value, double Half)
{
    internal static PlusMinus Of(Estimate estimate, double factor = 1) => new(estimate.Value * factor, 2 * estimate.Uncertainty * factor);
}

/// <summary>A passage of a solved mill: what enters, t/h of dry matter; its release, per cent of its feed; ash, per cent on the answer's basis; moisture, wet basis; work of its rolls.</summary>
public sealed record MillPassageAnswer(string Code, string Kind, PlusMinus DryTonnesPerHour, PlusMinus? ReleasePercent, double AshPercent, double MoisturePercent, double RollKilowatts, IReadOnlyList<MillOutletAnswer> Outlets)
{
    internal static MillPassageAnswer Of(SolvedPassage solved, PassageForecast forecast, Basis basis) => new(
        forecast.Code, $"{solved.Passage.Kind}", PlusMinus.Of(forecast.DryTonnesPerHour), forecast.ReleasePercent is { } r ? PlusMinus.Of(r) : null, MillFlow.OnBasis(solved.In.AshPercentDry, basis), solved.In.MoisturePercent, solved.RollKilowatts,
        [.. solved.Passage.Outlets.Zip(solved.Outlets, (to, flow) => new MillOutletAnswer([.. to.Select(s => s.To)], flow.DryTonnesPerHour, flow.DryTonnesPerHour > 0 ? MillFlow.OnBasis(flow.AshPercentDry, basis) : null))]);
}

/// <summary>What leaves a passage by an outlet: where it goes, t/h of dry matter, ash on the answer's basis.</summary>
public sealed record MillOutletAnswer(IReadOnlyList<string> To, double DryTonnesPerHour, double? AshPercent);

/// <summary>Products of a mill: yield, per cent of the wheat to first break; ash and protein on the answer's basis; of a single product moisture, damaged starch (of dry matter) and falling number, not tuned.</summary>
public sealed record MillProductAnswer(string Name, PlusMinus YieldPercent, PlusMinus AshPercent, PlusMinus ProteinPercent, double? MoisturePercent, double? DamagedStarchPercent, double? FallingNumber)
{
    internal static MillProductAnswer Of(SetForecast set, Basis basis, SolvedProduct? solved) => new(
        set.Name, PlusMinus.Of(set.YieldPercent), PlusMinus.Of(set.AshPercentDry, 1 / basis.ToDry), PlusMinus.Of(set.ProteinPercentDry, 1 / basis.ToDry), solved?.Flow.MoisturePercent, solved?.Flow.DamagedPercentDry, solved?.Flow.FallingNumber);
}

/// <summary>What settings tried would change: passages, products and all flour, money in 24 h in the currency of the prices, work of the rolls in kW and in kWh for a tonne of wheat to first break.</summary>
public sealed record MillChangeAnswer(IReadOnlyList<MillPassageChangeAnswer> Passages, IReadOnlyList<MillProductAnswer> Products, PlusMinus? MoneyPerDay, PlusMinus RollKilowatts, PlusMinus RollKilowattHoursPerTonne);

/// <summary>Change of a passage.</summary>
public sealed record MillPassageChangeAnswer(string Code, PlusMinus DryTonnesPerHour, PlusMinus? ReleasePercent);
