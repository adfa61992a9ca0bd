using System.Globalization;
using Evengrist.Laboratory.Methods;
using Evengrist.Web.Face;

namespace Evengrist.Web.Sights.Laboratory;

/// <summary>Figures and states of the laboratory in words.</summary>
internal static class LabWords
{
    /// <summary>A limit of precision: <c>0.02, or 2 % of the mean where more</c>; empty where none is filled in.</summary>
    public static string Limit(PrecisionLimit? limit) => limit switch
    {
        { Absolute: { } absolute, PercentOfMean: { } percent } => $"{Number(absolute)}, or {Number(percent)} % of the mean where that is more",
        { Absolute: { } absolute } => Number(absolute),
        { PercentOfMean: { } percent } => $"{Number(percent)} % of the mean",
        _ => "",
    };

    /// <summary>How a state of an instrument is shown.</summary>
    public static StateKind Kind(InstrumentState state) => state switch
    {
        InstrumentState.InCheck => StateKind.Clear,
        InstrumentState.Out => StateKind.Stop,
        _ => StateKind.Watch,
    };

    /// <summary>A number as reported: digits kept.</summary>
    public static string Number(decimal value) => value.ToString(CultureInfo.InvariantCulture);
}
