namespace Evengrist.Milling.Learning;

/// <summary>What a survey found of one product of a mill.</summary>
/// <param name="Product">Its code on the flow sheet.</param>
/// <param name="YieldPercent">Share of the wheat to first break, both as they flow, per cent; above 0.</param>
/// <param name="AshPercentDry">Ash, per cent of dry matter; null where it was not read.</param>
/// <param name="ProteinPercentDry">Protein, per cent of dry matter; null where it was not read.</param>
public sealed record StreamReading(string Product, double YieldPercent, double? AshPercentDry = null, double? ProteinPercentDry = null);
