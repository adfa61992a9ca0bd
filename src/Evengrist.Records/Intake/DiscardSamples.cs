using Evengrist.Ledger;
using NodaTime;

namespace Evengrist.Records.Intake;

/// <summary>A named person threw retained samples away.</summary>
/// <param name="RetainedIds">Their numbers.</param>
/// <param name="At">When.</param>
/// <param name="Today">The day it was, on the mill's clock: a sample that must still be kept is not thrown away.</param>
public sealed record DiscardSamples(IReadOnlyList<string> RetainedIds, Instant At, LocalDate Today)
{
    private const string Source = "sampling";

    /// <summary>Records it on each load.</summary>
    /// <exception cref="LedgerRefusal">A number stands on no shelf, or its day has not passed; nothing was recorded.</exception>
    public Receipt In(Mill mill, string by, Instant? recorded = null)
    {
        ArgumentNullException.ThrowIfNull(mill);
        return mill.Record(
            view =>
            {
                var kept = RetainedSample.All(view.Book, At).Where(s => s.Discarded is null).ToDictionary(s => s.Taken.RetainedId, StringComparer.OrdinalIgnoreCase);
                return [.. RetainedIds.Select(id => Gone(kept.GetValueOrDefault(id.Trim()), id))];
            },
            by, Source, recorded);
    }

    private Happen Gone(RetainedSample? sample, string id) => sample is null
        ? throw new LedgerRefusal(LedgerRule.Malformed, $"No retained sample {id} stands on a shelf.")
        : !sample.IsDue(Today)
            ? throw new LedgerRefusal(LedgerRule.Malformed, $"Retained sample {id} of {sample.Load.Code} is to be kept {(sample.OnHold ? "while its load is on hold" : $"until {sample.Taken.KeepUntil}")}.") { Place = sample.Load.Code }
            : new Happen($"{sample.Load.Code} gone {sample.Taken.RetainedId}", sample.Load.Code, At, HappeningKind.Note, RetainedSample.GoneWords(sample.Taken.RetainedId));
}
