using Evengrist.Laboratory.Sampling;

namespace Evengrist.Plant.Cases;

/// <summary>Questions of acceptance sampling posed in JSON; each that is there is answered.</summary>
public sealed record LabPlanCase
{
    /// <summary>A plan whose curve is asked for.</summary>
    public PosedAttributes? Attributes { get; init; }

    /// <summary>Two points that plans are wanted for.</summary>
    public TwoPoints? Design { get; init; }

    /// <summary>A plan of a table.</summary>
    public PosedTablePlan? Table { get; init; }

    /// <summary>A plan by variables of a table.</summary>
    public PosedVariables? Variables { get; init; }

    /// <summary>A plan with three classes.</summary>
    public PosedThreeClasses? ThreeClass { get; init; }

    /// <summary>What a test finds.</summary>
    public PosedFinding? Find { get; init; }

    /// <summary>What a case looks like.</summary>
    public static CaseHelp Help { get; } = new(
        """
        { one or more of
          "attributes": { "size": n, "accept": c, "lot"?: units in the lot, "shares"?: [ of bad ones, 0.01 for 1 % ] },
          "design": { "goodShare": 0.01, "sellersRisk": 0.05, "badShare": 0.06, "buyersRisk": 0.10 },
          "table": { "lot": units, "level"?: "II", "limitPercent": 0.010 to 10 of the standard's series, "lots"?: [ "Accepted" | "AcceptedBackToNormal" | "Rejected", oldest first ], "mayReduce"?: false },
          "variables": { "limitPercent": 0.65 | 1.0 | 1.5 | 2.5 | 4.0 | 6.5 | 10, "lot": units, "level"?: "IV", or "letter": "B" to "Q" by MIL-STD-414, "tightened"?: false },
          "threeClass": { "size": n, "marginal": c, "marginalShare", "badShare" },
          "find": { "share"?: of bad units, "chance"?: 0.95, "grams"?: of all portions together, "perGram"?: cells, "colonies"?: counted } }
        """,
        """
        { "attributes": { "size": 52, "accept": 3, "lot": 10000, "shares": [ 0.01, 0.05, 0.10 ] }, "design": { "goodShare": 0.01, "sellersRisk": 0.05, "badShare": 0.06, "buyersRisk": 0.10 },
          "table": { "lot": 1000, "limitPercent": 1.0 }, "find": { "share": 0.05, "grams": 375, "perGram": 0.01 } }
        """);

    /// <summary>Reads a case; what cannot be is a fault too.</summary>
    public static Parsed<LabPlanCase> Read(Stream stream) => SeasonCase.ReadAs<LabPlanCase>(stream).Then(posed => posed.Faults().ToArray() is { Length: > 0 } faults ? Parsing.Failed<LabPlanCase>(faults) : Parsing.Got(posed));

    private IEnumerable<Fault> Faults()
    {
        if (this is { Attributes: null, Design: null, Table: null, Variables: null, ThreeClass: null, Find: null })
        {
            yield return Fault.Told("$", "Nothing is asked: give attributes, design, table, variables, threeClass or find.");
        }

        foreach (var fault in (Attributes?.Faults() ?? []).Concat(Design?.Faults().Select(f => Fault.Told("$.design", f)) ?? []).Concat(Table?.Faults() ?? []).Concat(Variables?.Faults() ?? []).Concat(ThreeClass?.Faults() ?? []).Concat(Find?.Faults() ?? []))
        {
            yield return fault;
        }
    }
}

/// <summary>A plan by attributes.</summary>
/// <param name="Size">n.</param>
/// <param name="Accept">c.</param>
public sealed record PosedAttributes(int Size, int Accept)
{
    /// <summary>Units in the lot.</summary>
    public int? Lot { get; init; }

    /// <summary>Shares of bad ones.</summary>
    public IReadOnlyList<double> Shares { get; init; } = [0.005, 0.01, 0.02, 0.03, 0.05, 0.08, 0.10, 0.15, 0.20];

    internal IEnumerable<Fault> Faults() =>
    [
        .. Size is >= 1 and <= AttributesPlan.MostSize && Accept >= 0 && Accept < Size ? Array.Empty<Fault>() : [Fault.Told("$.attributes", $"Looked at are 1 to {AttributesPlan.MostSize}, accepted with 0 or more bad ones and fewer than are looked at.")],
        .. Lot is null || (Lot >= Size && Lot <= 10_000_000) ? Array.Empty<Fault>() : [Fault.Told("$.attributes.lot", "A lot has at least as many as are looked at, and at most 10,000,000.")],
        .. Shares.Count is >= 1 and <= 200 && Shares.All(s => s is >= 0 and <= 1) ? Array.Empty<Fault>() : [Fault.Told("$.attributes.shares", "1 to 200 shares, each from 0 to 1: write 1 % as 0.01.")],
    ];
}

