namespace Evengrist.Bins.Storage;

/// <summary>What a temperature means to beetles and moths of stored grain.</summary>
/// <remarks>
/// Bands: J. Stored Prod. Res. 28(2):89-118 (1992), read in an abstract whose copy prints the optimum as 25 to 35 °C although its next band begins at 33;
/// 25 to 33 is taken. Steps above 35 °C: an extension bulletin of 2021. The targets of 15 and 20 °C are from memory. Model: docs/model/safe-storage.md.
/// </remarks>
/// <param name="Name">The band in short.</param>
/// <param name="LeastCelsius">From, °C; included.</param>
/// <param name="MostCelsius">Up to, °C; not included.</param>
/// <param name="Words">What it means.</param>
/// <param name="Develops">Whether insects can complete their development in it.</param>
/// <param name="Source">Where the band comes from.</param>
public sealed record InsectBand(string Name, double LeastCelsius, double MostCelsius, string Words, bool Develops, string Source)
{
    private const string Paper = "J. Stored Prod. Res. 28(2):89-118, 1992, abstract";
    private const string Bulletin = "extension bulletin of 2021 on heat and stored-grain insects";

    /// <summary>All bands, cold to hot.</summary>
    public static IReadOnlyList<InsectBand> All { get; } =
    [
        new("frozen", double.NegativeInfinity, -20, "insects die within minutes at −20 °C", false, Paper),
        new("cold", -20, 13, "insects do not develop and die out in time", false, Paper),
        new("cool", 13, 25, "insects can complete their development, slowly; below 20 °C they are slowed and below 15 °C most stop breeding (targets from memory)", true, Paper),
        new("best for insects", 25, 33, "insects multiply fastest", true, Paper + "; its copy prints 25 to 35 °C, 25 to 33 is taken"),
        new("warm", 33, 35, "insects can still complete their development", true, Paper),
        new("hot", 35, 45, "insect populations die out in time", false, Paper + "; " + Bulletin),
        new("very hot", 45, 50, "insects die within a day", false, Bulletin),
        new("killing", 50, 62, "insects die within an hour", false, Bulletin),
        new("killing at once", 62, double.PositiveInfinity, "insects die within a minute", false, Bulletin),
    ];

    /// <summary>The band of a temperature, °C.</summary>
    /// <exception cref="ArgumentOutOfRangeException">It is not a number.</exception>
    public static InsectBand Of(double celsius) => double.IsNaN(celsius)
        ? throw new ArgumentOutOfRangeException(nameof(celsius), celsius, "A temperature is a number.")
        : All.First(b => celsius < b.MostCelsius || double.IsPositiveInfinity(b.MostCelsius));
}
