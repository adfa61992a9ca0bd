using System.Runtime.CompilerServices;
using Evengrist.Ledger;
using Evengrist.Records;

namespace Evengrist.Web.Sights;

/// <summary>One reckoning for each book and hypothesis, kept while the mill is open.</summary>
public static class ReckoningOfView
{
    private static readonly ConditionalWeakTable<Book, Dictionary<Outflow, Reckoning>> Known = [];

    /// <summary>The reckoning, up to date with the book.</summary>
    public static Reckoning Reckoning(this MillView view, Outflow outflow)
    {
        var known = Known.GetOrCreateValue(view.Book);
        if (!known.TryGetValue(outflow, out var reckoning))
        {
            known.Add(outflow, reckoning = new Reckoning(view.Book, outflow));
        }

        reckoning.CatchUp();
        return reckoning;
    }
}
