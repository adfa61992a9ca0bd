namespace Evengrist.Quantities.Lists;

/// <summary>The unit of a column, with its code of UN/ECE Recommendation 20 where it has one.</summary>
/// <param name="Symbol">As people write it: <c>kg</c>.</param>
/// <param name="Code">Code of UN/ECE Recommendation 20: <c>KGM</c>; empty where the Recommendation has none for it.</param>
/// <remarks>
/// The codes were read in the annexes of the Recommendation: in a copy of annex I with names and symbols that is in the public domain (edi3, recommendation-20), and in the list of codes and names of the package
/// un-ece-recommendation 0.1.1; a test holds each against the name it has there. What has no code there has none here: g/t, kg/hL, mL/g, °C/week. The symbol is the program's; the Recommendation writes d for days.
/// A bushel is never a unit of mass here: the codes BUA and BUI are volumes, and the trade's wheat bushel of 60 lb has no code (UN/CEFACT vocabulary
/// rec20, August 2024). A count of bushels is a number in <see cref="TradeBushel"/>, without a code.
/// </remarks>
public sealed record ListUnit(string Symbol, string Code = "")
{
    /// <summary>Kilograms.</summary>
    public static ListUnit Kilogram { get; } = new("kg", "KGM");

    /// <summary>Tonnes of 1000 kg.</summary>
    public static ListUnit Tonne { get; } = new("t", "TNE");

    /// <summary>Grams.</summary>
    public static ListUnit Gram { get; } = new("g", "GRM");

    /// <summary>Parts of a hundred.</summary>
    public static ListUnit Percent { get; } = new("%", "P1");

    /// <summary>Degrees Celsius.</summary>
    public static ListUnit Celsius { get; } = new("°C", "CEL");

    /// <summary>Pieces: bags, trucks, packages.</summary>
    public static ListUnit Piece { get; } = new("pieces", "H87");

    /// <summary>Seconds; the falling number.</summary>
    public static ListUnit Second { get; } = new("s", "SEC");

    /// <summary>Minutes.</summary>
    public static ListUnit Minute { get; } = new("min", "MIN");

    /// <summary>Hours.</summary>
    public static ListUnit Hour { get; } = new("h", "HUR");

    /// <summary>Days of 24 h.</summary>
    public static ListUnit Day { get; } = new("days", "DAY");

    /// <summary>The trade's bushel of 60 lb of wheat: a way of counting for payment, no unit of mass with a code.</summary>
    public static ListUnit TradeBushel { get; } = new("bu of 60 lb");

    /// <summary>Tonnes an hour.</summary>
    public static ListUnit TonnesPerHour { get; } = new("t/h", "E18");

    /// <summary>Kilograms a day.</summary>
    public static ListUnit KilogramsPerDay { get; } = new("kg/day", "F30");

    /// <summary>Grams in a tonne, as doses are said. The Recommendation has no code for it; the same number in mg/kg would have <c>NA</c>.</summary>
    public static ListUnit GramsPerTonne { get; } = new("g/t");

    /// <summary>Milligrams in a kilogram.</summary>
    public static ListUnit MilligramsPerKilogram { get; } = new("mg/kg", "NA");

    /// <summary>Micrograms in a kilogram.</summary>
    public static ListUnit MicrogramsPerKilogram { get; } = new("µg/kg", "J33");

    /// <summary>Parts in a million.</summary>
    public static ListUnit PartsPerMillion { get; } = new("ppm", "59");

    /// <summary>Micrometres.</summary>
    public static ListUnit Micrometre { get; } = new("µm", "4H");

    /// <summary>Millimetres.</summary>
    public static ListUnit Millimetre { get; } = new("mm", "MMT");

    /// <summary>Metres.</summary>
    public static ListUnit Metre { get; } = new("m", "MTR");

    /// <summary>Square metres.</summary>
    public static ListUnit SquareMetre { get; } = new("m²", "MTK");

    /// <summary>Hectares: square hectometres. The Recommendation has deprecated the code HAR for H18.</summary>
    public static ListUnit Hectare { get; } = new("ha", "H18");

    /// <summary>Metres a second.</summary>
    public static ListUnit MetresPerSecond { get; } = new("m/s", "MTS");

    /// <summary>One over a centimetre; flutes of a roll along its face.</summary>
    public static ListUnit PerCentimetre { get; } = new("1/cm", "E90");

    /// <summary>Millilitres.</summary>
    public static ListUnit Millilitre { get; } = new("mL", "MLT");

    /// <summary>People.</summary>
    public static ListUnit Person { get; } = new("people", "IE");

    /// <summary>All that have a code.</summary>
    public static IReadOnlyList<ListUnit> Coded { get; } =
    [
        Kilogram, Tonne, Gram, Percent, Celsius, Piece, Second, Minute, Hour, Day, TonnesPerHour, KilogramsPerDay, MilligramsPerKilogram, MicrogramsPerKilogram, PartsPerMillion,
        Micrometre, Millimetre, Metre, SquareMetre, Hectare, MetresPerSecond, PerCentimetre, Millilitre, Person,
    ];

    /// <summary>The unit that is written with a symbol; one without a code where none of these is.</summary>
    /// <param name="symbol">As it was reported with a reading: <c>%</c>, <c>kg/hL</c>, <c>s</c>.</param>
    public static ListUnit Of(string symbol) => Coded.FirstOrDefault(u => u.Symbol == symbol) ?? new ListUnit(symbol);
}
