using Evengrist.Numerics;

namespace Evengrist.Mix.Sheets;

/// <summary>What is known of how a gate gives what it is set to.</summary>
/// <param name="Bin">The bin.</param>
/// <param name="Sheets">Sheets it was looked for in.</param>
public abstract record GateFit(string Bin, int Sheets);

/// <summary>Nothing can be said of the gate.</summary>
/// <param name="Bin">The bin.</param>
/// <param name="Sheets">Sheets there were.</param>
/// <param name="Reason">Why, in a sentence that says what is missing.</param>
public sealed record GateNotFitted(string Bin, int Sheets, string Reason) : GateFit(Bin, Sheets);

/// <summary>A line: weighed = offset + slope · set.</summary>
/// <param name="Bin">The bin.</param>
/// <param name="Sheets">Sheets it rests on.</param>
/// <param name="Line">The line, t/h.</param>
/// <param name="Widening">By how much the line's errors are widened to the scatter that was seen, 1 or more.</param>
/// <param name="Coverage">Standard uncertainties that hold 95 %: Student's t of sheets − 2.</param>
/// <param name="LeastSet">Least setting among the sheets, t/h.</param>
/// <param name="MostSet">Most, t/h.</param>
/// <param name="Drift">The newest sheet against the band of the others; null where the others are too few.</param>
public sealed record GateFitted(string Bin, int Sheets, LineFit Line, double Widening, double Coverage, double LeastSet, double MostSet, GateDrift? Drift) : GateFit(Bin, Sheets)
{
    /// <summary>± of the slope, 95 %.</summary>
    public double SlopeBand => Coverage * Widening * Line.SlopeError;

    /// <summary>± of the offset, 95 %, t/h.</summary>
    public double OffsetBand => Coverage * Widening * Line.OffsetError;

    /// <summary>What to set so that a rate is weighed, t/h; not below 0. An advice.</summary>
    public double SettingFor(double tonnesPerHour) => Math.Max(0, (tonnesPerHour - Line.Offset) / Line.Slope);

    /// <summary>± of that setting from the line alone, 95 %, t/h.</summary>
    public double SettingBand(double tonnesPerHour) => Coverage * Widening * Line.ErrorAt(SettingFor(tonnesPerHour)) / Line.Slope;

    /// <summary>Whether a setting lies outside all that was seen, by more than a twentieth.</summary>
    public bool IsBeyond(double setting) => setting < 0.95 * LeastSet || setting > 1.05 * MostSet;
}

/// <summary>The newest sheet of a gate against what the others lead one to expect.</summary>
/// <param name="Sheet">Code of the newest sheet.</param>
/// <param name="Residual">Weighed less expected, t/h.</param>
/// <param name="Band">± within which a single sheet lies, 95 %, t/h.</param>
public sealed record GateDrift(string Sheet, double Residual, double Band)
{
    /// <summary>Whether it lies outside.</summary>
    public bool IsOut => Math.Abs(Residual) > Band;
}
