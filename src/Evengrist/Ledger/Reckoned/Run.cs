namespace Evengrist.Ledger.Reckoned;

/// <summary>
/// Goes through the movements in the order of time. Between two moments at which anything begins or ends every flow has an even
/// rate; in each such stretch every flow under way moves its grams, down the way of the grain.
/// </summary>
internal sealed class Run
{
    // Grams; far above what even rates cut off, far below what anyone would miss.
    private const double RoundingOfRates = 20;
    private readonly Book book;
    private readonly Outflow outflow;
    private readonly Schedule schedule;
    private readonly IParcelMaker maker;
    private readonly MarkedOut? mark;
    private readonly List<Flow> flows = [];
    private readonly List<Flow> sudden = [];
    private readonly List<Layer> taken = [];
    private readonly List<Layer> parts = [];
    private Content?[] contents = [];
    private int next;
    private int nextEmpty;
    private long stretchEnd;

    public Run(Book book, Outflow outflow, Schedule schedule, IParcelMaker maker, MarkedOut? mark)
        => (this.book, this.outflow, this.schedule, this.maker, this.mark) = (book, outflow, schedule, maker, mark);

    /// <summary>Moment up to which everything is reckoned, microseconds.</summary>
    public long Now { get; private set; } = long.MinValue;

    /// <summary>Stretches reckoned since the run began or was taken up.</summary>
    public int Stretches { get; private set; }

    /// <summary>Whether anything is left to reckon.</summary>
    public bool HasMore => flows.Count > 0 || next < schedule.Count || nextEmpty < schedule.Empties.Count;

    /// <summary>Told of the parcel a movement set down in a bin, a unit or a sink.</summary>
    public Action<int, int>? OnLoad { get; init; }

    /// <summary>Told of the parcel a movement took out of a source.</summary>
    public Action<int, int>? OnOrigin { get; init; }

    /// <summary>What has arrived so far in units and sinks by flows under way.</summary>
    public IEnumerable<(int Place, List<Layer> Layers)> Arriving() =>
        flows.Where(f => f.Arrived is { Count: > 0 }).Select(f => (f.To, new List<Layer>(f.Arrived!)));

    /// <summary>Takes up a run where another stood; what changes from here on makes its parcels here.</summary>
    public void TakeUp(long now, IEnumerable<Flow> underWay, IEnumerable<(int Place, Content Content)> lying)
    {
        Now = now;
        next = schedule.After(now);
        nextEmpty = schedule.Empties.FindIndex(e => e.At > now) is var i && i < 0 ? schedule.Empties.Count : i;
        flows.Clear();
        flows.AddRange(underWay.Select(f => f.Copy()));
        contents = new Content?[book.Places.Count];
        foreach (var (place, content) in lying)
        {
            contents[place - 1] = content.Keep();
        }
    }

    /// <summary>Where the run stands, to be taken up again; no mixture or layer goes on across it, so that both go on alike.</summary>
    public (List<Flow> Flows, List<(int Place, Content Content)> Contents) Stand()
    {
        foreach (var content in contents)
        {
            if (content is JunctionContent { IsKept: false } junction)
            {
                junction.Forget();
            }
        }

        flows.ForEach(f => f.Layered = -1);
        return (flows.ConvertAll(f => f.Copy()), Lying().ToList());
    }

    /// <summary>What lies where now, kept as it lies: the run goes on with copies of what it touches.</summary>
    public IEnumerable<(int Place, Content Content)> Lying()
    {
        for (var i = 0; i < contents.Length; i++)
        {
            if (contents[i] is { Grams: > 0 } content)
            {
                yield return (i + 1, content.Keep());
            }
        }
    }

    /// <summary>Reckons one stretch: up to the next moment at which anything begins or ends, at most up to a limit.</summary>
    /// <returns>False when there was nothing left to do before the limit.</returns>
    public bool Step(long limit)
    {
        var moment = NextMoment();
        if (moment > limit)
        {
            if (flows.Count > 0 && Now < limit)
            {
                Advance(limit);
            }

            return false;
        }

        if (contents.Length < book.Places.Count)
        {
            Array.Resize(ref contents, book.Places.Count);
        }

        if (moment > Now)
        {
            Advance(moment);
        }

        Finish(flows);
        Begin();
        Stretches++;
        return HasMore;
    }

