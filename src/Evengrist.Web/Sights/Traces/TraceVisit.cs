using Evengrist.Web.Visiting;

namespace Evengrist.Web.Sights.Traces;

/// <summary>A trace asked by a visit: the question as typed, its answer, or what is wrong with it.</summary>
/// <param name="Ask">As typed.</param>
/// <param name="Sight">The answer; null where nothing was asked or it cannot be answered.</param>
/// <param name="Faults">What is wrong and what to do.</param>
public sealed record TraceVisit(TraceAsk Ask, TraceSight? Sight, IReadOnlyList<string> Faults)
{
    /// <summary>Fields of the address in common.</summary>
    public string Query(string? kilograms = null, int? page = null) => QueryString.Create(Ask.Query(kilograms, page)!).ToString();

    /// <summary>Reads the address and answers.</summary>
    public static TraceVisit Of(Visit visit, HttpContext context)
    {
        ArgumentNullException.ThrowIfNull(visit);
        ArgumentNullException.ThrowIfNull(context);
        return Of(visit, Read(context.Request.Query));
    }

    /// <summary>Answers a question as typed.</summary>
    public static TraceVisit Of(Visit visit, TraceAsk ask)
    {
        ArgumentNullException.ThrowIfNull(visit);
        ArgumentNullException.ThrowIfNull(ask);
        if (ask.Code.Length == 0)
        {
            return new TraceVisit(ask, null, []);
        }

        IReadOnlyList<string> faults = [];
        var sight = visit.Mill.Ask(view =>
        {
            if (ask.Resolve(view.Book, visit.Read, visit.AsOf, out faults) is not { } question)
            {
                return null;
            }

            var forward = ask.Way switch { "reach" => true, "roots" => false, _ => TraceAsk.IsUsuallyForward(view.Book.Named(ask.Code), question.From is not null || question.Until is not null) };
            return TraceSight.Of(view, question, ask.Beliefs, forward);
        });
        return new TraceVisit(ask, sight, faults);
    }

    /// <summary>The question in an address.</summary>
    public static TraceAsk Read(IQueryCollection query)
    {
        ArgumentNullException.ThrowIfNull(query);
        string Field(string name) => query[name].ToString().Trim();
        return new TraceAsk
        {
            Code = Field("code"), From = Field("from"), Until = Field("until"), Way = Field("way"), Kilograms = Field("kg"), Weights = [Field("fifo"), Field("core"), Field("stirred")],
        };
    }
}
