using Evengrist.Ledger;
using Evengrist.Ledger.Reckoned;
using Evengrist.Tracing.Bounds;
using NodaTime;

namespace Evengrist.Tracing;

/// <summary>Answers where something came from and what something has reached, under every outflow hypothesis side by side.</summary>
/// <remarks>Follows its book: facts appended later are taken in at the next question. Not safe for several threads at once.
/// Model: docs/model/tracing.md.</remarks>
public sealed class Tracer
{
    private readonly Book book;
    private readonly Strand[] strands;
    private readonly Schedule schedule;
    private int scheduled = -1;

    /// <summary>A tracer over reckonings of one book.</summary>
    /// <param name="book">The book.</param>
    /// <param name="reckonings">One for each hypothesis that is to be asked; not marked.</param>
    /// <exception cref="ArgumentException">No reckoning is given.</exception>
    public Tracer(Book book, IEnumerable<Reckoning> reckonings)
    {
        ArgumentNullException.ThrowIfNull(reckonings);
        this.book = book;
        schedule = new Schedule(book);
        strands = reckonings.Select(r => new Strand(r)).ToArray();
        if (strands.Length == 0)
        {
            throw new ArgumentException("At least one reckoning is needed.", nameof(reckonings));
        }
    }

    /// <summary>A tracer of its own reckonings, one for each outflow hypothesis.</summary>
    public static Tracer Over(Book book) => new(book, Enum.GetValues<Outflow>().Select(o => new Reckoning(book, o)));

    /// <summary>Where something came from.</summary>
    /// <param name="question">What is asked.</param>
    /// <param name="beliefs">Hypotheses to ask, with weights; null for <see cref="Belief.Usual"/>.</param>
    /// <exception cref="LedgerRefusal">The code names no place.</exception>
    /// <exception cref="ArgumentException">A hypothesis is not reckoned here, is named twice, or no weight is above zero.</exception>
    public RootsOutcome Roots(TraceQuestion question, IReadOnlyList<Belief>? beliefs = null)
    {
        var (place, asOf, subjects, asked) = Ask(question, beliefs, forward: false);
        return RootsModel.Answer(book, question, place, asOf, subjects, asked);
    }

    /// <summary>What something has reached.</summary>
    /// <inheritdoc cref="Roots"/>
    public ReachOutcome Reach(TraceQuestion question, IReadOnlyList<Belief>? beliefs = null)
    {
        var (place, asOf, subjects, asked) = Ask(question, beliefs, forward: true);
        return ReachModel.Answer(book, question, place, asOf, subjects, asked);
    }

    /// <summary>How much of what is suspect is where, bounded for any outflow from stores.</summary>
    /// <param name="starts">What is suspect from the start on; several are joined, nothing counts twice.</param>
    /// <param name="asOf">The moment looked back from; null for the newest in the ledger.</param>
    /// <param name="options">What is taken for known; null for the usual.</param>
    public BoundsOutcome Bounds(IReadOnlyList<Suspicion> starts, Instant? asOf = null, BoundsOptions? options = null)
    {
        ArgumentNullException.ThrowIfNull(starts);
        if (scheduled != book.Touches.Count)
        {
            schedule.Update();
            scheduled = book.Touches.Count;
        }

        return BoundsModel.Answer(book, schedule, starts, asOf ?? book.Newest ?? Instant.FromUnixTimeTicks(0), options ?? new());
    }

    private (Place Place, Instant AsOf, Subject[] Subjects, IReadOnlyList<Belief> Beliefs) Ask(TraceQuestion question, IReadOnlyList<Belief>? beliefs, bool forward)
    {
        ArgumentNullException.ThrowIfNull(question);
        var asked = beliefs ?? Belief.Usual.Where(b => strands.Any(s => s.Reckoning.Outflow == b.Outflow)).ToArray();
        if (asked.Count == 0 || asked.Any(b => !(b.Weight >= 0)) || !(asked.Sum(b => b.Weight) > 0)
            || asked.DistinctBy(b => b.Outflow).Count() != asked.Count)
        {
            throw new ArgumentException("Name each hypothesis once, with a weight of at least 0, one of them above 0.", nameof(beliefs));
        }

        var place = book.Named(question.Code);
        var asOf = question.AsOf ?? book.Newest ?? Instant.FromUnixTimeTicks(0);
        var subjects = asked.Select(belief =>
        {
            var strand = Array.Find(strands, s => s.Reckoning.Outflow == belief.Outflow)
                ?? throw new ArgumentException($"{belief.Outflow} is not reckoned here.", nameof(beliefs));
            strand.CatchUp();
            return Subject.Find(book, strand, place, question, asOf, forward);
        }).ToArray();
        return (place, asOf, subjects, asked);
    }
}
