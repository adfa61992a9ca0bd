using Evengrist.Intake.Sampling;
using Evengrist.Ledger;
using NodaTime;

namespace Evengrist.Records.Intake;

/// <summary>A retained sample on its shelf.</summary>
/// <param name="Load">The truck it was taken from.</param>
/// <param name="At">When it was taken.</param>
/// <param name="Taken">Its particulars.</param>
/// <param name="Discarded">When it was thrown away; null while it stands there.</param>
/// <param name="OnHold">Whether its load is on hold: then it stays, however old it is.</param>
public sealed record RetainedSample(Place Load, Instant At, SampleTaken Taken, Instant? Discarded, bool OnHold = false)
{
    /// <summary>Every sample retained by a moment, oldest first.</summary>
    public static IReadOnlyList<RetainedSample> All(Book book, Instant asOf)
    {
        ArgumentNullException.ThrowIfNull(book);
        return [.. book.Happenings.Where(h => h.Kind == HappeningKind.Sampled && h.At <= asOf && book.Counts(h))
            .Select(h => (h, Taken: SampleTaken.Of(h))).Where(s => s.Taken is { IsRetained: true })
            .Select(s => new RetainedSample(book[s.h.On], s.h.At, s.Taken!, Gone(book, s.h, s.Taken!, asOf), book.HoldOn(s.h.On, asOf) is not null)).OrderBy(s => s.At).ThenBy(s => s.Taken.RetainedId, StringComparer.Ordinal)];
    }

    /// <summary>Whether it may be thrown away on a day: the last day to keep it has passed, and its load is not on hold.</summary>
    public bool IsDue(LocalDate today) => Discarded is null && !OnHold && Taken.LastDay < today;

    /// <summary>The first line of the note that says a retained sample was thrown away.</summary>
    public static string GoneWords(string retainedId) => $"Retained sample {retainedId} thrown away.";

    private static Instant? Gone(Book book, Happening sampled, SampleTaken taken, Instant asOf)
    {
        var words = GoneWords(taken.RetainedId);
        return book.HappeningsOn(sampled.On).FirstOrDefault(h => h.Kind == HappeningKind.Note && h.At <= asOf && h.Words == words)?.At;
    }
}
