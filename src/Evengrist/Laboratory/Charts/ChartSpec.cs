using System.Globalization;

namespace Evengrist.Laboratory.Charts;

/// <summary>What is to be charted.</summary>
/// <param name="Groups">Values in the order of time, one unit and basis: groups of one size, or single values as groups of one.</param>
public sealed record ChartSpec(IReadOnlyList<IReadOnlyList<double>> Groups)
{
    /// <summary>Most groups of one chart [ours].</summary>
    public const int Most = 10_000;

    /// <summary>From how many of the first the limits are taken; null for all.</summary>
    public int? Period { get; init; }

    /// <summary>Centre and standard deviation that were frozen, of single values; null to take the limits from the period.</summary>
    public (double Centre, double Sigma)? Frozen { get; init; }

    /// <summary>What the standard deviation of groups is found from.</summary>
    public SigmaEstimate From { get; init; } = SigmaEstimate.GroupRange;

    /// <summary>The mean that is wanted; the period's own where null.</summary>
    public double? Target { get; init; }

    /// <summary>λ and L of a moving mean; null for none.</summary>
    public (double Weight, double Width)? MovingMean { get; init; }

    /// <summary>k and h of cumulative sums, in standard deviations of what is charted; null for none.</summary>
    public (double Allowance, double Limit)? Sums { get; init; }

    /// <summary>The rules for runs that are looked for.</summary>
    public IReadOnlyList<RunRule> Rules { get; init; } = RunRules.Four;

    /// <summary>The flour's own limits, for capability; null for none.</summary>
    public double? Lower { get; init; }

    /// <summary>The flour's own limits, for capability; null for none.</summary>
    public double? Upper { get; init; }

    /// <summary>Values to a group.</summary>
    public int Size => Groups.Count > 0 ? Groups[0].Count : 0;

    /// <summary>What is wrong, each a sentence that says what to do; empty where nothing is.</summary>
    public IReadOnlyList<string> Faults() =>
    [
        .. Groups.Count is >= 2 and <= Most ? Array.Empty<string>() : [$"There are {Groups.Count} values or groups: 2 to {Most} are charted."],
        .. Groups.Any(g => g.Count != Size) || (Groups.Count > 0 && Size is 0 or > ChartConstants.Most) ? [$"Groups are all of one size, 1 to {ChartConstants.Most} values: chart those that differ apart, or their single values."] : Array.Empty<string>(),
        .. Groups.SelectMany(g => g).All(double.IsFinite) ? Array.Empty<string>() : ["A value is no number."],
        .. Period is null || (Period >= 2 && Period <= Groups.Count) ? Array.Empty<string>() : [$"Limits are taken from 2 to {Groups.Count} of the first values; got {Period}."],
        .. Frozen is null || (Size <= 1 && Frozen is { Sigma: > 0 and < double.PositiveInfinity } f && double.IsFinite(f.Centre)) ? Array.Empty<string>() : ["Frozen limits are of single values, with a standard deviation above 0."],
        .. Size <= 1 || From is SigmaEstimate.GroupRange or SigmaEstimate.GroupDeviation ? Array.Empty<string>() : ["The spread of groups is found from their ranges or their standard deviations."],
        .. MovingMean is null or { Weight: > 0 and <= 1, Width: > 0 and <= 10 } ? Array.Empty<string>() : ["A moving mean has a weight above 0 and at most 1, and a width above 0 and at most 10."],
        .. Sums is null or { Allowance: >= 0 and <= 10, Limit: > 0 and <= 100 } ? Array.Empty<string>() : ["Cumulative sums have an allowance from 0 to 10 and a limit above 0 and at most 100 standard deviations."],
        .. Rules.Any(r => !Enum.IsDefined(r) || r == RunRule.None) ? ["There is a rule that is none."] : Array.Empty<string>(),
        .. Lower >= Upper ? [string.Create(CultureInfo.InvariantCulture, $"The lower limit {Lower} lies below the upper; got {Upper}.")] : Array.Empty<string>(),
    ];
}
