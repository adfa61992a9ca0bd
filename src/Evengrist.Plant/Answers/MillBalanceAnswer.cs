using Evengrist.Milling.Balance;
using Evengrist.Numerics.Reconciling;
using Evengrist.Plant.Cases;
using Evengrist.Quantities;

namespace Evengrist.Plant.Answers;

/// <summary>A mill's balance over a span. Every ± is k = 2.</summary>
/// <param name="FirstBreakTonnes">Wheat to first break by balance.</param>
/// <param name="Extractions">Flour for a hundred of each basis.</param>
/// <param name="BushelsPerHundredweight">On wheat before cleaning; null without flour.</param>
/// <param name="UnexplainedTonnes">Evaporation + unweighed.</param>
/// <param name="UnexplainedPlusMinus">Its ± from the weighers.</param>
/// <param name="UnexplainedPercent">Of wheat before cleaning and water.</param>
/// <param name="IsUsual">Whether that lies in the band of <paramref name="UsualBand"/>.</param>
/// <param name="UsualBand">The band and where it comes from.</param>
/// <param name="Losses">Where it lies; they add up to it.</param>
/// <param name="DryClosurePercent">Dry matter weighed out of a hundred in; null where a moisture was not read.</param>
/// <param name="KilowattHoursPerTonneFlour">Null where electricity was not given.</param>
/// <param name="KilowattHoursPerTonneWheat">The same, of wheat before cleaning.</param>
/// <param name="Check">Whether the measurements go together.</param>
/// <param name="Remarks">What must be said with it.</param>
public sealed record MillBalanceAnswer(
    double FirstBreakTonnes, IReadOnlyList<ExtractionAnswer> Extractions, double? BushelsPerHundredweight, double UnexplainedTonnes, double UnexplainedPlusMinus, double UnexplainedPercent, bool IsUsual, string UsualBand,
    IReadOnlyList<LossAnswer> Losses, double? DryClosurePercent, double? KilowattHoursPerTonneFlour, double? KilowattHoursPerTonneWheat, CheckAnswer? Check, IReadOnlyList<string> Remarks)
{
    /// <summary>Answers a case, or says why there is no balance.</summary>
    public static Reply<MillBalanceAnswer> To(BalanceCase posed)
    {
        ArgumentNullException.ThrowIfNull(posed);
        return BalanceModel.Of(posed.ToSpec()) switch
        {
            MillBalance balance => new(Of(balance), []),
            NoMillBalance none => new(null, none.Reasons),
            var other => throw new InvalidOperationException($"A balance ended as {other.GetType().Name}."),
        };
    }

    private static MillBalanceAnswer Of(MillBalance balance)
    {
        var onDirty = balance.Extractions.Single(e => e.Basis == ExtractionBasis.DirtyWheat).Percent;
        return new MillBalanceAnswer(
            balance.Spec.FirstBreakTonnes, [.. balance.Extractions.Select((e, i) => ExtractionAnswer.Of(e, balance.ReconciledExtractions.Count > 0 ? balance.ReconciledExtractions[i] : null))],
            onDirty > 0 ? (double)FlourYield.BushelsPerHundredweight((decimal)onDirty) : null, balance.Unexplained.Tonnes, 2 * balance.Unexplained.StandardUncertainty, balance.UnexplainedPercent, balance.IsUsual,
            FormattableString.Invariant($"{MillBalance.LeastUnexplainedPercent} to {MillBalance.MostUnexplainedPercent} % of wheat and water, from memory"),
            [.. balance.Losses.Select(l => new LossAnswer(l.Name, l.Kind.ToString(), l.Tonnes, 2 * l.StandardUncertainty))], balance.DryClosure?.Percent,
            balance.Energy?.PerTonneFlour, balance.Energy?.PerTonneWheat, CheckAnswer.Of(balance.Check, BalanceModel.Level), balance.Remarks);
    }
}

/// <summary>Flour for a hundred of a basis.</summary>
public sealed record ExtractionAnswer(string Basis, double Percent, double PlusMinus, double? ReconciledPercent, double? ReconciledPlusMinus)
{
    internal static ExtractionAnswer Of(Extraction weighed, Extraction? reconciled) =>
        new(Extraction.Words(weighed.Basis), weighed.Percent, 2 * weighed.StandardUncertainty, reconciled?.Percent, 2 * reconciled?.StandardUncertainty);
}

/// <summary>A part of what is unexplained, t.</summary>
public sealed record LossAnswer(string Name, string Kind, double Tonnes, double PlusMinus);

/// <summary>Measurements against one another.</summary>
/// <param name="Squares">J; 0 where nothing is checked.</param>
/// <param name="Freedom">How many checks there are.</param>
/// <param name="Critical">J beyond which errors of the stated size are not believed; null where nothing is checked.</param>
/// <param name="Suspects">Measurements that do not fit, the worst first.</param>
/// <param name="Values">Each measured and reconciled: t, or a share of 1.</param>
public sealed record CheckAnswer(double Squares, int Freedom, double? Critical, IReadOnlyList<SuspectAnswer> Suspects, IReadOnlyList<ReconciledValueAnswer> Values)
{
    internal static CheckAnswer? Of(GrossErrorOutcome check, double level) => check.First is not Balanced first ? null : new CheckAnswer(
        first.Squares, first.Freedom, (first as Reconciled)?.Critical(level),
        [.. ((check as GrossErrorsNamed)?.Suspects ?? []).Select(s => new SuspectAnswer(s.Name, s.Z, s.Alike, s.Bias, 2 * s.BiasUncertainty))],
        [.. first.Values.Select(ReconciledValueAnswer.Of)]);
}

/// <summary>A measurement that does not fit, and others that would explain it as well.</summary>
public sealed record SuspectAnswer(string Name, double Z, IReadOnlyList<string> Alike, double? Bias, double? BiasPlusMinus);

/// <summary>A value measured and reconciled.</summary>
public sealed record ReconciledValueAnswer(string Name, double? Measured, double? Reconciled, double? PlusMinus, double? Z, string Standing)
{
    internal static ReconciledValueAnswer Of(Adjusted v) =>
        new(v.Unknown.Name, v.Unknown.IsMeasured ? v.Unknown.Value : null, v.StandardUncertainty is null ? null : v.Value, 2 * v.StandardUncertainty, v.Z, v.Standing.ToString());
}
