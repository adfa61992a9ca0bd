using Evengrist.Ledger;
using Evengrist.Records.Browsing;

namespace Evengrist.Records.Tracing;

/// <summary>Facts that put earlier ones right, with who recorded them and when: the book in memory does not hold that.</summary>
public static class Corrected
{
    private const int PageSize = 1000;
    private static readonly FactSort[] Sorts = [FactSort.Movement, FactSort.Happening];

    /// <summary>Corrections of movements and of happenings, the newest first.</summary>
    public static IReadOnlyList<Fact> By(Mill mill)
    {
        ArgumentNullException.ThrowIfNull(mill);
        return [.. Sorts.SelectMany(sort => Pages(mill, sort)).Select(l => l.Fact)];
    }

    private static IEnumerable<FactLine> Pages(Mill mill, FactSort sort)
    {
        FactId? before = null;
        do
        {
            var page = mill.Facts(new FactFilter { Sort = sort, Correcting = true, Before = before, Size = PageSize });
            foreach (var line in page.Lines)
            {
                yield return line;
            }

            before = page.Next;
        }
        while (before is not null);
    }
}
