namespace Evengrist.Laboratory.Watch;

/// <summary>What pairs say, with the rivals, and the plain sum beside it.</summary>
/// <param name="Verdict">The answer, or not sure yet.</param>
/// <param name="Rivals">Every answer, the likeliest first.</param>
/// <param name="Fit">How many times better than "nothing moved" the pairs fit a move, in parts of what is asked for (<see cref="AskedFit"/>): something moved from 1 on.</param>
/// <param name="More">Pairs still to take until a verdict, if they go on as the likeliest change has it (or as they were); null where there is a verdict, or where more than <see cref="MostMore"/> would be needed.</param>
/// <param name="Deviations">The standard deviations gone by.</param>
/// <param name="Sums">The plain cumulative sums of the differences after each pair.</param>
/// <param name="Allowance">Their k.</param>
/// <param name="Limit">Their h.</param>
/// <param name="SumAlarm">The first pair, from 1, with a sum above h; null for none.</param>
/// <param name="Since">The pair, from 1, from which on the verdict has stood unbroken; null where not sure.</param>
public sealed record WatchOutcome(
    WatchVerdict Verdict, IReadOnlyList<WatchRival> Rivals, double Fit, int? More, WatchDeviations Deviations, IReadOnlyList<(double Above, double Below)> Sums, double Allowance, double Limit, int? SumAlarm, int? Since)
{
    /// <summary>Most further pairs that are reckoned on.</summary>
    public const int MostMore = 60;

    /// <summary>The likeliest answer.</summary>
    public WatchRival Likeliest => Rivals[0];

    /// <summary>The rival behind the verdict, or the likeliest change where not sure.</summary>
    public WatchRival Change => Rivals.First(r => r.Cause != WatchCause.None);
}
