namespace Evengrist.Quantities.Lists;

/// <summary>The unit of a column, with its code of UN/ECE Recommendation 20 where it has one.</summary>
/// <param name="Symbol">As people write it: <c>kg</c>.</param>
/// <param name="Code">Code of UN/ECE Recommendation 20: <c>KGM</c>; empty where the Recommendation has none for it.</param>
/// <remarks>
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

    /// <summary>Seconds; the falling number. No code is given.</summary>
    public static ListUnit Second { get; } = new("s");

    /// <summary>Hours. No code is given.</summary>
    public static ListUnit Hour { get; } = new("h");

    /// <summary>The trade's bushel of 60 lb of wheat: a way of counting for payment, no unit of mass with a code.</summary>
    public static ListUnit TradeBushel { get; } = new("bu of 60 lb");

    /// <summary>Tonnes an hour. No code is given.</summary>
    public static ListUnit TonnesPerHour { get; } = new("t/h");

    /// <summary>All that have a code.</summary>
    public static IReadOnlyList<ListUnit> Coded { get; } = [Kilogram, Tonne, Gram, Percent, Celsius, Piece];

    /// <summary>The unit that is written with a symbol; one without a code where none of these is.</summary>
    /// <param name="symbol">As it was reported with a reading: <c>%</c>, <c>kg/hL</c>, <c>s</c>.</param>
    public static ListUnit Of(string symbol) => Coded.FirstOrDefault(u => u.Symbol == symbol) ?? new ListUnit(symbol);
}
