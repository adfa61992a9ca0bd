using System.Globalization;

namespace Evengrist.Tests.Intake.Grading;

/// <summary>
/// One sample and the grade it must get. The limits are those of 7 CFR 810.2204 (2015 edition); the samples were made up beside them and graded by an independent
/// small script over the same table (derived). The same rows go through the model, the command line, the API and the page.
/// </summary>
/// <param name="Id">Number of the row.</param>
/// <param name="Class">Class, or Mixed.</param>
/// <param name="TestWeight">lb/bu.</param>
/// <param name="Percents">Heat-damaged, damaged, foreign material, shrunken and broken, as found.</param>
/// <param name="Grade">The grade.</param>
/// <param name="Deciding">Factors that must be among the deciding ones.</param>
public sealed record GradeVector(string Id, string Class, decimal TestWeight, decimal[] Percents, string Grade, params string[] Deciding)
{
    public string Leading { get; init; } = "";

    public decimal OtherClasses { get; init; }

    public int InsectDamaged { get; init; }

    public int Glass { get; init; }

    public string Observed { get; init; } = "";

    public bool Unrounded { get; init; }

    /// <summary>Recorded defects that must come out; null where the row is not about them.</summary>
    public decimal? Defects { get; init; }

    /// <summary>The sample as a posed case.</summary>
    public string Json() => string.Create(CultureInfo.InvariantCulture, $$"""
        { "standard": "us-wheat", "edition": "2015", "class": "{{Class}}"{{(Leading.Length > 0 ? $", \"leading\": \"{Leading}\"" : "")}},
          "findings": { "test weight [lb/bu]": {{TestWeight}}, "heat-damaged [%]": {{Percents[0]}}, "damaged [%]": {{Percents[1]}}, "foreign material [%]": {{Percents[2]}}, "shrunken and broken [%]": {{Percents[3]}},
                        "contrasting classes [%]": 0, "other classes [%]": {{OtherClasses}}, "insect-damaged [/100 g]": {{InsectDamaged}}, "glass [/kg]": {{Glass}} },
          "observed": [ {{(Observed.Length > 0 ? $"\"{Observed}\"" : "")}} ], "notLookedFor": "none", "defects": "{{(Unrounded ? "unroundedSum" : "recordedParts")}}" }
        """);

    public override string ToString() => Id;
}

/// <summary>The rows.</summary>
public static class GradeVectors
{
    public static IReadOnlyList<GradeVector> All { get; } =
    [
        new("G1", "HRW", 60.04m, [0m, 1.2m, 0.3m, 1.4m], "U.S. No. 1") { Defects = 2.9m },
        new("G2", "HRW", 59.94m, [0m, 1.2m, 0.3m, 1.4m], "U.S. No. 2", "test weight"),
        new("G3", "HRW", 59.95m, [0m, 1.2m, 0.3m, 1.4m], "U.S. No. 1"),
        new("G4", "HRS", 58.0m, [0m, 2.0m, 0.4m, 0.6m], "U.S. No. 1") { Defects = 3.0m },
        new("G5", "HRS", 58.0m, [0m, 2.0m, 0.4m, 0.7m], "U.S. No. 2", "total defects") { Defects = 3.1m },
        new("G6", "HRW", 61.0m, [0.24m, 0.9m, 0.2m, 1.0m], "U.S. No. 1"),
        new("G8", "SRW", 58.3m, [0m, 3.1m, 0.44m, 1.2m], "U.S. No. 2", "test weight", "damaged kernels, total", "total defects") { Defects = 4.7m },
        new("G9", "SRW", 58.3m, [0m, 3.1m, 0.45m, 1.6m], "U.S. No. 3", "total defects") { Defects = 5.2m },
        new("G10", "White Club", 57.6m, [0m, 0.8m, 0.1m, 0.9m], "U.S. No. 2", "test weight") { OtherClasses = 2.0m },
        new("G13", "HRW", 61m, [0m, 1.0m, 0.2m, 1.0m], "U.S. No. 3", "wheat of other classes, total") { OtherClasses = 7.0m },
        new("G14", "Mixed", 61m, [0m, 1.0m, 0.2m, 1.0m], "U.S. No. 1") { Leading = "HRW", OtherClasses = 30m },
        new("G15", "HRW", 61m, [0m, 1.0m, 0.2m, 1.0m], "U.S. No. 1") { InsectDamaged = 31 },
        new("G16", "HRW", 61m, [0m, 1.0m, 0.2m, 1.0m], "U.S. Sample grade", "insect-damaged kernels") { InsectDamaged = 32 },
        new("G19", "HRW", 61m, [0m, 1.0m, 0.2m, 1.0m], "U.S. Sample grade", "glass") { Glass = 1 },
        new("G20", "HRW", 51.0m, [3.0m, 15.0m, 2.0m, 3.0m], "U.S. No. 5", "total defects") { Defects = 20.0m },
        new("G21", "HRW", 50.9m, [0m, 5.0m, 0.5m, 1.0m], "U.S. Sample grade", "test weight"),
        new("G22", "HRS", 60m, [0m, 1.25m, 0.35m, 1.35m], "U.S. No. 2", "total defects") { Defects = 3.1m },
        new("G22 unrounded", "HRS", 60m, [0m, 1.25m, 0.35m, 1.35m], "U.S. No. 1") { Unrounded = true, Defects = 3.0m },
        new("G24", "HRS", 59m, [0m, 1.0m, 0.1m, 0.5m], "U.S. Sample grade", "musty odour") { Observed = "musty" },
    ];

    public static GradeVector Of(string id) => All.Single(v => v.Id == id);
}
