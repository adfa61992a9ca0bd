using Evengrist.Ledger.Reckoned;
using NodaTime;

namespace Evengrist.Ledger;

/// <summary>What lies where and what came from what, reckoned from a book under one outflow hypothesis.</summary>
/// <remarks>
/// Holds nothing that the book does not imply: it can be thrown away and reckoned again. It follows the book: after facts were
/// appended <see cref="CatchUp"/> reckons on, from before the earliest of them if they are late. Model: docs/model/reckoning.md.
/// Not safe for use by several threads at once, nor beside a writer of the book.
/// </remarks>
public sealed class Reckoning
{
    private readonly Book book;
    private readonly Schedule schedule;
    private readonly MarkedOut? marked;
    private readonly List<Checkpoint> checkpoints = [];
    private readonly Dictionary<int, int> origins = [];
    private int[] loads = [];
    private Run run;
    private int touchesSeen;
    private Snapshot? latest;

    /// <summary>A reckoning of a book under a hypothesis; nothing is reckoned before <see cref="CatchUp"/>.</summary>
    /// <param name="book">The book it follows.</param>
    /// <param name="outflow">How grain leaves bins.</param>
    /// <param name="mark">What is to be followed by itself; null for nothing.</param>
    /// <exception cref="ArgumentException">The mark ends before it begins.</exception>
    public Reckoning(Book book, Outflow outflow, Mark? mark = null)
        : this(book, outflow, mark is null ? [] : [mark])
    {
    }

    /// <summary>A reckoning that follows several things by themselves.</summary>
    /// <param name="book">The book it follows.</param>
    /// <param name="outflow">How grain leaves bins.</param>
    /// <param name="marks">What is to be followed by itself; what several mark is followed once.</param>
    /// <exception cref="ArgumentException">A mark ends before it begins.</exception>
    public Reckoning(Book book, Outflow outflow, IReadOnlyList<Mark> marks)
    {
        ArgumentNullException.ThrowIfNull(book);
        ArgumentNullException.ThrowIfNull(marks);
        if (marks.FirstOrDefault(m => m.Until <= m.From) is { } bad)
        {
            throw new ArgumentException($"The span {bad} ends before it begins.", nameof(marks));
        }

        this.book = book;
        Outflow = outflow;
        schedule = new Schedule(book);
        marked = marks.Count == 0 ? null : new MarkedOut(marks);
        Parcels = new ParcelGraph();
        run = NewRun(Parcels);
    }

    // Begins where another stood at a checkpoint, with parcels of its own: what lay there then is taken over, without what it was made of.
    private Reckoning(Reckoning whole, IReadOnlyList<Mark> marks, Checkpoint? from, long until)
    {
        (book, schedule, touchesSeen, Outflow) = (whole.book, whole.schedule, whole.touchesSeen, whole.Outflow);
        marked = new MarkedOut(marks);
        Parcels = new ParcelGraph();
        loads = new int[book.Movements.Count];
        run = NewRun(Parcels);
        if (from is not null)
        {
            var taken = new Dictionary<int, int>();
            int Number(int parcel) => taken.TryGetValue(parcel, out var own) ? own : taken[parcel] = Parcels.TakeOver(whole.Parcels, parcel);
            var flows = from.Flows.ConvertAll(f => f.Copy());
            flows.ForEach(f => f.Renumber(Number));
            var contents = from.Contents.ConvertAll(c => (c.Place, Content: c.Content.Copy(Parcels)));
            contents.ForEach(c => c.Content.Renumber(Number));
            run.TakeUp(from.Moment, flows, contents);
            checkpoints.Add(new Checkpoint(from.Moment, Parcels.Count, flows, contents));
        }

        Parcels.MakeRoomFor(Parcels.Count + schedule.After(until) - schedule.After(run.Now));
        while (run.Step(until))
        {
        }
    }

    /// <summary>The hypothesis.</summary>
    public Outflow Outflow { get; }

    /// <summary>Stretches between places where a late fact, or a question, can begin; fewer make both quicker and take more memory.</summary>
    internal int StretchesBetweenCheckpoints { get; init; } = 3000;

    /// <summary>Stretches reckoned since it began, or last went back.</summary>
    internal int Stretches => run.Stretches;

    /// <summary>All parcels so far.</summary>
    public ParcelGraph Parcels { get; }

    /// <summary>What left the marked place during the marked span: parcels of their own, with their grams; empty without a mark.</summary>
    public IReadOnlyList<Layer> Marked => marked?.Parcels ?? [];

