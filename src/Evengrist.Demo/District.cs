using NodaTime;

namespace Evengrist.Demo;

/// <summary>A growing district and how this year's trucks from it are spread: means and standard deviations. Invented.</summary>
internal sealed record District(
    string Name, string Class, double Protein, double ProteinSd, double Moisture, double MoistureSd,
    double TestWeight, double TestWeightSd, double Falling, double FallingSd, double Don, double KernelWeight)
{
    public static District Northledge { get; } = new("Northledge", "HW", 12.2, 0.7, 11.8, 0.7, 79.5, 1.2, 385, 25, 0.15, 30.5);

    public static District NorthledgeWhite { get; } = Northledge with { Class = "HWW", Protein = 13.0, ProteinSd = 0.6, Falling = 372 };

    public static District ScarrowRim { get; } = new("Scarrow Rim", "HW", 14.0, 0.8, 9.8, 0.6, 75.8, 1.6, 420, 25, 0.1, 25);

    public static District Lowmere { get; } = new("Lowmere", "HW", 11.1, 0.8, 13.2, 0.8, 77.1, 1.5, 262, 70, 0.7, 30);

    public static District TalvinBank { get; } = new("Talvin Bank", "SW", 9.7, 0.6, 12.6, 0.7, 77.5, 1.5, 340, 35, 0.3, 33);

    public static District HighBrack { get; } = new("High Brack", "HS", 14.6, 0.6, 12.2, 0.7, 80.1, 1.0, 397, 22, 0.1, 31);
}

/// <summary>A grower and the fields that send trucks to the mill.</summary>
internal sealed record Grower(string Code, string Farm, string District, IReadOnlyList<string> Fields)
{
    public static IReadOnlyList<Grower> All { get; } =
    [
        new("F01", "Nine Ash Holding", "Northledge", ["NA-1", "NA-2", "NA-3", "NA-4"]),
        new("F02", "Drumsallow", "Northledge", ["DS-1", "DS-2", "DS-3"]),
        new("F03", "Long Ember", "Scarrow Rim", ["LE-1", "LE-2", "LE-3", "LE-4", "LE-5"]),
        new("F04", "Cinder Top", "Scarrow Rim", ["CT-1", "CT-2", "CT-3"]),
        new("F05", "Wickenlow", "Lowmere", ["WL-1", "WL-2", "WL-3", "WL-4"]),
        new("F06", "Eel Drove", "Lowmere", ["ED-1", "ED-2"]),
        new("F07", "Tansy Bank Farm", "Talvin Bank", ["TB-1", "TB-2", "TB-3", "TB-4"]),
        new("F08", "Quarrel Hill", "Talvin Bank", ["QH-1", "QH-2"]),
        new("F09", "Brackhead", "High Brack", ["BH-1", "BH-2", "BH-3", "BH-4"]),
        new("F10", "Thornquay", "High Brack", ["TQ-1", "TQ-2", "TQ-3"]),
    ];

    /// <summary>Farm with each of its fields, of a district.</summary>
    public static IReadOnlyList<(Grower Grower, string Field)> FieldsIn(string district) =>
        [.. All.Where(g => g.District == district).SelectMany(g => g.Fields.Select(f => (g, f)))];
}

/// <summary>How many trucks of a district come on which days.</summary>
internal sealed record Coming(District District, IReadOnlyList<(LocalDate Day, int Trucks)> Days);
