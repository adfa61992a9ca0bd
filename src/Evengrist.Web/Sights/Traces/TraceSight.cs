using System.Diagnostics;
using Evengrist.Ledger;
using Evengrist.Records;
using Evengrist.Tracing;
using NodaTime;

namespace Evengrist.Web.Sights.Traces;

/// <summary>A trace answered, with all that a page or a print shows of it.</summary>
/// <param name="Place">What was asked about.</param>
/// <param name="AsOf">The moment looked back from.</param>
/// <param name="Beliefs">The hypotheses with their weights.</param>
/// <param name="Grams">How much was traced.</param>
/// <param name="Nothing">Why there is nothing to show; null where there is.</param>
public sealed record TraceSight(Place Place, Instant AsOf, IReadOnlyList<Belief> Beliefs, Spread Grams, string? Nothing)
{
    /// <summary>What it has reached; null where roots were asked.</summary>
    public ReachOutcome? Reach { get; private init; }

    /// <summary>Where it came from; null where its reach was asked.</summary>
    public RootsOutcome? Roots { get; private init; }

    /// <summary>Stops on the way.</summary>
    public IReadOnlyList<Stage> Stages { get; private init; } = [];

    /// <summary>The way, drawn.</summary>
    public FlowPicture Flow { get; private init; } = FlowPicture.Of([]);

    /// <summary>Laboratory readings on the way.</summary>
    public IReadOnlyList<ReadingRange> Readings { get; private init; } = [];

    /// <summary>Whole packages over the threshold: made, in stock, shipped, used.</summary>
    public PackageBalance? Balance { get; private init; }

    /// <summary>Packages over the threshold by customer.</summary>
    public IReadOnlyList<Consignee> Consignees { get; private init; } = [];

    /// <summary>Roots by district.</summary>
    public IReadOnlyList<OriginShare> Origins { get; private init; } = [];

    /// <summary>How long the answer took, from question to list.</summary>
    public TimeSpan Took { get; private init; }

    /// <summary>Answers a question.</summary>
    /// <exception cref="LedgerRefusal">The code names no place.</exception>
    public static TraceSight Of(MillView view, TraceQuestion question, IReadOnlyList<Belief> beliefs, bool forward)
    {
        ArgumentNullException.ThrowIfNull(view);
        var clock = Stopwatch.StartNew();
        var sight = forward ? Forward(view, view.Tracer().Reach(question, beliefs)) : Back(view, view.Tracer().Roots(question, beliefs));
        return sight with { Took = clock.Elapsed };
    }

    private static TraceSight Forward(MillView view, ReachOutcome reach) => new(reach.Place, reach.AsOf, reach.Beliefs, reach.Grams, reach.Nothing)
    {
        Reach = reach,
        Stages = Stage.Of(reach.Passages),
        Flow = FlowPicture.Of(reach.Links),
        Readings = ReadingRange.Of(view.Book, reach.Passages, reach.AsOf),
        Balance = PackageBalance.Of(view.Book, reach.Packages.Select(p => p.Place.Id), reach.AsOf),
        Consignees = Consignee.Of(reach.Packages, reach.Beliefs),
    };

    private static TraceSight Back(MillView view, RootsOutcome roots) => new(roots.Place, roots.AsOf, roots.Beliefs, roots.Grams, roots.Nothing)
    {
        Roots = roots,
        Stages = Stage.Of(roots.Passages),
        Flow = FlowPicture.Of(roots.Links),
        Readings = ReadingRange.Of(view.Book, roots.Passages, roots.AsOf),
        Origins = OriginShare.Of(roots.Roots, roots.Beliefs),
    };
}