    /// <summary>Reckons everything the book holds and this does not know yet.</summary>
    public void CatchUp()
    {
        if (touchesSeen == book.Touches.Count)
        {
            return;
        }

        var earliest = long.MaxValue;
        for (; touchesSeen < book.Touches.Count; touchesSeen++)
        {
            earliest = Math.Min(earliest, book.Touches[touchesSeen]);
        }

        latest = null;
        schedule.Update();
        Array.Resize(ref loads, book.Movements.Count);
        if (earliest <= run.Now)
        {
            GoBackBefore(earliest);
        }

        if (Parcels.Count == 0)
        {
            Parcels.MakeRoomFor(book.Movements.Count);
        }

        var since = run.Stretches;
        while (run.HasMore)
        {
            run.Step(long.MaxValue);
            if (run.Stretches - since >= StretchesBetweenCheckpoints && marked is null)
            {
                var (flows, contents) = run.Stand();
                checkpoints.Add(new Checkpoint(run.Now, Parcels.Count, flows, contents));
                since = run.Stretches;
            }
        }
    }

    /// <summary>
    /// The same with marks, as far as it has to be reckoned anew: from the last checkpoint before anything asked begins up to a moment. Its parcels have numbers of their own; for those
    /// that lay somewhere at the checkpoint what they were made of is left out, so that it serves ways forward only.
    /// </summary>
    /// <param name="marks">What is to be followed by itself.</param>
    /// <param name="begins">Nothing that is asked about begins earlier.</param>
    /// <param name="until">Up to this moment.</param>
    /// <remarks><see cref="CatchUp"/> comes first. Checkpoints part steady flow in two parcels where an unbroken reckoning has one: grams agree but for rounding.</remarks>
    internal Reckoning Onward(IReadOnlyList<Mark> marks, Instant begins, Instant until)
    {
        var earliest = begins.ToMicros();
        return new Reckoning(this, marks, checkpoints.FindLast(c => c.Moment < earliest), until.ToMicros());
    }

    /// <summary>What lies where at a moment. <see cref="CatchUp"/> comes first.</summary>
    /// <remarks>Within a stretch of steady flow the parcels of junctions and stirred stages are those of the whole stretch; grams are exact.</remarks>
    public Snapshot At(Instant moment)
    {
        if (latest is { } known && known.At == moment)
        {
            return known;
        }

        var micros = moment.ToMicros();
        if (micros >= run.Now)
        {
            return latest = new Snapshot(moment, Outflow, Parcels, run);
        }

        var from = checkpoints.FindLast(c => c.Moment <= micros);
        var replay = NewRun(new ReplayedParcels(from?.Parcels ?? 0), replayed: true);
        replay.TakeUp(from?.Moment ?? long.MinValue, from?.Flows ?? [], from?.Contents ?? []);
        while (replay.Step(micros))
        {
        }

        return latest = new Snapshot(moment, Outflow, Parcels, replay);
    }

    /// <summary>The parcel that a movement took out of a source; null where it left no source.</summary>
    /// <param name="movement">Position in <see cref="Book.Movements"/>.</param>
    public int? OriginOf(int movement) => origins.TryGetValue(movement, out var parcel) && parcel < Parcels.Count && Parcels.MovementOf(parcel) == movement
        ? parcel
        : null;

    /// <summary>The parcel that a movement set down in a unit (truck, pallet, bulk load, tote), a sink, or a wheat bin (the last of several); null where it set none down.</summary>
    /// <param name="movement">Position in <see cref="Book.Movements"/>.</param>
    public int? LoadOf(int movement) => loads[movement] - 1 is var parcel && parcel >= 0 && parcel < Parcels.Count && Parcels.MovementOf(parcel) == movement
        ? parcel
        : null;

    private void GoBackBefore(long moment)
    {
        checkpoints.RemoveAll(c => c.Moment >= moment);
        marked?.Parcels.Clear();
        var from = checkpoints.Count > 0 ? checkpoints[^1] : null;
        Parcels.CutBackTo(from?.Parcels ?? 0);
        run = NewRun(Parcels);
        run.TakeUp(from?.Moment ?? long.MinValue, from?.Flows ?? [], from?.Contents ?? []);
    }

    private Run NewRun(IParcelMaker maker, bool replayed = false) => new(book, Outflow, schedule, maker, replayed ? marked?.Anew() : marked)
    {
        OnLoad = replayed ? null : (movement, parcel) => loads[movement] = parcel + 1,
        OnOrigin = replayed ? null : (movement, parcel) => origins[movement] = parcel,
    };
}
