using Evengrist.Milling.OnPaper;
using NodaTime;

namespace Evengrist.Milling.Drift;

/// <summary>Something that drifted, as the tests tell it.</summary>
/// <param name="Cause">What.</param>
/// <param name="Since">The first test it shows in; for wear, the test it begins after.</param>
/// <param name="Amount">How much by the newest test: of nips and cloths the logarithm of a factor, of a tear the share that falls through, of wet feed points of moisture.</param>
/// <param name="Probability">How likely this cause is among all looked at and none, 0 to 1, by priors that are ours.</param>
/// <param name="Rivals">What else it may be, likeliest first, each with its probability.</param>
/// <param name="Evidence">The figures that tell most.</param>
/// <param name="Next">What to measure next to be sure; null where nothing would tell or it is sure enough.</param>
/// <param name="Cost">What it costs.</param>
public sealed record DriftFound(
    DriftCause Cause, Instant Since, Estimate Amount, double Probability, IReadOnlyList<(DriftCause Cause, double Probability)> Rivals, IReadOnlyList<DriftEvidence> Evidence, DriftTell? Next, DriftCost Cost);

/// <summary>A figure that tells of a drift, at the newest test that has it.</summary>
/// <param name="What">The figure, as "B3 release".</param>
/// <param name="Measured">As measured, per cent.</param>
/// <param name="Without">As it would be without the drift.</param>
/// <param name="With">As it is with it.</param>
/// <param name="OwnSpread">How much the figure scatters from test to test, one standard deviation.</param>
public sealed record DriftEvidence(string What, double Measured, double Without, double With, double OwnSpread);

/// <summary>A measurement that would tell causes apart.</summary>
/// <param name="What">What to measure, as "B3 release".</param>
/// <param name="Times">How often, for odds of twenty to one to be expected.</param>
public sealed record DriftTell(string What, int Times);

/// <summary>What a drift costs at the newest settings and wheat.</summary>
/// <param name="FlourPoints">Change of all flour's yield at the ash it would have without the drift: where ash rose, the streams of most ash are taken to feed until it is back. Points of the wheat to first break.</param>
/// <param name="AshPoints">Change of all flour's ash before any stream is taken out, points of dry matter.</param>
/// <param name="MoneyPerDay">Loss in 24 h, in the currency of the prices; below zero where it pays. Null where no price was given.</param>
public sealed record DriftCost(Estimate FlourPoints, double AshPoints, Estimate? MoneyPerDay);
