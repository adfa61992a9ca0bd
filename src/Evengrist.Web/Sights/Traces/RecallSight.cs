using System.Diagnostics;
using Evengrist.Ledger;
using Evengrist.Records;
using Evengrist.Tracing;
using Evengrist.Tracing.Recall;

namespace Evengrist.Web.Sights.Traces;

/// <summary>A recall answered, with all that pages and prints show of it.</summary>
/// <param name="Outcome">The answer.</param>
/// <param name="Net">The net whose lists are shown.</param>
/// <param name="Deliveries">What of it went to customers.</param>
/// <param name="Costs">Cost of each net in their order, and products without a price.</param>
/// <param name="Words">What each thing asked was taken for.</param>
/// <param name="Took">From question to list.</param>
public sealed record RecallSight(
    RecallOutcome Outcome, Net Net, IReadOnlyList<Delivery> Deliveries, IReadOnlyList<(decimal? Cost, IReadOnlyList<string> Unpriced)> Costs, IReadOnlyList<string> Words, TimeSpan Took)
{
    private const int StartsWithRoots = 3;

    /// <summary>Stops on the way.</summary>
    public IReadOnlyList<Stage> Stages => Stage.Of(Outcome.Passages);

    /// <summary>Deliveries by customer.</summary>
    public IEnumerable<IGrouping<Place, Delivery>> Consignees => Deliveries.GroupBy(d => d.Customer);

    /// <summary>Where the first packages and loads asked about came from, the largest share first; none for other starts.</summary>
    public IReadOnlyList<(Place Start, IReadOnlyList<Root> Roots)> Roots(MillView view, RecallAsk ask)
    {
        ArgumentNullException.ThrowIfNull(view);
        ArgumentNullException.ThrowIfNull(ask);
        return [.. Outcome.Question.Starts.Where(s => s.Place.Kind is PlaceKind.Pallet or PlaceKind.BulkLoad or PlaceKind.ReworkTote).Take(StartsWithRoots)
            .Select(s => (s.Place, view.Tracer().Roots(new TraceQuestion(s.Place.Code) { AsOf = Outcome.AsOf }, ask.Numbers.Beliefs).Roots))];
    }

    /// <summary>Answers.</summary>
    public static RecallSight? Of(MillView view, RecallAsk ask, RecallQuestion question, IReadOnlyList<string> words, out string? nothing)
    {
        ArgumentNullException.ThrowIfNull(view);
        ArgumentNullException.ThrowIfNull(ask);
        ArgumentNullException.ThrowIfNull(question);
        var clock = Stopwatch.StartNew();
        var outcome = view.Tracer().Recall(question, ask.Numbers.Beliefs, Parallel.Invoke);
        nothing = outcome.Nothing;
        if (nothing is not null)
        {
            return null;
        }

        var net = outcome.Net(ask.Net);
        return new RecallSight(outcome, net, Delivery.Of(view.Book, net.Packages.Select(p => p.Place.Id), outcome.AsOf), [.. outcome.Nets.Select(ask.Costs.Of)], words, clock.Elapsed);
    }
}
