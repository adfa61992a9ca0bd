using System.Net;
using System.Text.RegularExpressions;
using Evengrist.Ledger;
using Evengrist.Quantities;
using Evengrist.Records;
using Evengrist.Web.Sights.Trucks;

namespace Evengrist.Edge.Tests.Web.Trucks;

/// <summary>A site of their own for tests that write tickets.</summary>
[CollectionDefinition(Name)]
public sealed class TruckSiteCollection : ICollectionFixture<WebSite>
{
    public const string Name = "truck site";
}

/// <summary>Fills in the form of a new ticket as a person would.</summary>
internal static class Tickets
{
    /// <summary>The worked ticket of the acceptance list: 38 460 and 12 120 kg, 1.2 % dockage, 14.2 % moisture, 13.1 % protein at 12mb.</summary>
    public static Dictionary<string, string> Worked(string ticket) => new()
    {
        ["_handler"] = "ticket", ["T.Act"] = "record", ["T.Ticket"] = ticket, ["T.At"] = "2025-09-14T09:00", ["T.Plate"] = "trailer 7", ["T.Source"] = "DS-2", ["T.Class"] = "HW",
        ["T.Contract"] = ExampleContract.Terms.Title, ["T.Gross"] = "38460", ["T.Tare"] = "12120", ["T.Moisture"] = "14.2", ["T.Dockage"] = "1.2", ["T.Protein"] = "13.1", ["T.ProteinBasis"] = "12mb",
        ["T.TestWeight"] = "60.0", ["T.TestWeightUnit"] = "lb/bu", ["T.Bin"] = "B90", ["T.Way"] = "PIT1 | LEG1", ["T.Method"] = "NIR", ["T.Instrument"] = "NIR-1",
    };

    public static async Task<HttpClient> NamedAsync(WebSite site)
    {
        ExampleContract.KeepWhereNoneIs(site.Mill);
        site.Mill.Record([new OpenPlace("B90", "B90", PlaceKind.Bin, "large", "HW") { Capacity = Mass.FromTonnes(5000m) }, new Connect("LEG1>B90", "LEG1", "B90")], "Ada Miller", "test");
        var client = site.Client();
        using var named = await WebSite.PostAsync(client, "/who", "/choose", [new("name", "Ada Miller")]);
        return client;
    }

    public static Task<HttpResponseMessage> SendAsync(HttpClient client, IReadOnlyDictionary<string, string> form) => WebSite.PostAsync(client, "/intake/new", "/intake/new", form);

    public static async Task<string> TextAsync(HttpClient client, string address) => Plain(await client.GetStringAsync(new Uri(address, UriKind.Relative)));

    /// <summary>What stands on a page, without its tags.</summary>
    public static string Plain(string html) => Regex.Replace(WebUtility.HtmlDecode(Regex.Replace(html, "<[^>]+>", " ")), @"\s+", " ");

    public static Reading? ReadingOf(this Mill mill, string ticket, Property what) =>
        mill.Ask(view => view.Book.Find(ticket) is { } truck ? view.Book.ReadingsOn(truck.Id).LastOrDefault(r => r.What == what) : null);
}
