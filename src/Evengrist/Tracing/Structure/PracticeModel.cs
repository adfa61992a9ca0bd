using Evengrist.Ledger;
using NodaTime;

namespace Evengrist.Tracing.Structure;

/// <summary>Traces truck after truck of a span forward and adds up the packages each has reached. Model: docs/model/lot-structure.md.</summary>
/// <remarks>One truck at a time, so that whoever keeps the ledger can serve others in between.</remarks>
public sealed class PracticeModel
{
    private readonly PracticeQuestion question;
    private readonly int trucksInSpan;
    private readonly (Place Truck, int[] Loads, Instant At)[] asked;
    private readonly List<PracticeTruck> trucks = [];
    private long[] links = [];
    private Outflow[] outflows = [];
    private double packed;
    private int done;

    /// <summary>The work on a question: which trucks are traced is settled now.</summary>
    /// <exception cref="ArgumentException">The span is none, or no truck is to be traced.</exception>
    public PracticeModel(Book book, PracticeQuestion question)
    {
        ArgumentNullException.ThrowIfNull(book);
        ArgumentNullException.ThrowIfNull(question);
        if (question.Until <= question.From || question.MostTraced < 1)
        {
            throw new ArgumentException("Give a span that ends after it begins, and at least one truck to trace.", nameof(question));
        }

        this.question = question;
        var all = book.OfKind(PlaceKind.Truck).SelectMany(t => book.MovementsOf(t.Id).Select(i => (Truck: t, Index: i)))
            .Where(l => book.Movements[l.Index] is var m && m.To == l.Truck.Id && m.At >= question.From && m.At < question.Until && m.At <= question.AsOf)
            .GroupBy(l => l.Truck).Select(g => (Truck: g.Key, Loads: g.Select(l => l.Index).ToArray(), book.Movements[g.First().Index].At)).OrderBy(t => t.At).ThenBy(t => t.Truck.Id).ToArray();
        var step = Math.Max(1.0, all.Length / (double)question.MostTraced);
        asked = [.. Enumerable.Range(0, Math.Min(all.Length, question.MostTraced)).Select(i => all[(int)(i * step)])];
        trucksInSpan = all.Length;
    }

    /// <summary>Share of the trucks that is traced, 0 to 1.</summary>
    public double Share => asked.Length == 0 ? 1 : done / (double)asked.Length;

    /// <summary>The whole answer at once.</summary>
    /// <inheritdoc cref="PracticeModel(Book, PracticeQuestion)"/>
    public static PracticeOutcome Answer(Book book, Tracer tracer, PracticeQuestion question)
    {
        var work = new PracticeModel(book, question);
        while (work.Step(book, tracer))
        {
        }

        return work.Outcome();
    }

    /// <summary>Traces the next truck; false when all are.</summary>
    /// <param name="book">The ledger.</param>
    /// <param name="tracer">The tracer over it.</param>
    public bool Step(Book book, Tracer tracer)
    {
        ArgumentNullException.ThrowIfNull(book);
        ArgumentNullException.ThrowIfNull(tracer);
        var strands = tracer.Strands;
        if (outflows.Length == 0)
        {
            (outflows, links, packed) = ([.. strands.Select(s => s.Reckoning.Outflow)], new long[strands.Count + 1], Packed(book));
        }

        if (done < asked.Length && Trace(book, strands, asked[done++]) is { } truck)
        {
            trucks.Add(truck);
        }

        return done < asked.Length;
    }

    /// <summary>What the trucks traced so far come to.</summary>
    public PracticeOutcome Outcome()
    {
        double[] raw = [.. trucks.Select(t => t.Kilograms)];
        return new PracticeOutcome(question, trucksInSpan, outflows, [.. trucks], done - trucks.Count,
            [.. outflows.Select((_, h) => RecallSizes.Of(raw, [.. trucks.Select(t => t.Recall[h])], links[h]))], RecallSizes.Of(raw, [.. trucks.Select(t => t.RecallUnion)], links.LastOrDefault()), packed);
    }

    private PracticeTruck? Trace(Book book, IReadOnlyList<Strand> strands, (Place Truck, int[] Loads, Instant At) load)
    {
        var (recall, union, share) = (new double[strands.Count], new HashSet<PlaceId>(), 0.0);
        for (var h = 0; h < strands.Count; h++)
        {
            var found = Found(book, strands[h], load.Loads);
            share = h == 0 ? found.Values.Sum() : share;
            foreach (var (package, grams) in found)
            {
                if (grams > question.Threshold.Grams)
                {
                    recall[h] += Filled(book, package);
                    links[h]++;
                    union.Add(package);
                }
            }
        }

        links[^1] += union.Count;
        var kilograms = load.Loads.Sum(i => book.Movements[i].Mass.Grams) / 1000.0;
        return union.Count == 0 || kilograms <= 0 ? null : new PracticeTruck(load.Truck, load.At, kilograms, recall, union.Sum(p => Filled(book, p)), union.Count, share / 1000 / kilograms);
    }

    private Dictionary<PlaceId, double> Found(Book book, Strand strand, int[] loads)
    {
        int[] starts = [.. loads.Select(strand.Reckoning.LoadOf).OfType<int>()];
        var (found, graph, latest) = (new Dictionary<PlaceId, double>(), strand.Parcels, question.AsOf.ToMicros());
        strand.Sweep.Forward(starts, starts.Select(_ => 1.0).ToArray(), Strand.Least);
        foreach (var parcel in strand.Sweep.Reached)
        {
            var place = graph.PlaceOf(parcel);
            if (graph.MovementOf(parcel) >= 0 && graph.UntilOf(parcel) <= latest && book[place].Kind is PlaceKind.Pallet or PlaceKind.BulkLoad)
            {
                found[place] = found.GetValueOrDefault(place) + graph.GramsOf(parcel) * strand.Sweep.ShareOf(parcel) / graph.GrainShareOf(parcel);
            }
        }

        return found;
    }

    private double Filled(Book book, PlaceId package) =>
        book.MovementsOf(package).Select(i => book.Movements[i]).Where(m => m.To == package && m.Until <= question.AsOf).Sum(m => m.Mass.Grams) / 1000.0;

    private double Packed(Book book) => new[] { PlaceKind.Pallet, PlaceKind.BulkLoad }.SelectMany(book.OfKind)
        .SelectMany(p => book.MovementsOf(p.Id).Select(i => book.Movements[i]).Where(m => m.To == p.Id && m.Until >= question.From && m.Until <= question.AsOf)).Sum(m => m.Mass.Grams) / 1000.0;
}
