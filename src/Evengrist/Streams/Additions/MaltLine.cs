using Evengrist.Numerics;

namespace Evengrist.Streams.Additions;

/// <summary>What malt does to a flour's falling number: LN = LN₀ + s·dose, a line on the liquefaction number. Page: docs/model/additions.md.</summary>
/// <param name="Start">LN of the flour without malt.</param>
/// <param name="Slope">LN for one gram of malt in 100 kg of flour.</param>
/// <param name="SlopeUncertainty">One standard uncertainty of the slope: of the readings, or of the scatter that was seen where that is more.</param>
/// <param name="Trials">Trials it was laid through.</param>
public sealed record MaltLine(double Start, double Slope, double SlopeUncertainty, int Trials)
{
    /// <summary>Fewest trials for a line that shows its own scatter [design].</summary>
    public const int Enough = 3;

    private const double Steady = 1e-9;

    /// <summary>Falling number without malt, s.</summary>
    public double StartSeconds => StreamProperty.FallingNumber.FromScale(Start);

    /// <summary>Lays the line through trials.</summary>
    /// <param name="trials">Malt, g in 100 kg, and falling number, s; two or more at different doses.</param>
    /// <param name="shareUncertainty">One standard uncertainty of a falling number, share of itself, above 0.</param>
    /// <returns>The line, or why there is none.</returns>
    public static (MaltLine? Line, IReadOnlyList<string> Faults) Through(IReadOnlyList<MaltTrial> trials, double shareUncertainty)
    {
        ArgumentNullException.ThrowIfNull(trials);
        string[] faults =
        [
            .. trials.Where(t => !(t.GramsPer100Kg is >= 0 and <= 10_000)).Select(t => FormattableString.Invariant($"Malt lies from 0 to 10000 g in 100 kg; got {t.GramsPer100Kg}.")),
            .. trials.Where(t => !(t.FallingNumberSeconds is >= 60 and <= 1000)).Select(t => FormattableString.Invariant($"A falling number lies from 60 to 1000 s; got {t.FallingNumberSeconds}.")),
            .. trials.Select(t => t.GramsPer100Kg).Distinct().Count() < 2 ? ["A line needs trials at two different doses, one of them 0 if you can: bake or test the flour with and without malt."] : Array.Empty<string>(),
            .. shareUncertainty is > 0 and <= 0.5 ? Array.Empty<string>() : [FormattableString.Invariant($"The uncertainty of a falling number lies above 0 and at most at half of it; got {100 * shareUncertainty} %.")],
        ];
        if (faults.Length > 0)
        {
            return (null, faults);
        }

        var what = StreamProperty.FallingNumber;
        var fit = LineFit.Through([.. trials.Select(t => new LinePoint(t.GramsPer100Kg, what.OnScale(t.FallingNumberSeconds), 0, what.SlopeAt(t.FallingNumberSeconds) * shareUncertainty * t.FallingNumberSeconds))]);
        return fit.Slope > Steady && fit.Offset > 0
            ? (new MaltLine(fit.Offset, fit.Slope, fit.SlopeError * Math.Max(1, fit.Scatter), trials.Count), [])
            : (null, ["With more malt the falling number does not fall in these trials: look for two that were mixed up."]);
    }

    /// <summary>The malt for a falling number, g in 100 kg: (LN − LN₀)/s; 0 where the flour has it or less already.</summary>
    /// <param name="seconds">The falling number, s.</param>
    public double DoseFor(double seconds) => Math.Max(0, (StreamProperty.FallingNumber.OnScale(seconds) - Start) / Slope);

    /// <summary>One standard uncertainty of that dose that comes of the slope, g in 100 kg.</summary>
    public double DoseUncertainty(double seconds) => DoseFor(seconds) * SlopeUncertainty / Slope;
}

/// <summary>A flour tested with so much malt in it.</summary>
/// <param name="GramsPer100Kg">Malt, g in 100 kg of flour.</param>
/// <param name="FallingNumberSeconds">Falling number, s.</param>
public sealed record MaltTrial(double GramsPer100Kg, double FallingNumberSeconds);
