using Evengrist.Quantities;
using NodaTime;

namespace Evengrist.Ledger;

/// <summary>The ledger in memory: places, and every movement, reading and happening, in the order in which they were recorded.</summary>
/// <remarks>
/// Facts are only ever appended. A fact that another corrects stays here and no longer counts. Stock is reckoned from what
/// counts, so that for every place in − out = stock, and over all places the stocks sum to zero, exactly.
/// Not safe for use by several threads at once: the host keeps one writer and no reader beside it.
/// </remarks>
public sealed class Book
{
    private readonly List<Place> places = [];
    private readonly Dictionary<string, PlaceId> byCode = new(StringComparer.OrdinalIgnoreCase);
    private readonly Dictionary<PlaceKind, List<Place>> byKind = [];
    private readonly HashSet<(PlaceId From, PlaceId To)> connections = [];
    private readonly List<Timeline> timelines = [];
    private readonly List<Movement> movements = [];
    private readonly List<bool> voided = [];
    private readonly PlacedFacts<Reading> readings = new(r => r.Id, r => r.On, r => r.At);
    private readonly PlacedFacts<Happening> happenings = new(h => h.Id, h => h.On, h => h.At);
    private readonly List<long> touches = [];

    /// <summary>All places, by number: place 1 first.</summary>
    public IReadOnlyList<Place> Places => places;

    /// <summary>The named connections between fixed places.</summary>
    public IReadOnlyCollection<(PlaceId From, PlaceId To)> Connections => connections;

    /// <summary>All movements in the order of recording, those that no longer count included.</summary>
    public IReadOnlyList<Movement> Movements => movements;

    /// <summary>Number of the newest fact; 0 for an empty book.</summary>
    public FactId Last { get; private set; }

    /// <summary>The latest moment anything happened; null for a book without movements, readings and happenings.</summary>
    public Instant? Newest { get; private set; }

    /// <summary>The place with the number.</summary>
    /// <exception cref="ArgumentOutOfRangeException">No place has it.</exception>
    public Place this[PlaceId id] => places[id.Value - 1];

    /// <summary>The place with the code, case not mattering; null where there is none.</summary>
    public Place? Find(string code) => byCode.TryGetValue(code.Trim(), out var id) ? this[id] : null;

    /// <summary>The place with the code.</summary>
    /// <exception cref="LedgerRefusal">No place has it.</exception>
    public Place Named(string code) => Find(code)
        ?? throw new LedgerRefusal(LedgerRule.UnknownPlace, $"There is no place with the code \"{code}\". Open it first, or look for a typing error.") { Place = code };

    /// <summary>Places of a kind, by number.</summary>
    public IEnumerable<Place> OfKind(PlaceKind kind) => byKind.TryGetValue(kind, out var there) ? there : [];

    /// <summary>Whether the movement at a position of <see cref="Movements"/> counts, that is, has not been corrected by a later one.</summary>
    public bool Counts(int movement) => !voided[movement];

    /// <summary>Position in <see cref="Movements"/> of the movement with the number; −1 where there is none.</summary>
    public int IndexOf(FactId id) => movements.FindSorted(id, m => m.Id);

    /// <summary>Movements that count and touch the place, as positions in <see cref="Movements"/>, by the moment at which they were done.</summary>
    public IEnumerable<int> MovementsOf(PlaceId place) => timelines[place.Value - 1].Entries.Select(e => e.Movement);

    /// <summary>The same, of those that were done at one moment.</summary>
    public IEnumerable<int> MovementsOf(PlaceId place, Instant doneAt) => timelines[place.Value - 1].DoneAt(doneAt.ToMicros()).Select(e => e.Movement);

    /// <summary>Readings on a place that count, by time.</summary>
    public IReadOnlyList<Reading> ReadingsOn(PlaceId place) => readings.On(place);

    /// <summary>Happenings on a place that count, by time.</summary>
    public IReadOnlyList<Happening> HappeningsOn(PlaceId place) => happenings.On(place);

