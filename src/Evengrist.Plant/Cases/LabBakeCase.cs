using Evengrist.Laboratory.Bake;

namespace Evengrist.Plant.Cases;

/// <summary>A bake posed in JSON: what to weigh, flours against a control, tasters, ranks, a blend; each part may be left out.</summary>
public sealed record LabBakeCase
{
    /// <summary>What to weigh; null for not asked.</summary>
    public PosedDough? Weigh { get; init; }

    /// <summary>Pairs of one session each; null for not asked.</summary>
    public PosedPairs? Pairs { get; init; }

    /// <summary>Loaves over bakers and doughs; null for not asked.</summary>
    public PosedTrial? Trial { get; init; }

    /// <summary>Answers of tasters; null for not asked.</summary>
    public PosedTasting? Tasting { get; init; }

    /// <summary>Ranks, a row for each baker; empty for not asked.</summary>
    public IReadOnlyList<IReadOnlyList<double>> Ranks { get; init; } = [];

    /// <summary>A blend to be guessed; null for not asked.</summary>
    public PosedBlend? Blend { get; init; }

    /// <summary>What a case looks like.</summary>
    public static CaseHelp Help { get; } = new(
        """
        {
          "weigh"?: { "flourGrams14": flour as at 14 % moisture, g, "moisture": of the flour, %, "water": % of the flour at 14 %, "ingredients"?: [ { "name", "percent" } ] },
          "pairs"?: { "control": [ one of each session ], "trial": [ in the same order ] },
          "trial"?: { "control": flour, "loaves": [ { "flour", "baker", "dough", "value" } ] }: bakers and doughs are taken out,
          "tasting"?: { "kind": "Triangle" | "Pairs" | "PairsTwoSided", "tests", "right" },
          "ranks"?: [ [ of each bread, 1 the best, ties with the mean of their ranks ] for each baker ],
          "blend"?: { "parts": [ { "share", "value" } ] shares sum to 1, "known"?: [ { "guessed", "measured" } ] of former blends }
        }
        """,
        """
        { "weigh": { "flourGrams14": 100, "moisture": 13.2, "water": 62, "ingredients": [ { "name": "salt", "percent": 1.5 } ] },
          "pairs": { "control": [ 845, 862, 838, 870, 851, 848, 866, 859 ], "trial": [ 852, 860, 849, 881, 855, 861, 869, 868 ] }, "tasting": { "kind": "Triangle", "tests": 30, "right": 15 } }
        """);

    /// <summary>Reads a case; what cannot be is a fault too.</summary>
    public static Parsed<LabBakeCase> Read(Stream stream) => SeasonCase.ReadAs<LabBakeCase>(stream).Then(posed => posed.Faults().ToArray() is { Length: > 0 } faults ? Parsing.Failed<LabBakeCase>(faults) : Parsing.Got(posed));

    private IEnumerable<Fault> Faults() =>
    [
        .. Weigh is null && Pairs is null && Trial is null && Tasting is null && Ranks.Count == 0 && Blend is null ? [Fault.Told("$", "Ask something: weigh, pairs, trial, tasting, ranks or blend.")] : Array.Empty<Fault>(),
        .. Weigh?.Faults().Select(f => Fault.Told("$.weigh", f)) ?? [],
        .. Pairs is { } p && (p.Control.Count != p.Trial.Count || p.Control.Count < 2) ? [Fault.Told("$.pairs", "Two pairs or more are needed, a control for each trial.")] : Array.Empty<Fault>(),
        .. Trial is { } t && t.Loaves.Any(l => l is null) ? [Fault.Told("$.trial.loaves", "A loaf is null.")] : Array.Empty<Fault>(),
        .. Tasting is { } a && (a.Tests is not (>= 1 and <= 100_000) || a.Right < 0 || a.Right > a.Tests) ? [Fault.Told("$.tasting", "1 to 100000 tests, and from none to all of them right.")] : Array.Empty<Fault>(),
        .. Ranks.Any(row => row is null) ? [Fault.Told("$.ranks", "A row is null.")] : Ranks.Count > 0 && RankTest.Fault(Ranks) is { } rank ? [Fault.Told("$.ranks", rank)] : Array.Empty<Fault>(),
        .. Blend is { } b && (b.Parts.Count == 0 || b.Parts.Any(x => x is null || x.Share is not (>= 0 and <= 1)) || b.Known.Any(k => k is null) || Math.Abs(b.Parts.Sum(x => x.Share) - 1) > 1e-6) ? [Fault.Told("$.blend", "Shares lie from 0 to 1 and sum to 1.")] : Array.Empty<Fault>(),
    ];
}

/// <summary>A dough to be weighed.</summary>
/// <param name="FlourGrams14">Flour as it would be at 14 % moisture, g.</param>
/// <param name="Moisture">Moisture of the flour, %.</param>
/// <param name="Water">% of the flour at 14 %.</param>
/// <param name="Ingredients">The others; none where left out.</param>
public sealed record PosedDough(double FlourGrams14, double Moisture, double Water, IReadOnlyList<BakeIngredient>? Ingredients = null)
{
    internal BakeFormula Formula => new("posed", Ingredients ?? [], Water, []);

    internal IEnumerable<string> Faults() =>
    [
        .. Ingredients?.Any(i => i is null) == true ? ["An ingredient is null."] : Formula.Faults(),
        .. FlourGrams14 is > 0 and <= 1_000_000 ? Array.Empty<string>() : ["Flour is above 0 and up to 1,000,000 g."],
        .. Moisture is >= 5 and <= 20 ? Array.Empty<string>() : [FormattableString.Invariant($"Moisture of the flour lies from 5 to 20 %; read {Moisture}.")],
    ];
}

/// <summary>Pairs.</summary>
/// <param name="Control">Of the control.</param>
/// <param name="Trial">Of the trial.</param>
public sealed record PosedPairs(IReadOnlyList<double> Control, IReadOnlyList<double> Trial);

/// <summary>Loaves over bakers and doughs.</summary>
/// <param name="Control">The control flour.</param>
/// <param name="Loaves">The loaves.</param>
public sealed record PosedTrial(string Control, IReadOnlyList<TrialLoaf> Loaves);

/// <summary>Answers of tasters.</summary>
/// <param name="Kind">The question.</param>
/// <param name="Tests">Answers.</param>
/// <param name="Right">Right ones; for two-sided pairs those that chose the one bread.</param>
public sealed record PosedTasting(TastingKind Kind, int Tests, int Right);

/// <summary>What tasters were asked.</summary>
public enum TastingKind
{
    /// <summary>Which of three is the other one.</summary>
    Triangle = 0,

    /// <summary>Which of two has more of something, the direction expected before.</summary>
    Pairs = 1,

    /// <summary>Which of two they like more, no direction expected.</summary>
    PairsTwoSided = 2,
}

/// <summary>A blend.</summary>
/// <param name="Parts">Its flours.</param>
public sealed record PosedBlend(IReadOnlyList<PosedPart> Parts)
{
    /// <summary>Former blends; none where left out.</summary>
    public IReadOnlyList<PosedKnown> Known { get; init; } = [];
}

/// <summary>A flour of a blend.</summary>
/// <param name="Share">Share of the blend's flour.</param>
/// <param name="Value">Its dough property.</param>
public sealed record PosedPart(double Share, double Value);

/// <summary>A former blend.</summary>
/// <param name="Guessed">Linear guess.</param>
/// <param name="Measured">What was measured.</param>
public sealed record PosedKnown(double Guessed, double Measured);
