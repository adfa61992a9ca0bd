namespace Evengrist.Demo;

/// <summary>The nineteen wheat bins, and how the stock planned for 15 September comes about.</summary>
internal sealed class BinPlan
{
    /// <summary>The layer under the suspect ticket in B14, the ticket itself, and what lies above; kilograms.</summary>
    public const int BelowSuspect = 412_000, Suspect = 26_340, AboveSuspect = 300_000;

    public const string SuspectTicket = "25-0709-061";

    public IReadOnlyList<WheatBin> Bins { get; } =
    [
        new("B01", "HW", 10_000, 0.10, 8_200), new("B02", "HW", 10_000, 0.10, 9_100), new("B03", "HW", 10_000, 0.10, 7_600),
        new("B04", "HW", 10_000, 0.10, 8_800), new("B05", "HW", 10_000, 0.10, 6_900), new("B06", "HW", 10_000, 0.10, 5_200),
        new("B07", "HW", 10_000, 0.10, 7_400), new("B08", "SW", 10_000, 0.10, 6_100), new("B09", "SW", 5_000, 0.05, 3_300),
        new("B10", "HS", 5_000, 0.05, 4_500), new("B11", "HS", 5_000, 0.05, 4_300), new("B12", "HS", 5_000, 0.05, 3_900),
        new("B13", "HWW", 5_000, 0.05, 3_600), new("B14", "HW", 1_500, 0, 738.34), new("B15", "HW", 1_500, 0, 1_100),
        new("B16", "HS", 1_500, 0, 1_200), new("B17", "HW", 1_500, 0, 0), new("B18", "HW", 1_500, 0, 0), new("B19", "HW", 1_500, 0, 0),
    ];

    public WheatBin this[string code] => Bins[int.Parse(code.AsSpan(1), System.Globalization.CultureInfo.InvariantCulture) - 1];

    /// <summary>Stock of 1 July by bin: class, t, protein.</summary>
    public static IReadOnlyList<(string Bin, string Class, int Tonnes, double Protein)> Opening { get; } =
    [
        ("B03", "HW", 2_850, 12.9), ("B06", "HW", 2_885, 13.8), ("B17", "HW", 1_300, 14.2), ("B19", "HW", 1_300, 14.0),
        ("B08", "SW", 560, 9.9), ("B09", "SW", 975, 9.9), ("B10", "HS", 1_250, 14.5), ("B13", "HWW", 340, 13.0),
    ];

    /// <summary>Tonnes of this harvest meant for each bin; the rest of what a bin needs is bought. B14 is filled by name.</summary>
    public static IReadOnlyDictionary<string, double> Harvest { get; } = new Dictionary<string, double>
    {
        ["B01"] = 8_700, ["B02"] = 9_500, ["B03"] = 7_900, ["B04"] = 8_800, ["B15"] = 1_100, // Northledge
        ["B05"] = 8_800, ["B06"] = 200, // Scarrow Rim
        ["B07"] = 12_000, ["B18"] = 1_450, // Lowmere
        ["B08"] = 12_000, ["B09"] = 5_000, // Talvin Bank
        ["B10"] = 4_600, ["B11"] = 4_800, ["B12"] = 4_400, ["B16"] = 1_200, // High Brack
        ["B13"] = 4_960, // Northledge, white
    };
}
