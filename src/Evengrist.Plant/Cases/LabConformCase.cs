using Evengrist.Laboratory.Conformity;

namespace Evengrist.Plant.Cases;

/// <summary>Results of one property posed in JSON with the limits they are held against.</summary>
public sealed record LabConformCase
{
    /// <summary>The results, one unit and basis.</summary>
    public required IReadOnlyList<double> Results { get; init; }

    /// <summary>Of how many different samples; one each where left out.</summary>
    public int? Samples { get; init; }

    /// <summary>Why a result differs from the lot's mean.</summary>
    public required PosedSpread Uncertainty { get; init; }

    /// <summary>Lower limit.</summary>
    public double? Lower { get; init; }

    /// <summary>Upper limit.</summary>
    public double? Upper { get; init; }

    /// <summary>What of the results is judged.</summary>
    public ResultRule Rule { get; init; } = ResultRule.MeanOf;

    /// <summary>How many results a mean needs.</summary>
    public int Needed { get; init; } = 1;

    /// <summary>Whether a guard band is kept: Simple or Guarded.</summary>
    public DecisionRule Decision { get; init; } = DecisionRule.Simple;

    /// <summary>The buyer's risk at the limit.</summary>
    public double BuyersRisk { get; init; } = GuardBand.UsualRisk;

    /// <summary>An agreed guard band.</summary>
    public double? Guard { get; init; }

    /// <summary>How the mill's lots lie.</summary>
    public PosedLots? Lots { get; init; }

    /// <summary>Risks over all lots that a guard band is wanted for.</summary>
    public PosedRisks? Wanted { get; init; }

    /// <summary>The laboratory that measures again.</summary>
    public CustomerLaboratory? Customer { get; init; }

    /// <summary>The chance from which on release is advised.</summary>
    public double Policy { get; init; } = ConformitySpec.UsualPolicy;

    /// <summary>What a case looks like.</summary>
    public static CaseHelp Help { get; } = new(
        $$"""
        {
          "results": [ one unit and basis ], "samples"?: of how many different samples, one each when left out,
          "uncertainty": { "oneResult": standard uncertainty of one result, "bias"?: its part that all results of the instrument share, "sampling"?, "lot"?: the lot's own spread },
          "lower"?, "upper"?, "rule"?: "MeanOf" | "Single" | "LotRange", "needed"?: results a mean needs, "decision"?: "Simple" | "Guarded", "buyersRisk"?: {{GuardBand.UsualRisk}}, "guard"?: an agreed band,
          "lots"?: { "mean", "deviation" } of the mill's lots, "wanted"?: { "acceptedOutside"?, "rejectedInside"? } with lots: risks over all of them that a guard band is wanted for, "customer"?: { "uncertainty", "bias"?, "biasUncertainty"? } of the laboratory that measures again,
          "policy"?: {{ConformitySpec.UsualPolicy}}, the chance inside from which on release is advised
        }
        """,
        """
        { "results": [ 11.70, 11.80, 11.69, 11.77 ], "uncertainty": { "oneResult": 0.15 }, "lower": 11.7, "upper": 12.1, "customer": { "uncertainty": 0.2 } }
        """);

    /// <summary>The question it poses.</summary>
    public ConformitySpec Spec => new(Results, new ResultSpread(Uncertainty.OneResult) { Bias = Uncertainty.Bias, Sampling = Uncertainty.Sampling, Lot = Uncertainty.Lot }, new Tolerance(Lower, Upper))
    {
        Samples = Samples, Rule = Rule, Needed = Needed, IsGuarded = Decision == DecisionRule.Guarded, BuyersRisk = BuyersRisk, Guard = Guard, Lots = Lots is { } lots ? new NormalBelief(lots.Mean, lots.Deviation) : null,
        Customer = Customer, Policy = Policy,
    };

    /// <summary>Reads a case; what cannot be is a fault too.</summary>
    public static Parsed<LabConformCase> Read(Stream stream) => SeasonCase.ReadAs<LabConformCase>(stream).Then(posed => posed.Faults() is { Count: > 0 } faults ? Parsing.Failed<LabConformCase>(faults) : Parsing.Got(posed));

    private IReadOnlyList<Fault> Faults() =>
    [
        .. Decision is DecisionRule.Simple or DecisionRule.Guarded ? Array.Empty<Fault>() : [Fault.AtPath("$.decision", $"{Decision}", "Simple or Guarded: whether it is a matter of safety stands in a specification")],
        .. Guard is not null && Decision != DecisionRule.Guarded ? [Fault.Told("$.guard", "A guard band is for the decision Guarded.")] : Array.Empty<Fault>(),
        .. Wanted is not null && (Lots is null || Uncertainty.OneResult <= 0) ? [Fault.Told("$.wanted", "A guard band for a risk over all lots needs lots, and an uncertainty above 0.")] : Array.Empty<Fault>(),
        .. new[] { Wanted?.AcceptedOutside, Wanted?.RejectedInside }.OfType<double>().Any(risk => !(risk is > 0 and <= 0.5)) ? [Fault.Told("$.wanted", "A risk to be kept is above 0 and at most 0.5.")] : Array.Empty<Fault>(),
        .. Spec.Faults().Select(f => Fault.Told("$", f)),
    ];
}

/// <summary>Standard deviations in the unit of the results.</summary>
public sealed record PosedSpread
{
    /// <summary>One result, its bias part included.</summary>
    public required double OneResult { get; init; }

    /// <summary>What all results of the instrument share.</summary>
    public double Bias { get; init; }

    /// <summary>From one sample to the next.</summary>
    public double Sampling { get; init; }

    /// <summary>From one part of the lot to another.</summary>
    public double Lot { get; init; }
}

/// <summary>How the mill's lots lie.</summary>
/// <param name="Mean">Their mean.</param>
/// <param name="Deviation">Their standard deviation, above 0.</param>
public sealed record PosedLots(double Mean, double Deviation);

/// <summary>Risks over all lots.</summary>
public sealed record PosedRisks
{
    /// <summary>The buyer's: a lot is outside and accepted.</summary>
    public double? AcceptedOutside { get; init; }

    /// <summary>The mill's: a lot is inside and turned away.</summary>
    public double? RejectedInside { get; init; }
}
