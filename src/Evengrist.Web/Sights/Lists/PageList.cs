using Evengrist.Quantities.Lists;
using Evengrist.Records.Lists;
using Evengrist.Web.Visiting;

namespace Evengrist.Web.Sights.Lists;

/// <summary>A list on a page, taken out with <c>?as=</c> at the page's own address.</summary>
/// <param name="Name">The list.</param>
/// <param name="Page">Address of the page; <c>{Code}</c> in it names what the list is about.</param>
/// <param name="Title">What it is, in words.</param>
/// <param name="Take">Makes the list of what the address asks for; null with a sentence where it cannot.</param>
public sealed record PageList(string Name, string Page, string Title, Func<Visit, HttpContext, ListAsk, (TakenList? List, string Why)> Take)
{
    /// <summary>Whether it is of what stands in the form of the page, sent with it by buttons there; the page's address alone does not say enough.</summary>
    public bool IsOfForm { get; init; }

    /// <summary>What it is called on the page.</summary>
    public string Words => Name.Replace('-', ' ');

    /// <summary>A list that the records know by name.</summary>
    /// <param name="page">Address of the page.</param>
    /// <param name="name">Name of the list.</param>
    /// <param name="about">The field of the page's address that names what the list is about; empty where the address itself does, or nothing.</param>
    public static PageList Of(string page, string name, string about = "")
    {
        var list = MillLists.Find(name) ?? throw new ArgumentException($"No list is called \"{name}\".", nameof(name));
        return new(list.Name, page, list.Title, (visit, _, ask) => (list.Take(visit.Mill, about.Length > 0 && ask[about] is { Length: > 0 } one ? ask with { Of = one } : ask), ""));
    }

    /// <summary>A list of the answer to what the address of a page asks, which no record holds.</summary>
    /// <param name="page">Address of the page.</param>
    /// <param name="name">Short name, small letters and hyphens.</param>
    /// <param name="title">What it is, in words.</param>
    /// <param name="columns">Its columns.</param>
    /// <param name="rows">What stands on it; null with a sentence where there is no answer.</param>
    public static PageList Answer<T>(string page, string name, string title, ListOf<T> columns, Func<Visit, HttpContext, (IEnumerable<T>? Rows, string Why)> rows)
    {
        ArgumentNullException.ThrowIfNull(columns);
        return new(name, page, title, (visit, context, _) =>
        {
            var (found, why) = rows(visit, context);
            return (found is null ? null : columns.List(name, title, found), why);
        });
    }

    /// <summary>What the address names in place of <c>{Code}</c>, empty where it names nothing; null where it is another page's.</summary>
    public string? CodeIn(string path)
    {
        var (mine, theirs) = (Page.Split('/'), path.TrimEnd('/').Split('/'));
        var code = "";
        if (mine.Length != theirs.Length)
        {
            return null;
        }

        for (var i = 0; i < mine.Length; i++)
        {
            if (mine[i] == "{Code}")
            {
                code = theirs[i];
            }
            else if (!mine[i].Equals(theirs[i], StringComparison.OrdinalIgnoreCase))
            {
                return null;
            }
        }

        return code;
    }
}
