using System.Diagnostics.CodeAnalysis;

namespace Evengrist.Packing.Rework;

/// <summary>What this mill lets happen with rework: how old it may be, how much of a run it may be, into which other flour it may go, and what its additives carry. Kept by version. Model: docs/model/rework.md.</summary>
public sealed record ReworkRules
{
    /// <summary>Kind of its paper.</summary>
    public const string Kind = "rework-rules";

    /// <summary>What the program begins with: 30 days and 5 % [ours; 2 to 5 % is usual and 10 % the most, from memory], like into like alone, soy flour carries soy.</summary>
    public static ReworkRules Start { get; } = new() { Carriers = [new("soy flour", ["soy"])] };

    /// <summary>Days after which it is asked about.</summary>
    public int MostDays { get; init; } = 30;

    /// <summary>Most of a run it may be, per cent, where no dose of the flour says otherwise.</summary>
    public double MostPercent { get; init; } = 5;

    /// <summary>Most of a run of a flour, flour by flour.</summary>
    public IReadOnlyList<ReworkDose> Doses { get; init; } = [];

    /// <summary>Which flour may go into which other; like into like need not be named.</summary>
    public IReadOnlyList<ReworkMatch> Matches { get; init; } = [];

    /// <summary>Additives that carry allergens.</summary>
    public IReadOnlyList<AllergenCarrier> Carriers { get; init; } = [];

    /// <summary>Premixes that enrich, with what of them is a full dose.</summary>
    public IReadOnlyList<PremixOf> Premixes { get; init; } = [];

    /// <summary>The most of a run of a flour, per cent.</summary>
    public double MostOf(string flour) => Doses.FirstOrDefault(d => d.Flour.Equals(flour, StringComparison.OrdinalIgnoreCase))?.MostPercent ?? MostPercent;

    /// <summary>Whether a flour may go into another by these rules.</summary>
    public bool Fits(string of, string into) => of.Equals(into, StringComparison.OrdinalIgnoreCase)
        || Matches.Any(m => m.Of.Equals(of, StringComparison.OrdinalIgnoreCase) && m.Into.Equals(into, StringComparison.OrdinalIgnoreCase));

    /// <summary>What is wrong, each a sentence; empty where nothing is.</summary>
    public IReadOnlyList<string> Faults() =>
    [
        .. MostDays is >= 1 and <= 3650 ? Array.Empty<string>() : [$"Days lie from 1 to 3650; got {MostDays}."],
        .. Doses.Select(d => d.MostPercent).Append(MostPercent).Where(p => p is not (> 0 and < 100)).Select(p => FormattableString.Invariant($"The most of a run lies above 0 and below 100 %; got {p}.")),
        .. Doses.Any(d => string.IsNullOrWhiteSpace(d.Flour)) || Matches.Any(m => string.IsNullOrWhiteSpace(m.Of) || string.IsNullOrWhiteSpace(m.Into)) ? ["A flour has a name."] : Array.Empty<string>(),
        .. Carriers.Any(c => string.IsNullOrWhiteSpace(c.Additive) || c.Allergens.Count == 0 || c.Allergens.Any(string.IsNullOrWhiteSpace)) ? ["A carrier names its additive and its allergens."] : Array.Empty<string>(),
        .. Premixes.Any(p => string.IsNullOrWhiteSpace(p.Additive) || p.GramsPerTonne is not (> 0 and <= 100_000)) ? ["A premix names its additive and its full dose, above 0 to 100,000 g/t."] : Array.Empty<string>(),
    ];

    /// <summary>The rules as JSON.</summary>
    public static string Write(ReworkRules rules) => PackingJson.Write(rules);

    /// <summary>Reads rules and checks them; each fault a sentence.</summary>
    public static bool TryRead(string json, [NotNullWhen(true)] out ReworkRules? rules, out IReadOnlyList<string> faults) => PackingJson.TryRead(json, r => r.Faults(), out rules, out faults);
}

/// <summary>The most of a run of a flour that rework may be.</summary>
/// <param name="Flour">The flour.</param>
/// <param name="MostPercent">Per cent, above 0 and below 100.</param>
public sealed record ReworkDose(string Flour, double MostPercent);

/// <summary>Rework of one flour may go into another.</summary>
/// <param name="Of">The flour that is fed back.</param>
/// <param name="Into">The flour of the run.</param>
public sealed record ReworkMatch(string Of, string Into);

/// <summary>An additive that carries allergens.</summary>
/// <param name="Additive">The material of its lots in the ledger.</param>
/// <param name="Allergens">Allergens beyond wheat.</param>
public sealed record AllergenCarrier(string Additive, IReadOnlyList<string> Allergens);

/// <summary>A premix that enriches.</summary>
/// <param name="Additive">The material of its lots in the ledger.</param>
/// <param name="GramsPerTonne">Its full dose, g to a tonne of flour.</param>
public sealed record PremixOf(string Additive, double GramsPerTonne);
