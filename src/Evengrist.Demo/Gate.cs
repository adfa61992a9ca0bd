using NodaTime;

namespace Evengrist.Demo;

/// <summary>A gate on a mix sheet: a bin and its share of the wheat.</summary>
internal readonly record struct Gate(string Bin, double Share);

/// <summary>The mix sheets of the weeks before 15 September, when the old crop runs out and the new one comes in.</summary>
internal static class EarlyMixes
{
    private static readonly LocalDate SecondWeek = new(2025, 7, 14), ThirdWeek = new(2025, 7, 21), FourthWeek = new(2025, 7, 28), SixthWeek = new(2025, 8, 11), SeventhWeek = new(2025, 8, 18);

    /// <summary>From here on the hold bins carry strong wheat that was bought.</summary>
    public static LocalDate EighthWeek { get; } = new(2025, 8, 25);

    public static IReadOnlyList<Gate> For(Flour flour, LocalDate day) => flour switch
    {
        Flour.WB when day < SecondWeek => [new("B03", 0.55), new("B06", 0.45)],
        Flour.WB when day < FourthWeek => [new("B02", 0.35), new("B06", 0.25), new("B17", 0.20), new("B19", 0.20)],
        Flour.WB when day < SixthWeek => [new("B05", 0.40), new("B06", 0.30), new("B07", 0.30)],
        Flour.WB when day < EighthWeek => [new("B06", 0.25), new("B05", 0.25), new("B19", 0.25), new("B18", 0.25)],
        Flour.WB => [new("B06", 0.25), new("B17", 0.25), new("B19", 0.25), new("B07", 0.25)],
        Flour.AP when day < SecondWeek => [new("B03", 0.80), new("B01", 0.20)],
        Flour.AP when day < ThirdWeek => [new("B01", 0.70), new("B04", 0.30)],
        Flour.AP when day < FourthWeek => [new("B01", 0.60), new("B04", 0.30), new("B09", 0.10)],
        Flour.AP when day < SeventhWeek => [new("B02", 0.25), new("B07", 0.30), new("B04", 0.35), new("B08", 0.10)],
        Flour.AP => [new("B02", 0.20), new("B07", 0.30), new("B03", 0.40), new("B08", 0.10)],
        Flour.HG when day < FourthWeek => [new("B10", 1)],
        Flour.HG when day < SeventhWeek => [new("B10", 0.70), new("B05", 0.30)],
        Flour.HG => [new("B11", 0.35), new("B12", 0.35), new("B05", 0.30)],
        Flour.PA when day < ThirdWeek => [new("B09", 0.50), new("B08", 0.50)],
        Flour.PA => [new("B08", 0.80), new("B09", 0.20)],
        _ => [new("B13", 1)],
    };
}
