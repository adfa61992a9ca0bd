using Evengrist.Intake.Grading;
using Evengrist.Ledger;
using Evengrist.Quantities;

namespace Evengrist.Demo;

/// <summary>The demonstration mill's own classes of wheat. Bands invented.</summary>
public static class HouseClasses
{
    /// <summary>One version of each.</summary>
    public static IReadOnlyList<HouseClass> All { get; } =
    [
        Of("HW", "hard winter", "HRW", [13.0m, 11.5m, 10.0m], [78m, 75m, 72m], [300m, 250m, 200m]),
        Of("HS", "hard spring", "HRS", [14.5m, 13.5m, 12.0m], [79m, 77m, 74m], [350m, 300m, 250m]),
        Of("HWW", "hard white, for whole wheat", "Hard White", [13.0m, 12.0m, 11.0m], [79m, 77m, 74m], [350m, 300m, 250m]),
        Of("SW", "soft winter, for cakes and biscuits", "SRW", [9.5m, 10.5m, 11.5m], [77m, 75m, 72m], [320m, 260m, 200m], proteinAtMost: true),
    ];

    private static HouseClass Of(string code, string name, string official, decimal?[] protein, decimal?[] testWeight, decimal?[] falling, bool proteinAtMost = false)
    {
        var share = new HouseLimit(Property.Protein, "%", 1) { Basis = Basis.At12 };
        return new(code, 1, name, [$"{code} first", $"{code} second", $"{code} third"],
        [
            proteinAtMost ? share with { AtMost = protein } : share with { AtLeast = protein },
            new(Property.TestWeight, "kg/hL", 1) { AtLeast = testWeight },
            new(Property.FallingNumber, "s", 0) { AtLeast = falling, WhereRead = true },
            new(Property.Damaged, "%", 1) { AtMost = [3m, 5m, 8m], WhereRead = true },
            new(Property.ShrunkenAndBroken, "%", 1) { AtMost = [3m, 5m, 8m], WhereRead = true },
        ])
        { OfficialClass = official };
    }
}