    /// <summary>All happenings in the order of recording, those that no longer count included.</summary>
    public IReadOnlyList<Happening> Happenings => happenings.All;

    /// <summary>All readings in the order of recording, those that no longer count included.</summary>
    public IReadOnlyList<Reading> Readings => readings.All;

    /// <summary>Whether the reading counts.</summary>
    public bool Counts(Reading reading) => readings.Counts(reading);

    /// <summary>Whether the happening counts.</summary>
    public bool Counts(Happening happening) => happenings.Counts(happening);

    /// <summary>Stock of a place after everything that has been recorded: in − out. Negative for a source.</summary>
    public Mass StockOf(PlaceId place) => Mass.FromGrams(timelines[place.Value - 1].Total);

    /// <summary>Stock of a place at a moment; a flow under way counts by its elapsed part.</summary>
    public Mass StockOf(PlaceId place, Instant at) => Mass.FromGrams(timelines[place.Value - 1].StockAt(at.ToMicros()));

    /// <summary>What went into and out of a place up to a moment.</summary>
    public (Mass In, Mass Out) ThroughputOf(PlaceId place, Instant at)
    {
        var (into, outOf) = timelines[place.Value - 1].ThroughputAt(at.ToMicros());
        return (Mass.FromGrams(into), Mass.FromGrams(outOf));
    }

    /// <summary>Whether the place is on hold at a moment; the hold is given.</summary>
    public Happening? HoldOn(PlaceId place, Instant at) => BarsOn(place, at).Held;

    /// <summary>What keeps grain from going into or out of the place at a moment, everything that happened up to and at it included.</summary>
    public Bars BarsOn(PlaceId place, Instant at)
    {
        var bars = Bars.None;
        foreach (var happening in happenings.On(place))
        {
            if (happening.At > at)
            {
                break;
            }

            bars = bars.After(happening);
        }

        return bars;
    }

    /// <summary>Whether grain can go from the one place to the other: a connection between fixed places, the order of kinds otherwise.</summary>
    public bool CanFlow(Place from, Place to) => from.Kind.IsFixed() && to.Kind.IsFixed()
        ? connections.Contains((from.Id, to.Id))
        : Routes.Allows(from.Kind, to.Kind);

    /// <summary>Appends facts, all or none. Their numbers must rise and lie above <see cref="Last"/>.</summary>
    /// <param name="facts">In the order of recording.</param>
    /// <param name="trusted">True for facts read back from the records: rules were checked when they were recorded and are not checked again.</param>
    /// <param name="keep">Writes the facts down once the rules hold; what it throws is passed on, and the book is as it was.</param>
    /// <exception cref="LedgerRefusal">A fact breaks a rule; the book is as it was.</exception>
    public void Append(IReadOnlyList<Fact> facts, bool trusted = false, Action? keep = null)
    {
        ArgumentNullException.ThrowIfNull(facts);
        var (last, newest, touched) = (Last, Newest, touches.Count);
        var check = trusted ? null : new Check(this);
        var done = 0;
        try
        {
            foreach (var fact in facts)
            {
                check?.Before(fact, done);
                Apply(fact, check);
                done++;
            }

            check?.Balances();
            keep?.Invoke();
        }
        catch
        {
            while (done > 0)
            {
                Undo(facts[--done]);
            }

            (Last, Newest) = (last, newest);
            touches.RemoveRange(touched, touches.Count - touched);
            throw;
        }
    }

    /// <summary>For every change that reckoning depends on, the moment (microseconds) from which on it matters, in the order of recording.</summary>
    internal IReadOnlyList<long> Touches => touches;

    /// <summary>A movement that counts and touches the place within a span (<paramref name="until"/> left out); null where there is none.</summary>
    internal Movement? MovementWithin(PlaceId place, Instant from, Instant until) =>
        TimelineOf(place).FirstWithin(from.ToMicros(), until.ToMicros()) is { } entry ? movements[entry.Movement] : null;

