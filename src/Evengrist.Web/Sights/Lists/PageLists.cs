namespace Evengrist.Web.Sights.Lists;

/// <summary>Which lists stand on which page. A list is added here, where its page is named, and in <c>MillLists</c>, where its columns are.</summary>
public static class PageLists
{
    /// <summary>All of them; of a page's own, the first is meant where the address names none.</summary>
    public static IReadOnlyList<PageList> All { get; } =
    [
        PageList.Of("/ledger", "facts"), PageList.Of("/ledger", "movements"), PageList.Of("/ledger", "readings"), PageList.Of("/ledger", "happenings"),
        PageList.Of("/ledger/balance", "balance"),
        PageList.Of("/bins", "bins"), PageList.Of("/bins", "layers"),
        PageList.Of("/bins/{Code}", "movements"), PageList.Of("/bins/{Code}", "layers"), PageList.Of("/bins/{Code}", "readings"),
        PageList.Of("/intake", "trucks"), PageList.Of("/intake/sampling", "retained-samples"),
        PageList.Of("/tracing", "packages"),
    ];

    /// <summary>Lists of the page with the address, and what the address names; none where it has none. An address without a part that may be anything comes first.</summary>
    public static IReadOnlyList<(PageList List, string Code)> On(string path)
    {
        var here = All.Select(l => (List: l, Code: l.CodeIn(path))).Where(l => l.Code is not null).Select(l => (l.List, Code: l.Code!)).ToArray();
        return Array.Exists(here, l => l.Code.Length == 0) ? [.. here.Where(l => l.Code.Length == 0)] : here;
    }
}
