using Evengrist.Quantities;
using Evengrist.Records;
using Evengrist.Tracing.Structure;
using Evengrist.Web.Visiting;

namespace Evengrist.Web.Sights.Traces;

/// <summary>Recall sizes of today's practice, traced in the background, and of other ways on paper.</summary>
/// <param name="Ask">What was typed.</param>
/// <param name="Practice">The trace of the span; null where something typed is wrong.</param>
/// <param name="Today">What the records say of the way; null where nothing came or was milled.</param>
/// <param name="Ways">Ways beside each other; none where there is nothing to go by.</param>
public sealed record StructureSight(StructureAsk Ask, LongWork<PracticeDone>? Practice, StructureRecords? Today, IReadOnlyList<(string Name, StructureOutcome Outcome)> Ways)
{
    /// <summary>Trucks traced on the page: enough to tell, few enough to wait for.</summary>
    public const int MostTraced = 200;

    /// <summary>Looks; begins to trace where nobody did.</summary>
    /// <param name="shelf">Where long work lies.</param>
    /// <param name="visit">Who looks, at which moment.</param>
    /// <param name="query">What was typed.</param>
    /// <param name="practiceOnly">Whether only how far the trace is will be shown: then nothing is reckoned on paper.</param>
    public static StructureSight Of(WorkShelf shelf, Visit visit, IQueryCollection query, bool practiceOnly)
    {
        ArgumentNullException.ThrowIfNull(shelf);
        ArgumentNullException.ThrowIfNull(visit);
        var ask = new StructureAsk(query, visit);
        var mill = visit.Mill;
        var today = practiceOnly || ask.Faults.Count > 0 ? null : mill.Ask(view => StructureRecords.Of(view.Book, ask.From, ask.Until));
        var spec = today is null ? null : ask.Over(today.Spec);
        if (ask.Faults.Count > 0)
        {
            return new(ask, null, today, []);
        }

        var question = new PracticeQuestion(ask.From, ask.Until, visit.AsOf) { Threshold = Mass.FromKilograms(ask.Threshold), MostTraced = MostTraced };
        var practice = shelf.WorkOn(question, mill.Ask(view => view.Book.Last).ToString(), () => LongWork.Begin((tell, stop) => Trace(mill, question, tell, stop), why => new PracticeDone(null, why)));
        return new(ask, practice, today, spec is null ? [] : [.. StructureRecords.Ways(spec).Select(w => (w.Name, StructureModel.Of(w.Spec)))]);
    }

    // Truck by truck, so that other people's questions are answered in between.
    private static PracticeDone Trace(Mill mill, PracticeQuestion question, Action<WorkStep> tell, CancellationToken stop)
    {
        var work = mill.Ask(view => new PracticeModel(view.Book, question));
        while (!stop.IsCancellationRequested && mill.Ask(view => work.Step(view.Book, view.Tracer())))
        {
            tell(new WorkStep("Tracing truck after truck", work.Share));
        }

        return new(work.Outcome(), "");
    }
}

/// <summary>What came of tracing.</summary>
/// <param name="Outcome">The sizes; null where it broke off.</param>
/// <param name="Why">Why it did.</param>
public sealed record PracticeDone(PracticeOutcome? Outcome, string Why);
