using Evengrist.Laboratory.Watch;

namespace Evengrist.Plant.Cases;

/// <summary>Pairs of reference and instrument posed in JSON, to be judged.</summary>
public sealed record LabWatchCase
{
    /// <summary>Pairs in the order of time.</summary>
    public IReadOnlyList<PosedPair> Pairs { get; init; } = [];

    /// <summary>One standard deviation of a reference result.</summary>
    public double? ReferenceDeviation { get; init; }

    /// <summary>One standard deviation of instrument less reference.</summary>
    public double? PairDeviation { get; init; }

    /// <summary>Whether both are taken as known, and not laid beside the pairs' own steps.</summary>
    public bool Known { get; init; }

    /// <summary>From how many quiet first pairs a pair's standard deviation is taken instead.</summary>
    public int? Quiet { get; init; }

    /// <summary>One standard deviation of the flour from pair to pair; from the references where left out.</summary>
    public double? Swing { get; init; }

    /// <summary>Instrument less reference as last set.</summary>
    public double KnownBias { get; init; }

    /// <summary>How surely that is known, as a share of a pair's standard deviation.</summary>
    public double BiasShare { get; init; } = 0.25;

    /// <summary>Chance of a change from pair to pair, for the probabilities.</summary>
    public double ChangePerPair { get; init; } = 0.005;

    /// <summary>How many times as much fit a verdict asks for as usual.</summary>
    public double AskTimes { get; init; } = 1;

    /// <summary>k of the plain sum, in the unit.</summary>
    public double? Allowance { get; init; }

    /// <summary>h of the plain sum, in the unit.</summary>
    public double? Limit { get; init; }

    /// <summary>What a case looks like.</summary>
    public static CaseHelp Help { get; } = new(
        """
        {
          "pairs": [ { "reference", "instrument", "wheat"?: a reading of the wheat before the mill, with every pair or none } ... in the order of time, one unit and basis ],
          "referenceDeviation", "pairDeviation": one standard deviation of the reference, of instrument less reference, "known"?: true to take them as known,
          or "quiet": from how many first pairs, at least 4, in which nothing moved, a pair's is taken,
          "swing"?: one standard deviation of the flour from pair to pair, "knownBias"?: 0, "biasShare"?: 0.25, how surely that is known in parts of pairDeviation,
          "changePerPair"?: 0.005, "askTimes"?: 1, how much fit a verdict asks for beside the usual, "allowance"?, "limit"?: k and h of the plain cumulative sum
        }
        """,
        """
        { "referenceDeviation": 0.05, "pairDeviation": 0.12, "allowance": 0.05, "limit": 0.4,
          "pairs": [ { "reference": 11.86, "instrument": 11.90 }, { "reference": 11.91, "instrument": 11.84 }, { "reference": 11.78, "instrument": 11.86 }, { "reference": 11.95, "instrument": 11.93 },
                     { "reference": 11.88, "instrument": 12.12 }, { "reference": 11.83, "instrument": 12.15 }, { "reference": 11.90, "instrument": 12.14 }, { "reference": 11.97, "instrument": 12.27 } ] }
        """);

    /// <summary>The question it poses.</summary>
    public WatchSpec Spec => new([.. Pairs.Select(p => new WatchdogPair(p.Reference, p.Instrument, p.Wheat))])
    {
        ReferenceDeviation = ReferenceDeviation, PairDeviation = PairDeviation, StatedCounts = Known ? null : WatchSpec.UsualCounts, Quiet = Quiet, Swing = Swing, KnownBias = KnownBias,
        BiasShare = BiasShare, ChangePerPair = ChangePerPair, AskTimes = AskTimes, Allowance = Allowance, Limit = Limit,
    };

    /// <summary>Reads a case; what cannot be is a fault too.</summary>
    public static Parsed<LabWatchCase> Read(Stream stream) => SeasonCase.ReadAs<LabWatchCase>(stream).Then(posed => posed.Pairs.Any(p => p is null) ? Parsing.Failed<LabWatchCase>([Fault.AtPath("$.pairs", "null in a list", "a pair")])
        : posed.Spec.Faults() is { Count: > 0 } faults ? Parsing.Failed<LabWatchCase>([.. faults.Select(f => Fault.Told("$", f))]) : Parsing.Got(posed));
}

/// <summary>One pair.</summary>
/// <param name="Reference">The reference result.</param>
/// <param name="Instrument">The instrument's.</param>
/// <param name="Wheat">Of the wheat before the mill; null where it was not read.</param>
public sealed record PosedPair(double Reference, double Instrument, double? Wheat = null);
