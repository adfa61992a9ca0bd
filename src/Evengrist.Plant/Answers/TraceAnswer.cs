using Evengrist.Ledger;
using Evengrist.Plant.Cases;
using Evengrist.Tracing;
using NodaTime;

namespace Evengrist.Plant.Answers;

/// <summary>Traces in a posed mill: a book of its own, and no database.</summary>
public static class TraceAnswer
{
    /// <summary>Where the thing asked about came from.</summary>
    public static Parsed<RootsAnswer> Roots(TraceCase posed) => Ask(posed, tracer => RootsAnswer.Of(tracer.Roots(posed.Question, posed.Beliefs)));

    /// <summary>What the thing asked about has reached.</summary>
    public static Parsed<ReachAnswer> Reach(TraceCase posed) => Ask(posed, tracer => ReachAnswer.Of(tracer.Reach(posed.Question, posed.Beliefs)));

    private static Parsed<T> Ask<T>(TraceCase posed, Func<Tracer, T> answer)
        where T : class
    {
        var book = new Book();
        var recorded = posed.Drafts.OfType<Move>().Select(m => m.Until ?? m.At).Concat(posed.Drafts.OfType<Happen>().Select(h => h.At)).DefaultIfEmpty(Instant.MinValue).Max();
        try
        {
            book.Append(book.ToFacts(posed.Drafts, "posed", "posed", recorded));
        }
        catch (LedgerRefusal refusal)
        {
            var path = refusal.Index >= 0 ? posed.Paths[refusal.Index] : "$.movements";
            return Parsing.Failed<T>(Fault.AtPath(path, refusal.Place ?? "", $"what the ledger can take. {refusal.Message}"));
        }

        return book.Find(posed.Question.Code) is null
            ? Parsing.Failed<T>(Fault.AtPath("$.question.code", posed.Question.Code, "the code of a place of the case"))
            : Parsing.Got(answer(Tracer.Over(book)));
    }
}
