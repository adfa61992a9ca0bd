using System.Globalization;
using Evengrist.Laboratory.Conformity;
using Evengrist.Ledger;
using Evengrist.Quantities;

namespace Evengrist.Laboratory.Specifications;

/// <summary>What a flour is to be in one property.</summary>
/// <param name="What">The property.</param>
/// <param name="Unit">One of its units.</param>
/// <param name="Source">Who says so: a contract, the customer's sheet, the mill; never empty.</param>
public sealed record SpecificationItem(Property What, string Unit, string Source)
{
    /// <summary>The moisture basis of limits and results; stated for a share of solids, none otherwise.</summary>
    public Basis Basis { get; init; }

    /// <summary>The method results must be by, as readings name it; empty where any will do.</summary>
    public string Method { get; init; } = "";

    /// <summary>The least; null for no lower limit.</summary>
    public decimal? Lower { get; init; }

    /// <summary>The most; null for no upper limit.</summary>
    public decimal? Upper { get; init; }

    /// <summary>What is aimed at; null where nothing is.</summary>
    public decimal? Target { get; init; }

    /// <summary>What of the results is held against the limits.</summary>
    public ResultRule Rule { get; init; } = ResultRule.MeanOf;

    /// <summary>How many results a mean needs.</summary>
    public int Needed { get; init; } = 1;

    /// <summary>How a result near a limit is decided.</summary>
    public DecisionRule Decision { get; init; } = DecisionRule.Simple;

    /// <summary>Whether it is a matter of safety.</summary>
    public bool Safety { get; init; }

    /// <summary>The buyer's risk at the limit that a guard band keeps.</summary>
    public double BuyersRisk { get; init; } = GuardBand.UsualRisk;

    /// <summary>The guard band in <see cref="Unit"/> where it is agreed; null for that of <see cref="BuyersRisk"/>.</summary>
    public decimal? Guard { get; init; }

    /// <summary>Whether a lot without a result of it can be released and certified; false for what is tested now and then.</summary>
    public bool Required { get; init; } = true;

    /// <summary>The lot's own spread, one standard deviation in <see cref="Unit"/>; 0 where it is not known.</summary>
    public double LotSpread { get; init; }

    /// <summary>What all results of one instrument are off by together, one standard deviation in <see cref="Unit"/>; 0 where none is stated.</summary>
    public double BiasPart { get; init; }

    /// <summary>The laboratory that measures again where the flour arrives; null where nothing is known of it.</summary>
    public CustomerLaboratory? Customer { get; init; }

    /// <summary>Whether a guard band is kept.</summary>
    public bool IsGuarded => Decision == DecisionRule.Guarded || (Decision == DecisionRule.GuardedForSafety && Safety);

    /// <summary>The limits for a model.</summary>
    public Tolerance Tolerance => new((double?)Lower, (double?)Upper);

    /// <summary>Property with unit and basis: <c>protein, % 14mb</c>.</summary>
    public string Title => $"{What.Words()}, {Unit}{(Basis.IsStated ? " " + Basis : "")}";

    /// <summary>The limits in words: <c>11.7 to 12.1</c>, <c>at most 0.46</c>.</summary>
    public string Limits => this switch
    {
        { Lower: { } low, Upper: { } high } => FormattableString.Invariant($"{low} to {high}"),
        { Lower: { } low } => FormattableString.Invariant($"at least {low}"),
        _ => FormattableString.Invariant($"at most {Upper}"),
    };

    /// <summary>The decision rule in words, its guard band included.</summary>
    public string DecisionWords => !IsGuarded ? "simple acceptance: a result within the limits is accepted, the risk is shared"
        : Guard is { } band ? string.Create(CultureInfo.InvariantCulture, $"guarded acceptance: accepted only {band} {Unit} or more within the limits")
        : string.Create(CultureInfo.InvariantCulture, $"guarded acceptance: a value on the limit is accepted with a chance of at most {100 * BuyersRisk:0.##} %");

    /// <summary>What of the results is judged, in words.</summary>
    public string RuleWords => Rule switch
    {
        ResultRule.Single => "each result by itself",
        ResultRule.LotRange => "every part of the lot",
        _ => Needed == 1 ? "mean of the results" : $"mean of at least {Needed} results",
    };

    /// <summary>What is wrong, each a sentence that says what to do; empty where nothing is.</summary>
    public IReadOnlyList<string> Faults()
    {
        var posed = new ConformitySpec([0], new ResultSpread(BiasPart) { Bias = BiasPart, Lot = LotSpread }, Tolerance) { Rule = Rule, Needed = Needed, BuyersRisk = BuyersRisk, Guard = (double?)Guard, Customer = Customer };
        var name = What.Words();
        return
        [
            .. Enum.IsDefined(What) && What != Property.None ? Array.Empty<string>() : ["An item names its property."],
            .. new[] { Lower, Upper, Target }.OfType<decimal>().Select(v => Readings.Fault(What, v, Unit, Basis)).OfType<string>().Distinct().Select(f => $"{name}: {f}"),
            .. posed.Faults().Select(f => $"{name}: {f}"),
            .. What == Property.FallingNumber && Rule != ResultRule.Single ? [$"{name}: falling numbers never average: take the rule Single."] : Array.Empty<string>(),
            .. Target < Lower || Target > Upper ? [$"{name}: the target {Target} lies outside the limits."] : Array.Empty<string>(),
            .. Enum.IsDefined(Decision) && Decision != DecisionRule.None ? Array.Empty<string>() : [$"{name}: say how a result near a limit is decided."],
            .. string.IsNullOrWhiteSpace(Source) ? [$"{name}: say who asks for it (source)."] : Array.Empty<string>(),
        ];
    }
}