/// <summary>A plan of MIL-STD-105E.</summary>
/// <param name="Lot">Units in the lot.</param>
/// <param name="LimitPercent">Acceptance quality limit.</param>
public sealed record PosedTablePlan(int Lot, double LimitPercent)
{
    /// <summary>Level.</summary>
    public string Level { get; init; } = "II";

    /// <summary>How the lots before fared, oldest first.</summary>
    public IReadOnlyList<LotVerdict> Lots { get; init; } = [];

    /// <summary>Whether reduced plans are allowed.</summary>
    public bool MayReduce { get; init; }

    internal IEnumerable<Fault> Faults() =>
    [
        .. Lot >= 2 ? Array.Empty<Fault>() : [Fault.Told("$.table.lot", "A lot has 2 units or more.")],
        .. TableLetters.Levels.Contains(Level) ? Array.Empty<Fault>() : [Fault.AtPath("$.table.level", Level, $"one of {string.Join(", ", TableLetters.Levels)}")],
        .. TablePlans.Limits.Contains(LimitPercent) ? Array.Empty<Fault>() : [Fault.AtPath("$.table.limitPercent", FormattableString.Invariant($"{LimitPercent}"), $"one of {string.Join(", ", TablePlans.Limits.Select(l => FormattableString.Invariant($"{l}")))}")],
        .. Lots.Count <= 1000 ? Array.Empty<Fault>() : [Fault.Told("$.table.lots", "Up to 1,000 lots: give the newest.")],
    ];
}

/// <summary>A plan of MIL-STD-414: of a lot, or of a letter.</summary>
/// <param name="LimitPercent">Acceptance quality limit.</param>
public sealed record PosedVariables(double LimitPercent)
{
    /// <summary>Letter, by the edition's own lot sizes; null where the lot is given.</summary>
    public char? Letter { get; init; }

    /// <summary>Units in the lot; null where the letter is given.</summary>
    public int? Lot { get; init; }

    /// <summary>Level.</summary>
    public string Level { get; init; } = "IV";

    /// <summary>Whether tightened.</summary>
    public bool Tightened { get; init; }

    internal char Found => Letter ?? VariablesTable.LetterOf(Lot!.Value, Level);

    internal IEnumerable<Fault> Faults() =>
    [
        .. Letter is null == Lot is null ? [Fault.Told("$.variables", "Give the lot, or the letter, one of them.")] : Array.Empty<Fault>(),
        .. Lot is null or >= 3 ? Array.Empty<Fault>() : [Fault.Told("$.variables.lot", "A lot measured by variables has 3 units or more.")],
        .. VariablesTable.Levels.Contains(Level) ? Array.Empty<Fault>() : [Fault.AtPath("$.variables.level", Level, $"one of {string.Join(", ", VariablesTable.Levels)}")],
    ];
}

/// <summary>A plan with three classes.</summary>
/// <param name="Size">n.</param>
/// <param name="Marginal">c.</param>
/// <param name="MarginalShare">Share between m and M.</param>
/// <param name="BadShare">Share above M.</param>
public sealed record PosedThreeClasses(int Size, int Marginal, double MarginalShare, double BadShare)
{
    internal IEnumerable<Fault> Faults() => Size is >= 1 and <= 1000 && Marginal >= 0 && Marginal < Size && MarginalShare >= 0 && BadShare >= 0 && MarginalShare + BadShare <= 1
        ? [] : [Fault.Told("$.threeClass", "Looked at are 1 to 1,000, of which fewer may be marginal; shares are 0 or more and together at most 1.")];
}

/// <summary>What a test finds.</summary>
public sealed record PosedFinding
{
    /// <summary>Share of bad units.</summary>
    public double? Share { get; init; }

    /// <summary>How surely one is to be found.</summary>
    public double Chance { get; init; } = 0.95;

    /// <summary>Grams of all portions together.</summary>
    public double? Grams { get; init; }

    /// <summary>Cells to a gram.</summary>
    public double? PerGram { get; init; }

    /// <summary>Colonies counted.</summary>
    public int? Colonies { get; init; }

    internal IEnumerable<Fault> Faults() =>
    [
        .. Share is null or (> 0 and < 1) && Chance is > 0 and < 1 ? Array.Empty<Fault>() : [Fault.Told("$.find", "The share and the chance lie between 0 and 1: write 5 % as 0.05.")],
        .. Grams is null or (> 0 and <= 1e6) && PerGram is null or (>= 0 and <= 1e9) && (PerGram is null || Grams is not null) ? Array.Empty<Fault>() : [Fault.Told("$.find", "Grams are above 0, cells to a gram 0 or more, and cells ask for grams.")],
        .. Colonies is null or (>= 0 and <= 100_000) ? Array.Empty<Fault>() : [Fault.Told("$.find.colonies", "Colonies are 0 to 100,000.")],
        .. this is { Share: null, Grams: null, Colonies: null } ? [Fault.Told("$.find", "Give a share of bad units, grams, or colonies counted.")] : Array.Empty<Fault>(),
    ];
}
