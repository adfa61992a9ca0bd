using System.Globalization;
using Evengrist.Milling.Drift;
using Evengrist.Milling.Learning;
using Evengrist.Plant.Cases;
using NodaTime;

namespace Evengrist.Plant.Answers;

/// <summary>What drifted in a mill by its own tests.</summary>
/// <param name="Found">What drifted, what costs most first.</param>
/// <param name="Series">Every figure measured twice or more with its own band.</param>
/// <param name="Remarks">What must be said with it.</param>
public sealed record MillDriftAnswer(IReadOnlyList<DriftAnswer> Found, IReadOnlyList<DriftSeries> Series, IReadOnlyList<string> Remarks)
{
    /// <summary>Looks through a case's tests, or says why not.</summary>
    public static Reply<MillDriftAnswer> To(MillSolveCase posed)
    {
        ArgumentNullException.ThrowIfNull(posed);
        string[] undated = [.. posed.Tests.Where(t => t.At is null).Select(t => $"{t.Name}: when was it taken? Give it \"at\", as 2025-09-01T06:00:00Z.")];
        if (undated.Length > 0)
        {
            return new Reply<MillDriftAnswer>(null, undated);
        }

        return To([.. posed.MillTests.Zip(posed.Tests, (test, typed) => new DatedTest(typed.At!.Value, test))], posed.Prices);
    }

    /// <summary>Looks through dated tests, or says why not.</summary>
    /// <param name="tests">The tests.</param>
    /// <param name="prices">What flour and feed bring; null for no money.</param>
    public static Reply<MillDriftAnswer> To(IReadOnlyList<DatedTest> tests, DriftPrices? prices)
    {
        ArgumentNullException.ThrowIfNull(tests);
        return MillDrift.Of(tests, MillFit.Of([.. tests.Select(t => t.Test)]), prices) switch
        {
            DriftLooked looked => new Reply<MillDriftAnswer>(new MillDriftAnswer([.. looked.Found.Select(Of)], looked.Series, Remarked(prices)), []),
            DriftNotLooked not => new Reply<MillDriftAnswer>(null, not.Reasons),
            var other => throw new InvalidOperationException($"Looking for drift ended as {other.GetType().Name}."),
        };
    }

    /// <summary>What keeps prices from being meant, in a sentence; null where nothing does.</summary>
    public static string? FaultOf(DriftPrices prices)
    {
        ArgumentNullException.ThrowIfNull(prices);
        return prices.Feed < 0 || prices.Flour < prices.Feed ? "Flour brings no less than feed, and feed no less than nothing: give both in money per tonne." : null;
    }

    /// <summary>How much of a drift there is by the newest test, ± k = 2, in words.</summary>
    public static string Amount(DriftFound found)
    {
        ArgumentNullException.ThrowIfNull(found);
        var (of, half) = (found.Amount.Value, 2 * found.Amount.Uncertainty);
        return found.Cause.Kind switch
        {
            DriftKind.Torn => N($"{100 * of:0.0} ± {100 * half:0.0} % of what should stay over it falls through"),
            DriftKind.WetFeed => N($"{of:0.0} ± {half:0.0} points of moisture more"),
            DriftKind.Choke => N($"size that passes {100 * (Math.Exp(of) - 1):+0;−0} ± {100 * half:0} %"),
            _ => N($"nip {100 * (Math.Exp(of) - 1):+0;−0} ± {100 * half:0} %"),
        };
    }

    /// <summary>What to measure next to be sure of a drift, in words; null where nothing would tell or it is sure enough.</summary>
    public static string? Next(DriftFound found)
    {
        ArgumentNullException.ThrowIfNull(found);
        return found.Next is { } next ? $"{next.What}: {next.Times} time{(next.Times == 1 ? "" : "s")} to expect odds of twenty to one" : null;
    }

    /// <summary>A cause in words.</summary>
    public static string Words(DriftCause cause)
    {
        ArgumentNullException.ThrowIfNull(cause);
        return cause.Kind switch
        {
            DriftKind.Wear => $"{cause.Passage} nips less and less: wear",
            DriftKind.Moved => $"{cause.Passage} nips otherwise from one day on, with no gap written down",
            DriftKind.Torn => $"cloth {cause.Outlet} of {cause.Passage} torn, or its frame leaks",
            DriftKind.Choke => $"cloths of {cause.Passage} let less through: blinded or choked",
            _ => "wheat at first break wetter than written down",
        };
    }

    private static DriftAnswer Of(DriftFound found) => new(
        Words(found.Cause), $"{found.Cause.Kind}", found.Cause.Passage, found.Cause.Kind is DriftKind.Torn ? found.Cause.Outlet : null, found.Since, Amount(found),
        found.Probability, [.. found.Rivals.Select(r => N($"{Words(r.Cause)} ({100 * r.Probability:0} in 100)"))], found.Evidence, Next(found),
        PlusMinus.Of(found.Cost.FlourPoints), found.Cost.AshPoints,
        found.Cost.MoneyPerDay is { } money ? PlusMinus.Of(money) : null, found.Cause.ToLookAt);

    private static string[] Remarked(DriftPrices? prices) =>
    [
        prices is null ? "No prices were given, so drifts are ranked by the flour they cost." : "Costs are of flour and feed at the prices given, at the newest settings and wheat.",
        .. Cautions,
    ];

    /// <summary>What must be said with every drift.</summary>
    public static IReadOnlyList<string> Cautions { get; } =
    [
        "Flour is counted at the ash it would have without the drift: where ash rose, the streams of most ash go to feed until it is back; no credit is given where it fell.",
        "Odds before data and usual sizes of drifts are ours. A cause is a suspicion until a person has looked; two causes that do the same to the figures measured cannot be told apart.",
        MillSolveAnswer.Caution,
    ];

    private static string N(FormattableString text) => text.ToString(CultureInfo.InvariantCulture);
}

/// <summary>A drift found, in words and figures. Every ± is k = 2.</summary>
/// <param name="What">What it is.</param>
/// <param name="Kind">The same as a word.</param>
/// <param name="Passage">Code of the passage.</param>
/// <param name="Outlet">Outlet of the cloth, from 0; null for the rest.</param>
/// <param name="Since">The test it shows from; for wear, the test it grows after.</param>
/// <param name="Amount">How much by the newest test.</param>
/// <param name="Probability">How likely, among all causes looked at and none.</param>
/// <param name="Else">What else it may be.</param>
/// <param name="Evidence">The figures that tell most, per cent.</param>
/// <param name="Next">What to measure next to be sure; null where nothing would tell or it is sure enough.</param>
/// <param name="FlourPoints">Change of flour at the same ash, points of the wheat to first break.</param>
/// <param name="AshPointsDry">Change of all flour's ash with no stream taken out, points of dry matter.</param>
/// <param name="CostPerDay">Loss in 24 h; null without prices.</param>
/// <param name="ToLookAt">What a person looks at.</param>
public sealed record DriftAnswer(
    string What, string Kind, string Passage, int? Outlet, Instant Since, string Amount, double Probability, IReadOnlyList<string> Else, IReadOnlyList<DriftEvidence> Evidence,
    string? Next, PlusMinus FlourPoints, double AshPointsDry, PlusMinus? CostPerDay, string ToLookAt);
