using Evengrist.Quantities;

namespace Evengrist.Streams;

/// <summary>The scale on which a property averages by mass: itself, or the liquefaction number 6000/(FN − 50) for a falling number. Page: docs/model/streams.md.</summary>
public static class StreamScale
{
    /// <summary>What can be read, in the order it is shown.</summary>
    public static IReadOnlyList<StreamProperty> All { get; } = [StreamProperty.Ash, StreamProperty.Protein, StreamProperty.FallingNumber, StreamProperty.StarchDamage];

    /// <summary>As a sentence names it.</summary>
    public static string Words(this StreamProperty what) => what switch
    {
        StreamProperty.Ash => "ash",
        StreamProperty.Protein => "protein",
        StreamProperty.FallingNumber => "falling number",
        StreamProperty.StarchDamage => "starch damage",
        _ => throw new ArgumentOutOfRangeException(nameof(what), what, "No such property of a stream."),
    };

    /// <summary>Its unit: s or %.</summary>
    public static string Unit(this StreamProperty what) => what == StreamProperty.FallingNumber ? "s" : "%";

    /// <summary>Decimals it is shown with.</summary>
    public static int Decimals(this StreamProperty what) => what switch { StreamProperty.Ash => 3, StreamProperty.FallingNumber => 0, StreamProperty.Protein => 2, _ => 1 };

    /// <summary>Least and most a limit or reading of it can be.</summary>
    public static (double Least, double Most) Range(this StreamProperty what) => what switch
    {
        StreamProperty.Ash => (0, 10),
        StreamProperty.FallingNumber => (60, 1000),
        StreamProperty.Protein => (0, 40),
        _ => (0, 100),
    };

    /// <summary>The reading on a stream; null where there is none.</summary>
    public static double? Read(this StreamProperty what, MillStream stream)
    {
        ArgumentNullException.ThrowIfNull(stream);
        return what switch
        {
            StreamProperty.Ash => stream.AshPercent,
            StreamProperty.Protein => stream.ProteinPercent,
            StreamProperty.FallingNumber => stream.FallingNumberSeconds,
            StreamProperty.StarchDamage => stream.StarchDamagePercent,
            _ => null,
        };
    }

    /// <summary>A value on the scale that averages.</summary>
    public static double OnScale(this StreamProperty what, double value) => what == StreamProperty.FallingNumber ? FallingNumber.FromSeconds((decimal)value).Liquefaction.Value : value;

    /// <summary>A value back from the scale.</summary>
    public static double FromScale(this StreamProperty what, double scaled) => what == StreamProperty.FallingNumber ? 50 + (6000 / scaled) : scaled;

    /// <summary>How much a step of the value is on the scale, without its sign.</summary>
    public static double SlopeAt(this StreamProperty what, double value) => what == StreamProperty.FallingNumber ? 6000 / ((value - 50) * (value - 50)) : 1;

    /// <summary>Whether more of the value is less on the scale.</summary>
    public static bool Falls(this StreamProperty what) => what == StreamProperty.FallingNumber;

    /// <summary>Standard uncertainty of a reading, in its own unit.</summary>
    public static double Uncertainty(this StreamProperty what, double value, StreamMethods methods)
    {
        ArgumentNullException.ThrowIfNull(methods);
        return what switch
        {
            StreamProperty.Ash => methods.Ash,
            StreamProperty.Protein => methods.Protein,
            StreamProperty.FallingNumber => methods.FallingNumberShare * value,
            _ => methods.StarchDamage,
        };
    }
}
