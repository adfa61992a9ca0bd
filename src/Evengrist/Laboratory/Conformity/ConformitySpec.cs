namespace Evengrist.Laboratory.Conformity;

/// <summary>Results of one property of a lot and what they are held against; all in one unit and basis.</summary>
/// <param name="Results">The results as measured, at least one.</param>
/// <param name="Spread">Why they differ from the lot's mean.</param>
/// <param name="Tolerance">The limits.</param>
public sealed record ConformitySpec(IReadOnlyList<double> Results, ResultSpread Spread, Tolerance Tolerance)
{
    /// <summary>Most results of one case [ours].</summary>
    public const int Most = 1000;

    /// <summary>The chance inside from which on release is advised where nothing else is said [practice: 0.95].</summary>
    public const double UsualPolicy = 0.95;

    /// <summary>How many different samples the results are of; null for one each.</summary>
    public int? Samples { get; init; }

    /// <summary>What of the results is held against the limits.</summary>
    public ResultRule Rule { get; init; } = ResultRule.MeanOf;

    /// <summary>How many results the mean of <see cref="ResultRule.MeanOf"/> needs, at least 1.</summary>
    public int Needed { get; init; } = 1;

    /// <summary>Whether a guard band is kept.</summary>
    public bool IsGuarded { get; init; }

    /// <summary>The buyer's risk at the limit that the guard band keeps, above 0 and at most 0.5.</summary>
    public double BuyersRisk { get; init; } = GuardBand.UsualRisk;

    /// <summary>The guard band itself, in the unit of the results, where it is fixed by agreement; null for that of <see cref="BuyersRisk"/>.</summary>
    public double? Guard { get; init; }

    /// <summary>How the mill's lots lie when nothing is measured yet; null where that is not used.</summary>
    public NormalBelief? Lots { get; init; }

    /// <summary>The laboratory that measures again; null where nothing is known of it.</summary>
    public CustomerLaboratory? Customer { get; init; }

    /// <summary>The chance inside from which on release is advised, above 0.5 and below 1.</summary>
    public double Policy { get; init; } = UsualPolicy;

    /// <summary>What is wrong, each a sentence that says what to do; empty where nothing is.</summary>
    public IReadOnlyList<string> Faults() =>
    [
        .. Results.Count is >= 1 and <= Most ? Array.Empty<string>() : [$"There are {Results.Count} results: 1 to {Most} are judged."],
        .. Results.All(double.IsFinite) ? Array.Empty<string>() : ["A result is a finite number."],
        .. Spread.Fault is { } spread ? [spread] : Array.Empty<string>(),
        .. Tolerance.Fault is { } limits ? [limits] : Array.Empty<string>(),
        .. Samples is null || (Samples >= 1 && Samples <= Results.Count) ? Array.Empty<string>() : [$"The results are of 1 to {Results.Count} samples; got {Samples}."],
        .. Enum.IsDefined(Rule) && Rule != ResultRule.None ? Array.Empty<string>() : ["Say which rule holds: a single result, a mean, or the range of the lot."],
        .. Needed is >= 1 and <= Most ? Array.Empty<string>() : [$"A mean is of 1 to {Most} results; got {Needed}."],
        .. BuyersRisk is > 0 and <= 0.5 ? Array.Empty<string>() : ["The buyer's risk is above 0 and at most 0.5."],
        .. Guard is null or (>= 0 and < double.PositiveInfinity) ? Array.Empty<string>() : ["A guard band is at least 0."],
        .. Lots is null || (double.IsFinite(Lots.Mean) && Lots.Deviation > 0 && double.IsFinite(Lots.Deviation)) ? Array.Empty<string>() : ["The mill's lots have a mean and a standard deviation above 0."],
        .. Customer?.Fault is { } customer ? [customer] : Array.Empty<string>(),
        .. Policy is > 0.5 and < 1 ? Array.Empty<string>() : ["The chance from which on release is advised lies above 0.5 and below 1."],
    ];
}
