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
        var (book, refused) = Laid<T>(posed.Drafts, posed.Paths);
        return refused ?? (book.Find(posed.Question.Code) is null
            ? Parsing.Failed<T>(Fault.AtPath("$.question.code", posed.Question.Code, "the code of a place of the case"))
            : Parsing.Got(answer(Tracer.Over(book))));
    }

    /// <summary>A book of a posed mill, or why the ledger cannot take it.</summary>
    internal static (Book Book, Parsed<T>? Refused) Laid<T>(IReadOnlyList<Draft> drafts, IReadOnlyList<string> paths)
        where T : class
    {
        var book = new Book();
        var recorded = drafts.OfType<Move>().Select(m => m.Until ?? m.At).Concat(drafts.OfType<Happen>().Select(h => h.At)).DefaultIfEmpty(Instant.MinValue).Max();
        try
        {
            book.Append(book.ToFacts(drafts, "posed", "posed", recorded));
            return (book, null);
        }
        catch (LedgerRefusal refusal)
        {
            return (book, Parsing.Failed<T>(Fault.AtPath(refusal.Index >= 0 ? paths[refusal.Index] : "$.movements", refusal.Place ?? "", $"what the ledger can take. {refusal.Message}")));
        }
    }
}