    private long NextMoment()
    {
        var moment = next < schedule.Count ? schedule[next].At : long.MaxValue;
        if (nextEmpty < schedule.Empties.Count)
        {
            moment = Math.Min(moment, schedule.Empties[nextEmpty].At);
        }

        for (var i = 0; i < flows.Count; i++)
        {
            var flow = flows[i];
            moment = Math.Min(moment, flow.Until);
            if (flow.MeetsOthers && contents[flow.From - 1] is { } from)
            {
                moment = Math.Min(moment, Now + flow.MicrosFor(outflow == Outflow.CoreFirst ? AlikeFilled(i, from) : from.Alike));
            }
        }

        return mark is null ? moment : Math.Min(moment, mark.NextEdge(Now));
    }

    // Grams the flow draws before another parcel begins to leave; what flows in during a stretch falls in before it draws, and others draw beside it.
    private double AlikeFilled(int drawing, Content from)
    {
        var place = flows[drawing].From;
        double filled = 0, drawn = 0;
        for (var i = 0; i < flows.Count; i++)
        {
            if (i < drawing && flows[i].To == place && Gives(flows[i]))
            {
                filled += flows[i].Rate;
            }

            drawn += flows[i].From == place ? flows[i].Rate : 0;
        }

        return filled > 0 ? from.AlikeFilled(filled / drawn) * (flows[drawing].Rate / drawn) : from.Alike;
    }

    private bool Gives(Flow flow) => flow.Origin >= 0 || contents[flow.From - 1] is JunctionContent or { Grams: > Content.Nothing };

    private void Advance(long moment)
    {
        maker.Stretch(Now, stretchEnd = moment);
        CarryDue(flows, moment);
        Now = moment;
    }

    // Mostly one pass: another one serves a place that gets its grain, in the same stretch, from one of its own rank.
    private void CarryDue(List<Flow> among, long moment)
    {
        bool carried, behind;
        do
        {
            (carried, behind) = (false, false);
            foreach (var flow in among)
            {
                var due = flow.DueAt(moment) - flow.Moved;
                if (due > Content.Nothing)
                {
                    var moved = Carry(flow, due, moment);
                    flow.Moved += moved;
                    carried |= moved > Content.Nothing;
                    behind |= due - moved > Content.Nothing;
                }
            }
        }
        while (carried && behind);
    }

    // What is whole is handed over first: a load set down in a truck may leave it in the same moment.
    private void Finish(List<Flow> among)
    {
        while (HandWhole(among))
        {
            CarryDue(among, Now);
        }

        for (var i = 0; i < among.Count;)
        {
            if (among[i].Until > Now)
            {
                i++;
                continue;
            }

            // A place may be a few grams short by the rounding of even rates; more than that is of unknown origin, and kept.
            var flow = among[i];
            var missing = flow.Grams - flow.Moved;
            if (missing > RoundingOfRates)
            {
                SetDown(flow, maker.Origin(flow.From, flow.Movement, flow.At, flow.Until, missing, isGrain: true), missing);
            }

            Hand(flow);
            among.RemoveAt(i);
        }
    }

    private bool HandWhole(List<Flow> among)
    {
        var any = false;
        for (var i = 0; i < among.Count;)
        {
            if (among[i] is var flow && flow.Until <= Now && flow.Grams - flow.Moved <= Content.Nothing)
            {
                any = true;
                Hand(flow);
                among.RemoveAt(i);
            }
            else
            {
                i++;
            }
        }

        return any;
    }

    private void Begin()
    {
        maker.Stretch(Now, stretchEnd = Now);
        for (; next < schedule.Count && schedule[next].At <= Now; next++)
        {
            var index = schedule[next].Movement;
            if (book.Counts(index) && book.Movements[index] is { Mass.Grams: > 0 } movement)
            {
                Start(movement, index, schedule[next].Rank);
            }
        }

        CarryDue(sudden, Now);
        Finish(sudden);
        for (; nextEmpty < schedule.Empties.Count && schedule.Empties[nextEmpty].At <= Now; nextEmpty++)
        {
            contents[schedule.Empties[nextEmpty].Place - 1] = null;
        }
    }

