using Evengrist.Laboratory.Watch;
using Evengrist.Plant.Cases;

namespace Evengrist.Plant.Answers;

/// <summary>Meter or wheat, in the unit of the readings.</summary>
/// <param name="Verdict">The answer in words, or not sure yet.</param>
/// <param name="Sure">Whether there is a verdict.</param>
/// <param name="StartedAfter">The likeliest change began after so many pairs; null where nothing is likely to have moved.</param>
/// <param name="Fit">How well the pairs fit a move, in parts of what a verdict asks for: something moved from 1 on.</param>
/// <param name="Since">The verdict has stood since this pair.</param>
/// <param name="More">Pairs to take until a verdict.</param>
/// <param name="Rivals">Every answer, the likeliest first.</param>
/// <param name="Pairs">Difference and plain cumulative sums after each pair.</param>
/// <param name="SumAlarm">The first pair at which the plain sum rings.</param>
/// <param name="Evidence">What it rests on, in words.</param>
public sealed record LabWatchAnswer(
    string Verdict, bool Sure, int? StartedAfter, double Fit, int? Since, int? More, IReadOnlyList<WatchRivalAnswer> Rivals, IReadOnlyList<WatchPairAnswer> Pairs, int? SumAlarm, IReadOnlyList<string> Evidence)
{
    /// <summary>Answers a case.</summary>
    public static Reply<LabWatchAnswer> To(LabWatchCase posed)
    {
        ArgumentNullException.ThrowIfNull(posed);
        return new(Of(WatchModel.Of(posed.Spec), posed.Spec), []);
    }

    /// <summary>An outcome as an answer.</summary>
    public static LabWatchAnswer Of(WatchOutcome outcome, WatchSpec spec)
    {
        ArgumentNullException.ThrowIfNull(outcome);
        ArgumentNullException.ThrowIfNull(spec);
        return new(
            outcome.Verdict.Words(spec.HasWheat), outcome.Verdict != WatchVerdict.None, outcome.Likeliest.After, Math.Min(outcome.Fit, 1e12), outcome.Since, outcome.More,
            [.. outcome.Rivals.Select(r => new WatchRivalAnswer(r.Cause.Words(spec.HasWheat), r.Probability, r.After, r.StartProbability, r.Size, r.SizeDeviation))],
            [.. spec.Pairs.Zip(outcome.Sums, (p, s) => new WatchPairAnswer(p.Difference, s.Above, s.Below))], outcome.SumAlarm, WatchWords.Evidence(outcome, spec));
    }
}

/// <summary>One rival.</summary>
public sealed record WatchRivalAnswer(string What, double Probability, int? After, double? StartProbability, double? Size, double? SizeDeviation);

/// <summary>One pair.</summary>
public sealed record WatchPairAnswer(double Difference, double SumAbove, double SumBelow);
