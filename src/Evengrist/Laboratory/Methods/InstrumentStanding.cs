using System.Globalization;
using Evengrist.Ledger;
using NodaTime;

namespace Evengrist.Laboratory.Methods;

/// <summary>How an instrument stands at a moment by its checks.</summary>
/// <param name="Instrument">The instrument.</param>
/// <param name="State">Whether it may be believed.</param>
/// <param name="Why">In a sentence.</param>
/// <param name="Last">The newest check by then; null where there was none.</param>
/// <param name="Due">When the next check is due; null where none is laid down or one is overdue or failed.</param>
public sealed record InstrumentStanding(LabInstrument Instrument, InstrumentState State, string Why, InstrumentCheck? Last, Instant? Due)
{
    /// <summary>Whether a result by it needs a person's reason.</summary>
    public bool NeedsReason => State is InstrumentState.Overdue or InstrumentState.Out;

    /// <summary>What speaks against it, after "is" or "was"; said where <see cref="NeedsReason"/>.</summary>
    public string Doubt => State == InstrumentState.Out ? "out of check" : "overdue for its check";

    /// <summary>The state in words.</summary>
    public string Words => State switch
    {
        InstrumentState.InCheck => "in check",
        InstrumentState.Overdue => "check overdue",
        InstrumentState.Out => "out of check",
        _ => "no check laid down",
    };

    /// <summary>How an instrument stands.</summary>
    /// <param name="instrument">The instrument, with how it is checked.</param>
    /// <param name="checks">Checks of it and others, in any order.</param>
    /// <param name="at">The moment; later checks do not count.</param>
    public static InstrumentStanding Of(LabInstrument instrument, IEnumerable<InstrumentCheck> checks, Instant at)
    {
        ArgumentNullException.ThrowIfNull(instrument);
        ArgumentNullException.ThrowIfNull(checks);
        InstrumentCheck[] ours = [.. checks.Where(c => c.At <= at && c.Instrument.Equals(instrument.Code, StringComparison.OrdinalIgnoreCase)).OrderBy(c => c.At)];
        var last = ours.LastOrDefault();
        if (instrument.CheckEveryHours is not { } hours)
        {
            return new(instrument, InstrumentState.Unchecked, "No check is laid down for it: whether it reads right is not known.", last, null);
        }

        var newest = instrument.Tolerances.Select(t => (Tolerance: t, Check: ours.LastOrDefault(c => c.What == t.What))).ToArray();
        if (newest.FirstOrDefault(n => n.Check is not null && !n.Check.Passes(n.Tolerance)) is { Check: { } failed } fail)
        {
            return new(instrument, InstrumentState.Out, string.Create(CultureInfo.InvariantCulture, $"{failed.Words}: off by {failed.Off:+0.###;-0.###}, allowed ±{fail.Tolerance.Within:0.###}. Find out why, set it right and check it again."), last, null);
        }

        if (newest.FirstOrDefault(n => n.Check is null) is { Tolerance: { } missing })
        {
            return new(instrument, InstrumentState.Overdue, $"{Of(missing)} was never checked by then. Read its check sample.", last, null);
        }

        var due = newest.Min(n => n.Check!.At) + Duration.FromHours(hours);
        return due < at
            ? new(instrument, InstrumentState.Overdue, string.Create(CultureInfo.InvariantCulture, $"{Of(newest.MinBy(n => n.Check!.At).Tolerance)} was last checked on {newest.Min(n => n.Check!.At)}; a check is good for {hours:0.#} h. Read its check sample."), last, null)
            : new(instrument, InstrumentState.InCheck, "Its last check of every property passed.", last, due);
    }

    private static string Of(CheckTolerance tolerance) => tolerance.What.Words() is var words ? char.ToUpperInvariant(words[0]) + words[1..] : "";
}