    internal Timeline TimelineOf(PlaceId place) => timelines[place.Value - 1];

    internal bool CanCorrect(Fact fact, FactId corrected) => fact switch
    {
        Moved => IndexOf(corrected) is var i && i >= 0 && !voided[i],
        Measured => readings.Has(corrected),
        Happened => happenings.Has(corrected),
        _ => false,
    };

    internal Movement? Corrected(Attribution attribution) =>
        attribution.Corrects is { } id && IndexOf(id) is var i && i >= 0 ? movements[i] : null;

    private void Apply(Fact fact, Check? check)
    {
        switch (fact)
        {
            case PlaceOpened opened:
                places.Add(opened.Place);
                byCode.Add(opened.Place.Code, opened.Place.Id);
                (byKind.TryGetValue(opened.Place.Kind, out var alike) ? alike : byKind[opened.Place.Kind] = []).Add(opened.Place);
                timelines.Add(new Timeline());
                break;
            case Connected connected:
                connections.Add((connected.From, connected.To));
                break;
            case Moved moved:
                ApplyMovement(moved, check);
                break;
            case Measured measured:
                readings.Add(measured.Reading, fact.Attribution.Corrects);
                See(measured.Reading.At);
                break;
            case Happened happened:
                happenings.Add(happened.Happening, fact.Attribution.Corrects);
                See(happened.Happening.At);
                Touch(happened.Happening.At);
                break;
        }

        Last = fact.Id;
    }

    private void ApplyMovement(Moved moved, Check? check)
    {
        if (Corrected(moved.Attribution) is { } earlier)
        {
            var index = IndexOf(earlier.Id);
            voided[index] = true;
            Unenter(earlier, index);
            check?.Changed(earlier);
            Touch(earlier.At);
        }

        movements.Add(moved.Movement);
        voided.Add(false);
        Enter(moved.Movement, movements.Count - 1);
        check?.Changed(moved.Movement);
        See(moved.Movement.Until);
        Touch(moved.Movement.At);
    }

    private void Undo(Fact fact)
    {
        switch (fact)
        {
            case PlaceOpened opened:
                places.RemoveAt(places.Count - 1);
                byCode.Remove(opened.Place.Code);
                byKind[opened.Place.Kind].RemoveAt(byKind[opened.Place.Kind].Count - 1);
                timelines.RemoveAt(timelines.Count - 1);
                break;
            case Connected connected:
                connections.Remove((connected.From, connected.To));
                break;
            case Moved moved:
                Unenter(moved.Movement, movements.Count - 1);
                movements.RemoveAt(movements.Count - 1);
                voided.RemoveAt(voided.Count - 1);
                if (Corrected(fact.Attribution) is { } earlier)
                {
                    var index = IndexOf(earlier.Id);
                    voided[index] = false;
                    Enter(earlier, index);
                }

                break;
            case Measured measured:
                readings.RemoveLast(measured.Attribution.Corrects);
                break;
            case Happened happened:
                happenings.RemoveLast(happened.Attribution.Corrects);
                break;
        }
    }

    private void Enter(Movement movement, int index)
    {
        var (at, until, grams) = (movement.At.ToMicros(), movement.Until.ToMicros(), movement.Mass.Grams);
        timelines[movement.From.Value - 1].Add(new(at, until, -grams, index));
        timelines[movement.To.Value - 1].Add(new(at, until, grams, index));
    }

    private void Unenter(Movement movement, int index)
    {
        var (at, until, grams) = (movement.At.ToMicros(), movement.Until.ToMicros(), movement.Mass.Grams);
        timelines[movement.From.Value - 1].Remove(new(at, until, -grams, index));
        timelines[movement.To.Value - 1].Remove(new(at, until, grams, index));
    }

    private void See(Instant moment) => Newest = Newest is { } newest && newest > moment ? newest : moment;

    private void Touch(Instant moment) => touches.Add(moment.ToMicros());
}
