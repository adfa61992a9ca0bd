using Evengrist.Milling.Learning;
using Evengrist.Milling.Suggesting;
using Evengrist.Planning.Milling;
using Evengrist.Records.Milling;
using Evengrist.Records.Streams;
using Evengrist.Web.Visiting;

namespace Evengrist.Web.Sights.Flow;

/// <summary>Moves that are looked for on a unit's flow sheet, as their page and their lists show them.</summary>
public sealed class SuggestSight
{
    // A page is waited for so long; the best found until then is shown.
    private static readonly TimeSpan Longest = TimeSpan.FromSeconds(20);

    private SuggestSight(Visit visit, HttpContext context)
    {
        (Tunings, Kept) = (context.RequestServices.GetRequiredService<MillTunings>(), FlowSheets.Asked(visit.Mill, context.Request.Query.Typed("unit")));
        if (Kept is null)
        {
            return;
        }

        (Survey, History) = (StreamSurveys.Newest(visit.Mill, Kept.Unit), MillTestHistory.Of(visit.Mill, Kept.Unit, visit.AsOf));
        Ask = new SuggestAsk(new TrialAsk(context.Request.Query.Typed, Kept.Sheet, Survey, History));
        Tuning = IsAsked ? Tunings.Work(context.RequestServices.GetRequiredService<WorkShelf>(), Ask.Basics.MarkOf(History), Ask.Basics.Tests) : null;
    }

    /// <summary>The flow sheet; null where none is kept.</summary>
    public KeptFlowSheet? Kept { get; }

    /// <summary>The unit's newest stream survey; null where none is kept.</summary>
    public KeptSurvey? Survey { get; }

    /// <summary>The unit's tests; null without a flow sheet.</summary>
    public MillTestHistory? History { get; }

    /// <summary>What is asked; null without a flow sheet.</summary>
    public SuggestAsk? Ask { get; }

    /// <summary>The work of tuning the mill to what is known of it; null where nothing is.</summary>
    public LongWork<MillFitOutcome>? Tuning { get; }

    /// <summary>What is known of the mill; null before <see cref="Solve"/>.</summary>
    public MillTuning? Tuned { get; private set; }

    /// <summary>Why the mill is not tuned; empty where it is.</summary>
    public IReadOnlyList<string> Untold { get; private set; } = [];

    /// <summary>The moves; null before <see cref="Solve"/>, or where nothing is asked.</summary>
    public SuggestOutcome? Outcome { get; private set; }

    private MillTunings Tunings { get; }

    private bool IsAsked => Ask is { IsAsked: true, Basics.Fields.Faults.Count: 0 };

    /// <summary>Reads what is asked and begins to tune the mill where it is not tuned yet.</summary>
    public static SuggestSight Begin(Visit visit, HttpContext context)
    {
        ArgumentNullException.ThrowIfNull(visit);
        ArgumentNullException.ThrowIfNull(context);
        return new(visit, context);
    }

    /// <summary>Looks for the moves; nothing while the mill is still being tuned.</summary>
    public void Solve(CancellationToken stopping)
    {
        if (!IsAsked || Tuning is { IsRunning: true })
        {
            return;
        }

        (Tuned, Untold) = Tunings.OrNone(Kept!.Sheet, Ask!.Basics.Tests);
        using var stop = CancellationTokenSource.CreateLinkedTokenSource(stopping);
        stop.CancelAfter(Longest);
        Outcome = SuggestSolver.Solve(Ask.Spec(Tuned)!, stop.Token);
    }
}
