using Evengrist.Laboratory.Watch;
using Evengrist.Plant.Answers;
using Evengrist.Web.Sights.Laboratory;

namespace Evengrist.Web.Api;

/// <summary>The ledger's pairs of an instrument, judged.</summary>
/// <param name="Choices">What can be watched, each by its key.</param>
/// <param name="Watched">The key of what is shown; empty where there is nothing.</param>
/// <param name="At">When each pair was taken.</param>
/// <param name="Judged">What the pairs say; null where there is nothing.</param>
public sealed record LabWatchedAnswer(IReadOnlyList<string> Choices, string Watched, IReadOnlyList<DateTimeOffset> At, LabWatchAnswer? Judged)
{
    internal static LabWatchedAnswer Of(WatchSight sight) =>
        new([.. sight.Choices.Select(c => c.Key)], sight.Chosen, [.. (sight.Found?.Pairs ?? []).Select(p => p.Instrument.At.ToDateTimeOffset())], sight is { Outcome: { } outcome, Spec: { } spec } ? LabWatchAnswer.Of(outcome, spec) : null);
}

/// <summary>A bias that was set.</summary>
public sealed record LabBiasAnswer(string Instrument, string What, DateTimeOffset At, decimal Old, decimal New, int Pairs, string Reason, string By)
{
    internal static LabBiasAnswer Of((BiasSetting Setting, string By) kept) => new(kept.Setting.Instrument, kept.Setting.What.ToString(), kept.Setting.At.ToDateTimeOffset(), kept.Setting.Old, kept.Setting.New, kept.Setting.Pairs, kept.Setting.Reason, kept.By);
}
