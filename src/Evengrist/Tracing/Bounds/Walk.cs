using Evengrist.Ledger;
using Evengrist.Ledger.Reckoned;

namespace Evengrist.Tracing.Bounds;

/// <summary>
/// Goes through the movements in the order of time from the first suspect one on. Between two moments at which anything begins or
/// ends every flow has an even rate; only places that hold some of the suspect are looked into.
/// </summary>
internal sealed class Walk
{
    private const double RoundingOfRates = 20;
    private readonly Book book;
    private readonly Schedule schedule;
    private readonly IReadOnlyList<Suspicion> starts;
    private readonly Suspicion[] timed;
    private readonly Stage stage;
    private readonly long begin;
    private readonly List<Carried> flows = [];
    private readonly List<(Carried Flow, double Grams)> due = [];
    private long now;

    public Walk(Book book, Schedule schedule, IReadOnlyList<Suspicion> starts, Func<Place, double, Held> make)
    {
        (this.book, this.schedule, this.starts) = (book, schedule, starts);
        timed = [.. starts.Where(s => s.From is not null || s.Until is not null)];
        begin = FirstSuspect();
        stage = new Stage(book, starts, make, begin);
    }

    public Stage Stage => stage;

    public IReadOnlyList<Carried> UnderWay => flows;

    /// <summary>For each unit what was set down in it, all of it ever.</summary>
    public Dictionary<int, Batch> Packed { get; } = [];

    public double Unexplained { get; private set; }

    /// <summary>Walks up to a moment, everything that happened at it included.</summary>
    /// <param name="until">The moment.</param>
    /// <param name="step">No stretch is longer; microseconds.</param>
    public void To(long until, long step = long.MaxValue)
    {
        if (begin > until)
        {
            return;
        }

        now = begin - 1;
        var next = schedule.After(now);
        var before = Micros.ToInstant(now);
        for (var i = 0; i < next; i++)
        {
            if (book.Movements[schedule[i].Movement].Until > before && Start(schedule[i].Movement) is { } flow && flow.Until > now && flow.Until > flow.At)
            {
                flow.Moved = flow.DueAt(now);
                flow.Arrived = Batch.Clean(flow.Moved);
                flows.Add(flow);
            }
        }

        flows.Sort(stage.Order);
        var empty = schedule.Empties.FindIndex(e => e.At > now) is var first && first < 0 ? schedule.Empties.Count : first;
        while (true)
        {
            var moment = NextMoment(next, empty, step);
            if (moment > until)
            {
                Advance(until);
                return;
            }

            Advance(moment);
            Finish();
            next = Begin(next, moment);
            for (; empty < schedule.Empties.Count && schedule.Empties[empty].At <= moment; empty++)
            {
                stage.Clear(schedule.Empties[empty].Place, moment);
            }
        }
    }

    private long FirstSuspect()
    {
        var first = long.MaxValue;
        foreach (var start in starts)
        {
            foreach (var index in book.MovementsOf(start.Place.Id))
            {
                var movement = book.Movements[index];
                if ((start.IsLoad ? movement.To : movement.From) == start.Place.Id && movement.Until.ToMicros() >= start.Begins && movement.At.ToMicros() < start.Ends)
                {
                    first = Math.Min(first, Math.Max(movement.At.ToMicros(), start.Place.Kind.IsFixed() ? start.Begins : long.MinValue));
                }
            }
        }

        return first;
    }

    private long NextMoment(int next, int empty, long step)
    {
        var moment = next < schedule.Count ? schedule[next].At : long.MaxValue;
        moment = empty < schedule.Empties.Count ? Math.Min(moment, schedule.Empties[empty].At) : moment;
        foreach (var flow in flows)
        {
            moment = Math.Min(moment, flow.Until);
        }

        foreach (var start in timed)
        {
            moment = start.Begins > now ? Math.Min(moment, start.Begins) : start.Ends > now ? Math.Min(moment, start.Ends) : moment;
        }

        return step < long.MaxValue && flows.Count > 0 ? Math.Min(moment, now + step) : moment;
    }

    private void Advance(long moment)
    {
        if (moment > now)
        {
            Carry(flows, moment);
        }

        now = moment;
    }

    private void Carry(List<Carried> among, long moment)
    {
        due.Clear();
        foreach (var flow in among)
        {
            if (flow.DueAt(moment) - flow.Moved is > 0 and var grams)
            {
                due.Add((flow, grams));
            }
        }

        if (due.Count > 0)
        {
            stage.Step(due, now, moment);
        }
    }

    private void Finish()
    {
        if (!flows.Exists(f => f.Until <= now))
        {
            return;
        }

        // A flow that lagged because its place had nothing to give takes the rest once what ended beside it is handed over.
        foreach (var flow in flows.Where(f => f.Until <= now && f.Grams - f.Moved <= RoundingOfRates).OrderBy(f => f.Arrived.Most <= 0))
        {
            Hand(flow);
        }

        var late = flows.Where(f => f.Until <= now && f.Grams - f.Moved > RoundingOfRates).ToList();
        if (late.Count > 0)
        {
            Carry(late, now);
            late.ForEach(Hand);
        }

        flows.RemoveAll(f => f.Until <= now);
    }

    private int Begin(int next, long moment)
    {
        List<Carried>? sudden = null;
        for (; next < schedule.Count && schedule[next].At <= moment; next++)
        {
            if (Start(schedule[next].Movement) is not { } flow)
            {
                continue;
            }

            if (flow.Until > flow.At)
            {
                stage.NoteBeginning(flow);
                var i = flows.FindIndex(f => stage.Order.Compare(f, flow) > 0);
                flows.Insert(i < 0 ? flows.Count : i, flow);
            }
            else
            {
                (sudden ??= []).Add(flow);
            }
        }

        if (sudden is not null)
        {
            sudden.Sort(stage.Order);
            Carry(sudden, moment);
            sudden.ForEach(Hand);
        }

        return next;
    }

    private void Hand(Carried flow)
    {
        if (flow.Grams - flow.Moved > RoundingOfRates)
        {
            Unexplained += flow.Grams - flow.Moved;
        }

        if (!flow.IsWhole)
        {
            return;
        }

        // Grams a flow fell behind are of unknown origin; a few are the rounding of even rates.
        var arrived = stage.Settled(flow).Blended(Batch.Clean(Math.Max(0, flow.Grams - flow.Moved)), stage.Cap) with { Grams = flow.Grams };
        if (arrived.Most > 0 && book[new PlaceId(flow.To)].Kind.Role() == PlaceRole.Unit)
        {
            Packed[flow.To] = Packed.TryGetValue(flow.To, out var packed) ? packed.Blended(arrived, stage.Cap) : arrived;
        }

        if (flow.Until > flow.At)
        {
            stage.SetDown(flow.To, arrived, now);
        }
    }

    private Carried? Start(int index)
    {
        if (!book.Counts(index) || book.Movements[index] is not { Mass.Grams: > 0 } movement)
        {
            return null;
        }

        return new Carried
        {
            Movement = index, From = movement.From.Value, To = movement.To.Value, Grams = movement.Mass.Grams, At = movement.At.ToMicros(), Until = movement.Until.ToMicros(),
            IsWhole = book[movement.To].Kind.Role() is PlaceRole.Unit or PlaceRole.Sink,
        };
    }
}
