using Evengrist.Milling.Stock;
using Evengrist.Quantities;

namespace Evengrist.Milling.Solving;

/// <summary>Stock that flows at one point of the mill: its parts, water and damaged starch.</summary>
/// <param name="Parts">Dry matter of each part, t/h, in the order of <see cref="KernelPart"/>.</param>
/// <param name="WaterTonnesPerHour">Water, t/h.</param>
/// <param name="DamagedTonnesPerHour">Starch damaged, t/h of dry matter.</param>
/// <param name="Assays">What each part is.</param>
public sealed record MillFlow(IReadOnlyList<double> Parts, double WaterTonnesPerHour, double DamagedTonnesPerHour, IReadOnlyList<PartAssay> Assays)
{
    /// <summary>Dry matter, t/h.</summary>
    public double DryTonnesPerHour => Parts.Sum();

    /// <summary>As it flows, t/h.</summary>
    public double TonnesPerHour => DryTonnesPerHour + WaterTonnesPerHour;

    /// <summary>Moisture, per cent wet basis; 0 where nothing flows.</summary>
    public double MoisturePercent => TonnesPerHour > 0 ? 100 * WaterTonnesPerHour / TonnesPerHour : 0;

    /// <summary>Ash, per cent of dry matter; NaN where nothing flows.</summary>
    public double AshPercentDry => Mean(a => a.AshPercentDry);

    /// <summary>Protein, per cent of dry matter; NaN where nothing flows.</summary>
    public double ProteinPercentDry => Mean(a => a.ProteinPercentDry);

    /// <summary>Damaged starch, per cent of dry matter; NaN where nothing flows.</summary>
    public double DamagedPercentDry => 100 * DamagedTonnesPerHour / DryTonnesPerHour;

    /// <summary>Falling number, s, from the mean liquefaction number of the parts; NaN where nothing flows.</summary>
    public double FallingNumber => 50 + (6000 / Mean(a => a.Liquefaction));

    /// <summary>Bran with aleurone and germ in it, share of dry matter.</summary>
    public double BranShare => (Parts[(int)KernelPart.Bran] + Parts[(int)KernelPart.Germ]) / DryTonnesPerHour;

    /// <summary>Ash or protein on a basis, per cent.</summary>
    public static double OnBasis(double percentDry, Basis basis) => percentDry / basis.ToDry;

    private double Mean(Func<PartAssay, double> of) => Parts.Zip(Assays, (mass, assay) => mass * of(assay)).Sum() / DryTonnesPerHour;
}
