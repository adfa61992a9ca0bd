using System.Diagnostics.CodeAnalysis;
using Evengrist.Ledger;
using MathNet.Numerics.Statistics;
using NodaTime;

namespace Evengrist.Laboratory.Charts;

/// <summary>Limits of a chart of single values, frozen from a stated period and kept: they are never reckoned anew in silence; a new freeze is a new version with its reason.</summary>
/// <param name="Place">Code of the place, a unit or a bin.</param>
/// <param name="What">The property.</param>
/// <param name="Method">The method whose readings are charted.</param>
/// <param name="From">The period's beginning.</param>
/// <param name="Until">The period's end.</param>
/// <param name="Count">Readings of the period.</param>
/// <param name="Centre">Mean of the period, per cent on 14 % moisture where the property has a basis, else in its own unit.</param>
/// <param name="Sigma">One standard deviation, by <paramref name="Estimate"/>.</param>
/// <param name="Estimate">How it was found.</param>
/// <param name="Rules">The rules that are looked for.</param>
/// <param name="Reason">Why it was frozen.</param>
/// <param name="Target">What is wanted; null to chart against the centre.</param>
/// <param name="Lower">The flour's own lower limit, for capability; null for none.</param>
/// <param name="Upper">The flour's own upper limit; null for none.</param>
/// <param name="Flour">The flour a mill unit made; empty for any other place.</param>
public sealed record FrozenLimits(
    string Place, Property What, string Method, Instant From, Instant Until, int Count, double Centre, double Sigma, SigmaEstimate Estimate, IReadOnlyList<RunRule> Rules, string Reason, double? Target = null, double? Lower = null, double? Upper = null, string Flour = "")
{
    /// <summary>The kind of paper they are kept as.</summary>
    public const string PaperKind = "chart-limits";

    /// <summary>Fewest readings of a period [ours]; twenty or more are usual.</summary>
    public const int Fewest = 10;

    /// <summary>What they are kept under.</summary>
    public string Code => CodeOf(Place, Flour, What, Method);

    /// <summary>What limits of a place, its flour, a property and a method are kept under.</summary>
    public static string CodeOf(string place, string flour, Property what, string method) => $"{place}{(flour.Length > 0 ? " " + flour : "")} {what} {method}";

    /// <summary>What is wrong, each a sentence that says what to do; empty where nothing is.</summary>
    public IReadOnlyList<string> Faults() =>
    [
        .. From < Until ? Array.Empty<string>() : ["The period begins before it ends."],
        .. Count >= Fewest ? Array.Empty<string>() : [$"There are {Count} readings in that period: {Fewest} or more are needed, 20 or more are usual. Take a longer one."],
        .. Sigma > 0 || Count < Fewest ? Array.Empty<string>() : ["The readings of that period do not differ at all: no limits can be taken from them."],
        .. Lower >= Upper ? ["The lower limit lies below the upper."] : Array.Empty<string>(),
        .. Rules.Count > 0 && Rules.All(r => Enum.IsDefined(r) && r != RunRule.None) ? Array.Empty<string>() : ["Choose one rule or more."],
        .. string.IsNullOrWhiteSpace(Reason) ? ["Say why limits are frozen now: a first period, a new mix, a mended machine."] : Array.Empty<string>(),
    ];

    /// <summary>Freezes: mean of the period, standard deviation from its moving range over 1.128.</summary>
    /// <param name="place">Code of the place.</param>
    /// <param name="what">The property.</param>
    /// <param name="method">The method.</param>
    /// <param name="period">From when until when.</param>
    /// <param name="values">The period's readings in the order of time.</param>
    /// <param name="wanted">Target and limits of the flour.</param>
    /// <param name="rules">The rules.</param>
    /// <param name="reason">Why.</param>
    public static FrozenLimits Of(string place, Property what, string method, (Instant From, Instant Until) period, IReadOnlyList<double> values, (double? Target, double? Lower, double? Upper) wanted, IReadOnlyList<RunRule> rules, string reason)
    {
        ArgumentNullException.ThrowIfNull(values);
        var sigma = values.Count >= IndividualsChart.Fewest ? IndividualsChart.Of(values).Sigma : 0;
        return new(place, what, method, period.From, period.Until, values.Count, values.Count > 0 ? values.Mean() : 0, sigma, SigmaEstimate.MovingRange, rules, reason, wanted.Target, wanted.Lower, wanted.Upper);
    }

    /// <summary>The chart of single values by these limits, with a moving mean of weight 0.2 and width 3 and cumulative sums of allowance 0.5 and limit 5 standard deviations (usual choices [memory]).</summary>
    /// <param name="values">In the order of time, on the basis of the limits.</param>
    /// <returns>The chart; null with fewer than two values, or where a value is no number.</returns>
    public ChartOutcome? Chart(IEnumerable<double> values) => ChartModel.Of(new ChartSpec([.. values.Select(v => (IReadOnlyList<double>)[v])])
    {
        Frozen = (Centre, Sigma), Target = Target, Rules = Rules, MovingMean = (0.2, 3), Sums = (0.5, 5), Lower = Lower, Upper = Upper,
    });

    /// <summary>As JSON.</summary>
    public string ToJson() => LabJson.Write(this);

    /// <summary>Reads them back.</summary>
    public static bool TryRead(string json, [NotNullWhen(true)] out FrozenLimits? limits, out IReadOnlyList<string> faults) => LabJson.TryRead(json, l => l.Faults(), out limits, out faults);
}
