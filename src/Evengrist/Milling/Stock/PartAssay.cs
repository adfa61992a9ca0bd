namespace Evengrist.Milling.Stock;

/// <summary>What one part of the kernel is.</summary>
/// <param name="Share">Share of the kernel's dry matter; 0 to 1, all parts together 1.</param>
/// <param name="AshPercentDry">Ash, per cent of dry matter.</param>
/// <param name="ProteinPercentDry">Protein, N × 5.7, per cent of dry matter.</param>
/// <param name="Liquefaction">Liquefaction number 6000/(FN − 50) the part would have alone.</param>
public sealed record PartAssay(double Share, double AshPercentDry, double ProteinPercentDry, double Liquefaction);
