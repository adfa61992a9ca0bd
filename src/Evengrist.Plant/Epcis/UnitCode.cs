using System.Collections.Frozen;

namespace Evengrist.Plant.Epcis;

/// <summary>A unit of UN/ECE Recommendation 20 that the trade meets, by its code.</summary>
/// <param name="Code">Two or three capital letters or digits.</param>
/// <param name="Name">What people call it.</param>
/// <param name="Kilograms">Kilograms in one; null where it is no unit of mass.</param>
/// <param name="CubicMetres">Cubic metres in one; null where it is no unit of volume.</param>
/// <param name="Deleted">Whether the Recommendation has taken it out (status X).</param>
/// <remarks>Source: UN/CEFACT vocabulary rec20, release of August 2024.</remarks>
public sealed record UnitCode(string Code, string Name, decimal? Kilograms = null, decimal? CubicMetres = null, bool Deleted = false)
{
    private static readonly FrozenDictionary<string, UnitCode> ByCode = new UnitCode[]
    {
        new("KGM", "kilogram", 1m), new("GRM", "gram", 0.001m), new("TNE", "tonne", 1000m), new("DTN", "decitonne (quintal)", 100m), new("LBR", "pound", 0.45359237m),
        new("CWA", "hundredweight (US)", 45.3592m), new("CWI", "hundredweight (UK)", 50.80235m), new("STN", "ton (US), short ton", 907.1847m), new("LTN", "ton (UK), long ton", 1016.047m),
        new("HLT", "hectolitre", null, 0.1m), new("BUA", "bushel (US)", null, 0.03523907m), new("BUI", "bushel (UK)", null, 0.03636872m),
        new("C62", "one"), new("H87", "piece"), new("EA", "each"), new("CEL", "degree Celsius"), new("FAH", "degree Fahrenheit"), new("P1", "per cent"), new("59", "part per million"),
        new("SEC", "second [unit of time]"), new("MIN", "minute [unit of time]"), new("HUR", "hour"), new("DAY", "day"), new("E18", "tonne per hour"), new("F30", "kilogram per day"), new("NA", "milligram per kilogram"), new("J33", "microgram per kilogram"),
        new("4H", "micrometre (micron)"), new("MMT", "millimetre"), new("MTR", "metre"), new("MTK", "square metre"), new("H18", "square hectometre"), new("MTS", "metre per second"), new("E90", "reciprocal centimetre"), new("MLT", "millilitre", null, 0.000001m), new("IE", "person"),
        new("KSD", "kilogram of substance 90 % dry"), new("MND", "kilogram, dry weight"), new("BG", "bag", Deleted: true),
    }.ToFrozenDictionary(u => u.Code, StringComparer.Ordinal);

    /// <summary>The unit with the code; null where it is none of these.</summary>
    public static UnitCode? Find(string code) => ByCode.GetValueOrDefault(code);

    /// <summary>A quantity in kilograms, or in words why it is none.</summary>
    /// <param name="quantity">In the unit.</param>
    /// <param name="code">Code of the unit.</param>
    public static (decimal? Kilograms, string Why) ToKilograms(decimal quantity, string code) => Find(code) switch
    {
        { Kilograms: { } factor } => (quantity * factor, ""),
        { CubicMetres: not null } volume => (null, $"{code}, {volume.Name}, is a volume and says nothing of mass. The trade's wheat bushel of 60 lb has no code: state pounds (LBR) or kilograms (KGM)."),
        { } other => (null, $"{code}, {other.Name}, is no unit of mass. State kilograms (KGM), tonnes (TNE) or pounds (LBR)."),
        null => (null, $"\"{Fault.Show(code)}\" is no unit known here. State kilograms (KGM), tonnes (TNE) or pounds (LBR)."),
    };
}
