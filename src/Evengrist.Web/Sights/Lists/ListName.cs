using Evengrist.Records.Lists;

namespace Evengrist.Web.Sights.Lists;

/// <summary>A list by its name.</summary>
/// <param name="Name">Short name.</param>
/// <param name="Title">What it is.</param>
/// <param name="OfMill">Whether it is taken at <c>/api/lists/NAME</c> and on the command line; false for the answer to what a page is asked, which is taken at the page's address.</param>
/// <param name="Pages">Addresses of the pages it stands on; <c>{Code}</c> in one is what the list is about.</param>
public sealed record ListName(string Name, string Title, bool OfMill, IReadOnlyList<string> Pages)
{
    /// <summary>Every list, by name.</summary>
    public static IReadOnlyList<ListName> All { get; } =
    [
        .. MillLists.All.Select(l => (l.Name, l.Title)).Concat(PageLists.All.Where(p => MillLists.Find(p.Name) is null).Select(p => (p.Name, p.Title))).DistinctBy(l => l.Name).OrderBy(l => l.Name, StringComparer.Ordinal)
            .Select(l => new ListName(l.Name, l.Title, MillLists.Find(l.Name) is not null, [.. PageLists.All.Where(p => p.Name == l.Name).Select(p => p.Page).Distinct()])),
    ];
}
