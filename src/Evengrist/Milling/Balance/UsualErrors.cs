using Evengrist.Mix.Sheets;
using Evengrist.Tempering;

namespace Evengrist.Milling.Balance;

/// <summary>One standard uncertainty of each weigher and moisture where a mill states none. None is tuned to a mill: a mill puts its own in their place.</summary>
public sealed record UsualErrors
{
    /// <summary>Wheat drawn from the bins, per cent: a belt scale in fair order [memory].</summary>
    public double WheatPercent { get; init; } = 100 * DrawnAgainstSheet.UsualWeigher;

    /// <summary>Screenings, per cent [ours].</summary>
    public double ScreeningsPercent { get; init; } = 2;

    /// <summary>Water, per cent: a meter [ours].</summary>
    public double WaterPercent { get; init; } = TemperWaterSpec.UsualWaterUncertaintyPercent;

    /// <summary>Flour, per cent: a scale on each stream, as for wheat [memory].</summary>
    public double FlourPercent { get; init; } = 100 * DrawnAgainstSheet.UsualWeigher;

    /// <summary>By-products, per cent: bulky and weighed in turns [ours].</summary>
    public double ByProductPercent { get; init; } = 0.5;

    /// <summary>The scale before first break, per cent [memory, as for wheat].</summary>
    public double FirstBreakPercent { get; init; } = 100 * DrawnAgainstSheet.UsualWeigher;

    /// <summary>What the temper bins hold more or less at the end than at the beginning, t [ours].</summary>
    public double TemperRiseTonnes { get; init; } = 0.5;

    /// <summary>A mean moisture, points: the middle of what NIR is usually good for, taken as shared by all its readings [memory].</summary>
    public double MoisturePoints { get; init; } = TemperWaterSpec.UsualMoistureUncertainty;

    /// <summary>Uncertainty of a product's weight by its kind, per cent.</summary>
    public double PercentOf(WeighedKind kind) => kind == WeighedKind.Flour ? FlourPercent : ByProductPercent;
}