    private void Start(Movement movement, int index, int rank)
    {
        var to = book[movement.To].Kind.Role();
        var kind = book[movement.From].Kind;
        var flow = new Flow
        {
            Movement = index, From = movement.From.Value, To = movement.To.Value, Grams = movement.Mass.Grams,
            At = movement.At.ToMicros(), Until = movement.Until.ToMicros(), Rank = rank,
            Arrived = to is PlaceRole.Unit or PlaceRole.Sink ? [] : null,
            MakesLayers = book[movement.To].Kind == PlaceKind.Bin,
            MeetsOthers = to == PlaceRole.Junction && kind.Role() == PlaceRole.Store && movement.IsFlow,
        };
        if (kind.Role() == PlaceRole.Source)
        {
            flow.Origin = maker.Origin(flow.From, index, flow.At, flow.Until, flow.Grams, kind is not (PlaceKind.Water or PlaceKind.AdditiveLot));
            OnOrigin?.Invoke(index, flow.Origin);
        }

        var among = movement.IsFlow ? flows : sudden;
        var i = among.Count;
        while (i > 0 && among[i - 1].Rank > rank)
        {
            i--;
        }

        // From bin to bin: what falls on a crater is there before the next draw.
        var drawn = movement.IsFlow && outflow == Outflow.CoreFirst ? among.FindIndex(f => f.Rank == rank && f.From == flow.To) : -1;
        among.Insert(drawn < 0 ? i : drawn, flow);
    }

    // What lies in a place, free to be changed.
    private Content? Open(int place)
    {
        ref var content = ref contents[place - 1];
        return content is { IsKept: true } kept ? content = kept.Copy(maker) : content;
    }

    private double Carry(Flow flow, double grams, long moment)
    {
        taken.Clear();
        if (flow.Origin >= 0)
        {
            taken.Add(new Layer(flow.Origin, grams));
        }
        else
        {
            var from = Open(flow.From);
            from?.Draw(grams, taken);
            if (from is { Grams: <= 0 } && flow.Until == flow.At && from is not JunctionContent)
            {
                contents[flow.From - 1] = null;
            }
        }

        double moved = 0;
        foreach (var layer in taken)
        {
            moved += layer.Grams;
        }

        if (moved > 0 && mark is not null && mark.Holds(flow.From, Now, moment))
        {
            var parcel = maker.Load(flow.From, -1, Now, moment, taken, moved);
            mark.Parcels.Add(new Layer(parcel, moved));
            SetDown(flow, parcel, moved);
            return moved;
        }

        foreach (var layer in taken)
        {
            SetDown(flow, layer.Parcel, layer.Grams);
        }

        return moved;
    }

    private void SetDown(Flow flow, int parcel, double grams)
    {
        if (flow.Arrived is not { } arrived)
        {
            var to = Open(flow.To) ?? (contents[flow.To - 1] = Make(book[new PlaceId(flow.To)]));
            to.Fill(flow.MakesLayers ? LayerOf(flow, parcel, grams) : parcel, grams);
            return;
        }

        arrived.Add(parcel, grams, lookBack: 32);
    }

    // What falls into a wheat bin is a parcel of its own, so that a trace can name the bin.
    private int LayerOf(Flow flow, int parcel, double grams)
    {
        if (flow.Layered == parcel)
        {
            maker.Extend(flow.Layer, grams);
            return flow.Layer;
        }

        parts.Clear();
        parts.Add(new Layer(parcel, grams));
        flow.Layered = parcel;
        flow.Layer = maker.Load(flow.To, flow.Movement, Now, stretchEnd, parts, grams);
        OnLoad?.Invoke(flow.Movement, flow.Layer);
        return flow.Layer;
    }

    private void Hand(Flow flow)
    {
        if (flow.Arrived is not { Count: > 0 } arrived)
        {
            return;
        }

        var parcel = maker.Load(flow.To, flow.Movement, flow.At, flow.Until, arrived, flow.Grams);
        OnLoad?.Invoke(flow.Movement, parcel);
        var place = book[new PlaceId(flow.To)];
        if (place.Kind.Role() == PlaceRole.Unit)
        {
            (Open(flow.To) ?? (contents[flow.To - 1] = Make(place))).Fill(parcel, flow.Grams);
        }
    }

    private Content Make(Place place) => place.Kind.Role() switch
    {
        PlaceRole.Unit => new StirredContent(place.Id.Value, maker),
        PlaceRole.Through => new ThroughContent(place.Id.Value, place.Stirred.Grams, maker),
        PlaceRole.Store => outflow switch
        {
            Outflow.FirstInFirstOut => new PlugContent(),
            Outflow.CoreFirst => new CoreContent(place.CoreShare),
            _ => new StirredContent(place.Id.Value, maker),
        },
        _ => new JunctionContent(place.Id.Value, maker),
    };
}
