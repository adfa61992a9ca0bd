using Evengrist.Ledger;
using Evengrist.Ledger.Reckoned;
using Evengrist.Quantities;
using Evengrist.Tracing.Bounds;
using Evengrist.Tracing.Drill;
using Evengrist.Tracing.Recall;
using NodaTime;

namespace Evengrist.Tracing;

/// <summary>Answers where something came from and what something has reached, under every outflow hypothesis side by side.</summary>
/// <remarks>Follows its book: facts appended later are taken in at the next question. Not safe for several threads at once.
/// Model: docs/model/tracing.md.</remarks>
public sealed class Tracer
{
    private const int AnswersKept = 4;
    private readonly Book book;
    private readonly Strand[] strands;
    private readonly List<(FactId Last, RecallOutcome Recall)> answered = [];
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

    /// <summary>What is traced through, level with the book.</summary>
    internal IReadOnlyList<Strand> Strands
    {
        get
        {
            Array.ForEach(strands, s => s.CatchUp());
            return strands;
        }
    }

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
        return BoundsModel.Answer(book, Scheduled(), starts, Moment(asOf), options ?? new());
    }

    /// <summary>
    /// Brings everything level with the book and asks a small recall, that of the newest flow out of a bin, so that the first real question waits for nothing that could be done before it.
    /// </summary>
    /// <param name="run">Runs things that do not depend on each other; null for one after the other.</param>
    public void Warm(Action<Action[]>? run = null)
    {
        _ = (Strands, Scheduled());
        var newest = Enumerable.Range(1, book.Movements.Count).Select(i => book.Movements[^i]).FirstOrDefault(m => m.IsFlow && book[m.From].Kind == PlaceKind.Bin);
        if (newest is { IsFlow: true })
        {
            Recall(new RecallQuestion([new Suspicion(book[newest.From], newest.At, newest.Until)]), null, run);
        }
    }

    /// <summary>What is to be called back, how wide, what that takes and what it may miss. The last few answers are kept as long as nothing is recorded.</summary>
    /// <param name="question">What is suspect, and how wide the narrow net is to be.</param>
    /// <param name="beliefs">Hypotheses to ask, with weights; null for <see cref="Belief.Usual"/>.</param>
    /// <param name="run">Runs things that do not depend on each other; null for one after the other.</param>
    /// <exception cref="ArgumentException">Nothing is suspect, the chance is none, or the beliefs are as refused by <see cref="Roots"/>.</exception>
    public RecallOutcome Recall(RecallQuestion question, IReadOnlyList<Belief>? beliefs = null, Action<Action[]>? run = null)
    {
        ArgumentNullException.ThrowIfNull(question);
        if (question.Starts.Count == 0 || !(question.Chance is >= 0 and <= 1) || question.Threshold < Mass.Zero)
        {
            throw new ArgumentException("A recall needs at least one thing to start from, a chance from 0 to 1 and a threshold of at least 0.", nameof(question));
        }

        if (question.Starts.FirstOrDefault(s => s.Place.Kind.Role() == PlaceRole.Sink) is { } sink)
        {
            throw new ArgumentException($"{sink.Place.Code} is where grain leaves the mill's hands: nothing goes on from there.", nameof(question));
        }

        var asked = Asked(beliefs);
        var asOf = Moment(question.AsOf);
        var (entries, chosen) = (Scheduled(), asked.Select(b => Found(b, nameof(beliefs))).ToArray());
        answered.RemoveAll(a => a.Last != book.Last);
        if (answered.FindIndex(a => IsSame(a.Recall)) is >= 0 and var known)
        {
            return answered[known].Recall;
        }

        var recall = new RecallModel(book, question, asOf, asked).Answer(chosen, () => BoundsModel.Answer(book, entries, question.Starts, asOf, question.Bounds), run ?? (all => Array.ForEach(all, one => one())));
        answered.Add((book.Last, recall));
        answered.RemoveRange(0, Math.Max(0, answered.Count - AnswersKept));
        return recall;

        bool IsSame(RecallOutcome kept) => kept.AsOf == asOf && kept.Beliefs.SequenceEqual(asked) && kept.Question.Starts.SequenceEqual(question.Starts)
            && (kept.Question.Threshold, kept.Question.Chance, kept.Question.Bounds) == (question.Threshold, question.Chance, question.Bounds);
    }

    /// <summary>Scores a recall against a recount by other code.</summary>
    /// <param name="recall">The recall, of this book.</param>
    /// <param name="net">The net taken as the list.</param>
    /// <param name="secondsBack">How long the way back took; s.</param>
    /// <param name="secondsForward">How long the list took; s.</param>
    public DrillScore Score(RecallOutcome recall, NetKind net, double secondsBack, double secondsForward)
    {
        ArgumentNullException.ThrowIfNull(recall);
        return DrillModel.Score(book, Scheduled(), recall, net, secondsBack, secondsForward);
    }

    private (Place Place, Instant AsOf, Subject[] Subjects, IReadOnlyList<Belief> Beliefs) Ask(TraceQuestion question, IReadOnlyList<Belief>? beliefs, bool forward)
    {
        ArgumentNullException.ThrowIfNull(question);
        var asked = Asked(beliefs);
        var place = book.Named(question.Code);
        var asOf = Moment(question.AsOf);
        var subjects = asked.Select(belief => Subject.Find(book, Found(belief, nameof(beliefs)), place, question, asOf, forward)).ToArray();
        return (place, asOf, subjects, asked);
    }

    private IReadOnlyList<Belief> Asked(IReadOnlyList<Belief>? beliefs)
    {
        var asked = beliefs ?? Belief.Usual.Where(b => strands.Any(s => s.Reckoning.Outflow == b.Outflow)).ToArray();
        if (asked.Count == 0 || asked.Any(b => !(b.Weight >= 0)) || !(asked.Sum(b => b.Weight) > 0)
            || asked.DistinctBy(b => b.Outflow).Count() != asked.Count)
        {
            throw new ArgumentException("Name each hypothesis once, with a weight of at least 0, one of them above 0.", nameof(beliefs));
        }

        return asked;
    }

    private Strand Found(Belief belief, string name)
    {
        var strand = Array.Find(strands, s => s.Reckoning.Outflow == belief.Outflow) ?? throw new ArgumentException($"{belief.Outflow} is not reckoned here.", name);
        strand.CatchUp();
        return strand;
    }

    private Instant Moment(Instant? asOf) => asOf ?? book.Newest ?? Instant.FromUnixTimeTicks(0);

    // Of its own, so that a question of bounds, which follows no outflow, waits for no reckoning.
    private Schedule Scheduled()
    {
        if (scheduled != book.Touches.Count)
        {
            schedule.Update();
            scheduled = book.Touches.Count;
        }

        return schedule;
    }
}
