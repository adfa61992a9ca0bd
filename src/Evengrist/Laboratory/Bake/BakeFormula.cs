using System.Diagnostics.CodeAnalysis;

namespace Evengrist.Laboratory.Bake;

/// <summary>A bake formula in baker's per cent: of the flour at 14 % moisture.</summary>
/// <param name="Name">What the test is called in the mill.</param>
/// <param name="Ingredients">All but flour and water.</param>
/// <param name="WaterPercent">Water, per cent of the flour at 14 % moisture, 30 to 120.</param>
/// <param name="Steps">What is done, in order.</param>
public sealed record BakeFormula(string Name, IReadOnlyList<BakeIngredient> Ingredients, double WaterPercent, IReadOnlyList<BakeStep> Steps)
{
    /// <summary>Moisture of the flour the per cents are stated on, %.</summary>
    public const double FlourMoisture = 14;

    /// <summary>The kind of paper it is kept as.</summary>
    public const string PaperKind = "bake-formula";

    /// <summary>The formula the program begins with: ours, a plain straight dough; each laboratory has its own.</summary>
    public static BakeFormula Start { get; } = new(
        "straight dough", [new("salt", 1.5), new("sugar", 2), new("fat", 2), new("yeast, pressed", 3)], 60, [new("mix", 5, 26), new("rest", 30, 30), new("divide and mould", 5, null), new("proof", 55, 35), new("bake", 25, 220), new("cool", 60, null)]);

    /// <summary>What is wrong, each a sentence; empty where nothing is.</summary>
    public IReadOnlyList<string> Faults() =>
    [
        .. string.IsNullOrWhiteSpace(Name) ? ["A formula has a name."] : Array.Empty<string>(),
        .. WaterPercent is >= 30 and <= 120 ? Array.Empty<string>() : [$"Water lies from 30 to 120 % of the flour; read {WaterPercent}."],
        .. Ingredients.Where(i => string.IsNullOrWhiteSpace(i.Name) || i.Percent is not (> 0 and <= 100)).Select(i => $"{i.Name}: an ingredient has a name and above 0 and up to 100 % of the flour; read {i.Percent}."),
        .. Steps.Where(s => string.IsNullOrWhiteSpace(s.Name) || s.Minutes is not (>= 0 and <= 2880) || s.Celsius is < 0 or > 350).Select(s => $"{s.Name}: a step has a name, 0 to 2880 minutes, and 0 to 350 °C where it has one."),
        .. Ingredients.GroupBy(i => i.Name.Trim(), StringComparer.OrdinalIgnoreCase).Where(g => g.Count() > 1).Select(g => $"{g.Key} stands twice; keep it once."),
    ];

    /// <summary>As JSON.</summary>
    public static string Write(BakeFormula formula) => LabJson.Write(formula);

    /// <summary>Reads a formula and checks it.</summary>
    /// <param name="json">The text.</param>
    /// <param name="formula">The formula; null where there is a fault.</param>
    /// <param name="faults">Each fault a sentence; empty where there is none.</param>
    public static bool TryRead(string json, [NotNullWhen(true)] out BakeFormula? formula, out IReadOnlyList<string> faults) =>
        LabJson.TryRead(json, f => f.Ingredients.Any(i => i is null) || f.Steps.Any(x => x is null) ? ["A line of the formula is null."] : f.Faults(), out formula, out faults);

    /// <summary>What to weigh: the flour's dry matter and the dough's water stay whatever moisture the flour has.</summary>
    /// <param name="grams14">Flour as it would be at 14 % moisture, g, above 0.</param>
    /// <param name="moisturePercent">Moisture of the flour, %, 5 to 20.</param>
    /// <exception cref="ArgumentOutOfRangeException">A figure cannot be.</exception>
    public BakeWeights For(double grams14, double moisturePercent)
    {
        ArgumentOutOfRangeException.ThrowIfNegativeOrZero(grams14);
        ArgumentOutOfRangeException.ThrowIfLessThan(moisturePercent, 5);
        ArgumentOutOfRangeException.ThrowIfGreaterThan(moisturePercent, 20);
        var flour = grams14 * (100 - FlourMoisture) / (100 - moisturePercent);
        return new BakeWeights(flour, (grams14 * WaterPercent / 100) + grams14 - flour, [.. Ingredients.Select(i => new BakeWeight(i.Name, grams14 * i.Percent / 100))]);
    }
}

/// <summary>A step of a bake.</summary>
/// <param name="Name">What is done.</param>
/// <param name="Minutes">How long.</param>
/// <param name="Celsius">At which temperature; null where it is the room's.</param>
public sealed record BakeStep(string Name, double Minutes, double? Celsius);

/// <summary>An ingredient of a formula.</summary>
/// <param name="Name">What it is.</param>
/// <param name="Percent">Per cent of the flour at 14 % moisture.</param>
public sealed record BakeIngredient(string Name, double Percent);

/// <summary>What to weigh.</summary>
/// <param name="FlourGrams">Flour as it is, g.</param>
/// <param name="WaterGrams">Water, g.</param>
/// <param name="Others">The other ingredients.</param>
public sealed record BakeWeights(double FlourGrams, double WaterGrams, IReadOnlyList<BakeWeight> Others);

/// <summary>What to weigh of an ingredient.</summary>
/// <param name="Name">What it is.</param>
/// <param name="Grams">g.</param>
public sealed record BakeWeight(string Name, double Grams);
