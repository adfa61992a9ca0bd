using Evengrist.Packing.NetContent;

namespace Evengrist.Plant.Cases;

/// <summary>Net weights of packages posed in JSON, to be held against their label; and the fill that would keep the rules.</summary>
public sealed record NetContentCase
{
    /// <summary>Whose rules: US or EU.</summary>
    public NetRules Rules { get; init; }

    /// <summary>Declared net weight in <see cref="Unit"/>.</summary>
    public double Label { get; init; }

    /// <summary>Unit of the label, of the weights and of all else here: lb, kg or g.</summary>
    public string Unit { get; init; } = "kg";

    /// <summary>Packages in the lot.</summary>
    public int Lot { get; init; }

    /// <summary>Net weights of the sample, or gross ones where <see cref="Tare"/> is given; empty where only the fill is asked.</summary>
    public IReadOnlyList<double> Weights { get; init; } = [];

    /// <summary>The second sample, in the European Union, where the first says neither yes nor no.</summary>
    public IReadOnlyList<double> Second { get; init; } = [];

    /// <summary>Empty packages.</summary>
    public PosedTare? Tare { get; init; }

    /// <summary>How the line fills, for the fill to aim at; from the weights where left out.</summary>
    public PosedFill? Fill { get; init; }

    /// <summary>What a case looks like.</summary>
    public static CaseHelp Help { get; } = new(
        """
        {
          "rules": "US" | "EU", "label": declared net weight, "unit"?: "kg" | "g" | "lb", of all weights here, "lot": packages in the lot or batch,
          "weights"?: [ as many as the plan asks for; gross where a tare is given ], "second"?: [ EU, where the first sample says neither yes nor no ],
          "tare"?: { "mean", "deviation"?: 0 }, "fill"?: { "deviation"?: of net weights, from the weights when left out, "drift"?: 0, "packedMoisture"?, "soldMoisture"?: per cent }
        }
        """,
        """
        { "rules": "US", "label": 5, "unit": "lb", "lot": 200, "weights": [ 4.98, 5.01, 4.97, 4.99, 5.02, 4.96, 5.00, 4.98, 5.01, 4.99, 4.97, 5.00 ] }
        """);

    internal double ToGrams => Unit switch { "lb" => (double)Quantities.Mass.GramsPerPound, "g" => 1, _ => 1000 };

    internal NetLabel Declared => new(Label * ToGrams, Unit == "lb");

    internal IReadOnlyList<double> Net(IReadOnlyList<double> weights) => [.. weights.Select(w => (w - (Tare?.Mean ?? 0)) * ToGrams)];

    /// <summary>Reads a case; what cannot be is a fault too.</summary>
    public static Parsed<NetContentCase> Read(Stream stream) => SeasonCase.ReadAs<NetContentCase>(stream).Then(posed => posed.Faults().ToArray() is { Length: > 0 } faults ? Parsing.Failed<NetContentCase>(faults) : Parsing.Got(posed));

    private IEnumerable<Fault> Faults()
    {
        if (Rules is not (NetRules.US or NetRules.EU))
        {
            yield return Fault.Told("$.rules", "Say whose rules hold: US or EU.");
            yield break;
        }

        if (Unit is not ("lb" or "kg" or "g"))
        {
            yield return Fault.AtPath("$.unit", Unit, "kg, g or lb");
            yield break;
        }

        foreach (var fault in (Declared.Fault is { } label ? [Fault.Told("$.label", label)] : Array.Empty<Fault>()).Concat(OfLot()).Concat(OfWeights()).Concat(Tare?.Faults() ?? []).Concat(Fill?.Faults() ?? []))
        {
            yield return fault;
        }
    }

