using System.Runtime.CompilerServices;
using Evengrist.Ledger;
using Evengrist.Records;
using Evengrist.Tracing;

namespace Evengrist.Web.Sights.Traces;

/// <summary>One tracer for each book, over the reckonings the mill keeps; asked only while the mill is asked.</summary>
public static class Tracers
{
    private static readonly ConditionalWeakTable<Book, Tracer> Known = [];

    /// <summary>The tracer of a view, level with its book.</summary>
    public static Tracer Tracer(this MillView view)
    {
        ArgumentNullException.ThrowIfNull(view);
        var reckonings = OutflowWords.All.Select(o => view.Reckoning(o)).ToArray();
        return Known.GetValue(view.Book, book => new Tracer(book, reckonings));
    }
}
