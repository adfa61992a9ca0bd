using Evengrist.Quantities.Lists;
using Evengrist.Records.Lists;
using Evengrist.Web.Visiting;

namespace Evengrist.Web.Sights.Lists;

/// <summary>A list on a page, taken out with <c>?as=</c> at the page's own address.</summary>
/// <param name="Name">The list.</param>
/// <param name="Page">Address of the page; <c>{Code}</c> in it names what the list is about.</param>
/// <param name="Take">Makes the list of what the address asks for; null with a sentence where it cannot.</param>
public sealed record PageList(string Name, string Page, Func<Visit, HttpContext, ListAsk, (TakenList? List, string Why)> Take)
{
    /// <summary>What it is called on the page.</summary>
    public string Words => Name.Replace('-', ' ');

    /// <summary>A list that the records know by name.</summary>
    public static PageList Of(string page, string name)
    {
        var list = MillLists.Find(name) ?? throw new ArgumentException($"No list is called \"{name}\".", nameof(name));
        return new(list.Name, page, (visit, _, ask) => (list.Take(visit.Mill, ask), ""));
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
