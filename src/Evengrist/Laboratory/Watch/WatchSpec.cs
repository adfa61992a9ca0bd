using System.Globalization;

namespace Evengrist.Laboratory.Watch;

/// <summary>Pairs to be judged, and what is taken as known. Values in one unit, on one basis.</summary>
/// <param name="Pairs">In the order of time.</param>
public sealed record WatchSpec(IReadOnlyList<WatchdogPair> Pairs)
{
    /// <summary>Most pairs judged at once [ours].</summary>
    public const int Most = 500;

    /// <summary>As how many pairs stated deviations count [ours]: as many as an instrument is commonly validated on at the least.</summary>
    public const double UsualCounts = 20;

    /// <summary>Fewest pairs of a quiet period [ours].</summary>
    public const int FewestQuiet = 4;

    /// <summary>One standard deviation of a reference result; null where not stated.</summary>
    public double? ReferenceDeviation { get; init; }

    /// <summary>One standard deviation of instrument less reference on the same flour, the reference's own included (an instrument's SEP); null where not stated.</summary>
    public double? PairDeviation { get; init; }

    /// <summary>As how many pairs the stated deviations count beside the pairs' own steps; null to take them as known.</summary>
    public double? StatedCounts { get; init; } = UsualCounts;

    /// <summary>From how many of the first pairs, in which nothing moved, a pair's standard deviation is taken instead; null where it is stated.</summary>
    public int? Quiet { get; init; }

    /// <summary>How far the flour itself goes up and down from pair to pair, one standard deviation; null to find it from the references.</summary>
    public double? Swing { get; init; }

    /// <summary>One standard deviation of a reading of the wheat; the reference's where null.</summary>
    public double? WheatDeviation { get; init; }

    /// <summary>Instrument less reference as last set, 0 after a bias was set.</summary>
    public double KnownBias { get; init; }

    /// <summary>How surely that is known, one standard deviation as a share of a pair's; 0.25 [ours]: as after sixteen pairs.</summary>
    public double BiasShare { get; init; } = 0.25;

    /// <summary>Chance of a change of one kind from one pair to the next, above 0, for the probabilities [ours]: one in two hundred.</summary>
    public double ChangePerPair { get; init; } = 0.005;

    /// <summary>How many times as much fit is asked for as usual (<see cref="AskedFit"/>), above 0: 2 for fewer false alarms and later verdicts.</summary>
    public double AskTimes { get; init; } = 1;

    /// <summary>So many times the usual fit is asked for, the deviations' own doubt included.</summary>
    public double Asked => AskTimes * (StatedCounts is null && Quiet is null ? 1 : AskedFit.LearntTimes);

    /// <summary>Allowance k of the plain cumulative sum of differences, in the unit; null for 0.4 of a pair's standard deviation.</summary>
    public double? Allowance { get; init; }

    /// <summary>Limit h of the plain cumulative sum, in the unit; null for 3 of a pair's standard deviations.</summary>
    public double? Limit { get; init; }

    /// <summary>Whether the wheat was read with every pair.</summary>
    public bool HasWheat => Pairs.Count > 0 && Pairs.All(p => p.Wheat is not null);

    /// <summary>What is wrong, each a sentence that says what to do; empty where nothing is.</summary>
    public IReadOnlyList<string> Faults() =>
    [
        .. Pairs.Count is >= 2 and <= Most ? Array.Empty<string>() : [$"There are {Pairs.Count} pairs: 2 to {Most} are judged."],
        .. Pairs.All(p => double.IsFinite(p.Reference) && double.IsFinite(p.Instrument) && double.IsFinite(p.Wheat ?? 0)) ? Array.Empty<string>() : ["A value is no number."],
        .. HasWheat || Pairs.All(p => p.Wheat is null) ? Array.Empty<string>() : ["The wheat is read with every pair or with none: leave out the pairs without it, or the wheat."],
        .. Size(ReferenceDeviation, "of a reference result"), .. Size(PairDeviation, "of a pair"), .. Size(WheatDeviation, "of a reading of the wheat"),
        .. Swing is null or (>= 0 and < 1e6) ? Array.Empty<string>() : ["The flour's swing from pair to pair is 0 or more."],
        .. Quiet is not null || (ReferenceDeviation is not null && PairDeviation is not null) ? Array.Empty<string>() : ["How unsure a result is has to be known: give one standard deviation of the reference and of a pair, or a quiet period of first pairs."],
        .. Quiet is not null || !(ReferenceDeviation >= PairDeviation) ? Array.Empty<string>() : ["A pair's standard deviation has the reference's within it and is larger."],
        .. StatedCounts is null or (> 0 and <= 10_000) ? Array.Empty<string>() : ["Stated deviations count as some pairs, above 0."],
        .. Quiet is null || (Quiet >= FewestQuiet && Quiet <= Pairs.Count) ? Array.Empty<string>() : [$"A quiet period is {FewestQuiet} to {Pairs.Count} of the first pairs; got {Quiet}."],
        .. double.IsFinite(KnownBias) && BiasShare is > 0 and <= 1000 ? Array.Empty<string>() : ["The known bias is a number, and its share of a pair's standard deviation above 0."],
        .. ChangePerPair is > 0 and <= 0.1 ? Array.Empty<string>() : ["The chance of a change from pair to pair is above 0 and at most 0.1."],
        .. AskTimes is > 0 and <= 1e6 ? Array.Empty<string>() : ["A verdict asks for some times the usual fit, above 0."],
        .. Allowance is null or (>= 0 and < 1e6) && Limit is null or (> 0 and < 1e6) ? Array.Empty<string>() : ["A cumulative sum has an allowance of 0 or more and a limit above 0."],
    ];

    private static IEnumerable<string> Size(double? deviation, string what) =>
        deviation is null or (> 0 and < 1e6) ? [] : [string.Create(CultureInfo.InvariantCulture, $"One standard deviation {what} is above 0; got {deviation}.")];
}