    private IEnumerable<Fault> OfLot() =>
    [
        .. Rules == NetRules.EU && Declared.Grams < TolerableError.LeastGrams ? [Fault.Told("$.label", $"The table of tolerable errors begins at {TolerableError.LeastGrams} g.")] : Array.Empty<Fault>(),
        .. Rules == NetRules.US && Lot is < PackagePlan.LeastLot or > PackagePlan.MostLot ? [Fault.Told("$.lot", $"A lot has {PackagePlan.LeastLot} to {PackagePlan.MostLot} packages; got {Lot}.")] : Array.Empty<Fault>(),
        .. Rules == NetRules.EU && Lot is < 2 or > BatchPlan.MostBatch ? [Fault.Told("$.lot", $"A batch has 2 to {BatchPlan.MostBatch} packages (at the end of a line, those of one hour); got {Lot}. Judge a larger one in parts.")] : Array.Empty<Fault>(),
    ];

    private IEnumerable<Fault> OfWeights()
    {
        if (Weights.Concat(Second).Any(w => !double.IsFinite(w) || w <= (Tare?.Mean ?? 0)))
        {
            yield return Fault.Told("$.weights", Tare is null ? "A net weight is above 0." : "A gross weight is above that of the empty package.");
        }

        if (Weights.Count == 0 && Fill?.Deviation is null)
        {
            yield return Fault.Told("$", "Nothing is asked: give weights, or a fill with the deviation of net weights.");
        }

        if (OfLot().Any())
        {
            yield break;
        }

        var plan = Rules == NetRules.EU && Lot >= BatchPlan.LeastBatch ? BatchPlan.For(Lot) : null;
        var wanted = Rules == NetRules.US ? PackagePlan.For(Lot).Size : plan?.First ?? Lot;
        if (Weights.Count > 0 && Weights.Count != wanted)
        {
            yield return Fault.Told("$.weights", $"Of {Lot} packages {wanted} are weighed; got {Weights.Count}.");
        }

        if (Second.Count > 0 && Second.Count != (plan?.Second ?? 0))
        {
            yield return Fault.Told("$.second", plan is null ? "There is no second sample here." : $"The second sample has {plan.Second} packages; got {Second.Count}.");
        }
    }
}

/// <summary>Empty packages, of one delivery.</summary>
/// <param name="Mean">Mean weight.</param>
public sealed record PosedTare(double Mean)
{
    /// <summary>Their standard deviation.</summary>
    public double Deviation { get; init; }

    internal IEnumerable<Fault> Faults() => double.IsFinite(Mean) && Mean >= 0 && double.IsFinite(Deviation) && Deviation >= 0 ? [] : [Fault.Told("$.tare", "An empty package weighs 0 or more, and so does its standard deviation.")];
}

/// <summary>How a line fills.</summary>
public sealed record PosedFill
{
    /// <summary>Standard deviation of net weights.</summary>
    public double? Deviation { get; init; }

    /// <summary>Allowance for drift between checks.</summary>
    public double Drift { get; init; }

    /// <summary>Moisture when packed, per cent.</summary>
    public double? PackedMoisture { get; init; }

    /// <summary>Moisture when sold, per cent.</summary>
    public double? SoldMoisture { get; init; }

    internal DryingOut? Drying => PackedMoisture is { } packed && SoldMoisture is { } sold ? new(packed, sold) : null;

    internal IEnumerable<Fault> Faults() =>
    [
        .. Deviation is null or (> 0 and < double.PositiveInfinity) ? Array.Empty<Fault>() : [Fault.Told("$.fill.deviation", "Net weights have a standard deviation above 0.")],
        .. Drift is >= 0 and < double.PositiveInfinity ? Array.Empty<Fault>() : [Fault.Told("$.fill.drift", "An allowance for drift is 0 or more.")],
        .. PackedMoisture is null == SoldMoisture is null ? Array.Empty<Fault>() : [Fault.Told("$.fill", "Give moisture both when packed and when sold, or neither.")],
        .. Drying?.Fault is { } drying ? [Fault.Told("$.fill", drying)] : Array.Empty<Fault>(),
    ];
}
