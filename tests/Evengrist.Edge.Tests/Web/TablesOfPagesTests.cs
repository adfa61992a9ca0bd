using System.Text.RegularExpressions;
using Evengrist.Tests.Architecture;
using Evengrist.Web.Sights.Lists;

namespace Evengrist.Edge.Tests.Web;

/// <summary>Every page that shows a table offers a list to take out; the few that do not are named with the reason.</summary>
public sealed partial class TablesOfPagesTests
{
    private const string File = "what is shown of a file before anything of it is kept", Answer = "the answer to one question, with its steps; nothing of it is kept", Print = "a print of a page that offers its lists";

    private static readonly Dictionary<string, string> WithoutList = new()
    {
        ["/"] = "the day at a glance: each of its tables leads to the page of its list",
        ["/import"] = File, ["/laboratory/file"] = File, ["/packing/content/file"] = File, ["/season/paper"] = File,
        ["/intake/new"] = "a form, with what the new ticket would come to", ["/mix"] = Answer + "; kept sheets stand under /mix/sheets", ["/season/lot"] = Answer, ["/season/truck"] = Answer, ["/tempering/water"] = Answer,
        ["/dispatch/load/note"] = Print, ["/dispatch/load/record"] = Print, ["/tracing/print"] = Print, ["/intake/{Code}/print"] = Print, ["/intake/season/print"] = Print, ["/intake/statement/print"] = Print, ["/ledger/balance/mill/print"] = Print, ["/milling/sheet/print"] = Print, ["/mix/sheets/print"] = Print, ["/season/bands/print"] = Print,
        ["/season/buying/print"] = Print, ["/season/change-over/print"] = Print, ["/streams/divide/print"] = Print, ["/streams/print"] = Print, ["/tempering/water/print"] = "a print of the answer to one question",
    };

    // Two folders may have a component of one name: each that a tag may mean is looked at.
    private static readonly Dictionary<string, string> Texts = Repository.Sources("src/Evengrist.Web", ".razor").ToDictionary(f => f, Repository.Text);
    private static readonly ILookup<string, string> Named = Texts.Keys.ToLookup(f => Path.GetFileNameWithoutExtension(f));

    private static readonly string[] Pages = [.. Texts.Keys.Where(HasTable).SelectMany(Routes).Order(StringComparer.Ordinal)];

    public static TheoryData<string> Shown => [.. Pages];

    [Theory]
    [MemberData(nameof(Shown))]
    public void Page_WithATable_OffersAListOrIsNamed(string page)
    {
        var lists = PageLists.On(page).Select(l => l.List.Name).ToArray();
        Assert.True(lists.Length > 0 != WithoutList.ContainsKey(page), lists.Length == 0 ? $"{page} shows a table and offers no list." : $"{page} offers {string.Join(", ", lists)}: it needs no exception.");
    }

    [Fact]
    public void Exceptions_AllShowATableAndPrintsBelongToAPageWithLists()
    {
        Assert.Empty(WithoutList.Keys.Except(Pages));
        Assert.All(WithoutList.Where(e => e.Value == Print && e.Key.EndsWith("/print", StringComparison.Ordinal)), e => Assert.NotEmpty(PageLists.On(e.Key[..^"/print".Length].Replace("{Code}", "T-1", StringComparison.Ordinal))));
    }

    [Fact]
    public void Tables_OfTheComponents_AreFoundThroughThePagesThatUseThem()
    {
        Assert.Contains("/tracing", Pages); // its tables stand in components
        Assert.DoesNotContain("/who", Pages);
    }

    private static IEnumerable<string> Routes(string component) => Route().Matches(Texts[component]).Select(m => Part().Replace(m.Groups[1].Value, "{Code}"));

    private static bool HasTable(string component) => Within(component, []).Any(c => Texts[c].Contains("<table", StringComparison.Ordinal));

    // A page with what it is put together from, however deep.
    private static HashSet<string> Within(string component, HashSet<string> seen)
    {
        if (seen.Add(component))
        {
            foreach (var used in Tag().Matches(Texts[component]).SelectMany(m => Named[m.Groups[1].Value]))
            {
                Within(used, seen);
            }
        }

        return seen;
    }

    [GeneratedRegex("@page \"([^\"]+)\"")]
    private static partial Regex Route();

    [GeneratedRegex(@"\{[^}]*\}")]
    private static partial Regex Part();

    [GeneratedRegex(@"<(?:[A-Za-z.]+\.)?([A-Z][A-Za-z0-9]+)")]
    private static partial Regex Tag();
}
