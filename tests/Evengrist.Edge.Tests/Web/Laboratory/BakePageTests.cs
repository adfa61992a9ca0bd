using System.Net;
using System.Text;
using Evengrist.Edge.Tests.Web.Trucks;

namespace Evengrist.Edge.Tests.Web.Laboratory;

/// <summary>Bakes of a small mill, on the page and over HTTP.</summary>
[Collection(WebSiteCollection.Name)]
public sealed class BakePageTests(WebSite site)
{
    [Fact]
    public async Task Page_ABake_IsKeptOrRefusedInWords()
    {
        using var client = await Tickets.NamedAsync(site);
        Task<HttpResponseMessage> Post(string loaves, string code = "b1", string control = "C", string flours = "C; F-WB", string at = "2025-09-17T14:00") => WebSite.PostAsync(client, "/laboratory/bake", "/laboratory/bake",
            [new("_handler", "bake"), new("Bake.Code", code), new("Bake.At", at), new("Bake.Baker", "Ada"), new("Bake.Control", control), new("Bake.Loaves", loaves), new("Bake.Flours", flours)]);
        async Task RefusesAsync(Task<HttpResponseMessage> sent, string says)
        {
            using var bad = await sent;
            var page = WebUtility.HtmlDecode(await bad.Content.ReadAsStringAsync());
            Assert.Contains("Not kept; what you typed is still here.", page, StringComparison.Ordinal);
            Assert.Contains(says, page, StringComparison.Ordinal);
        }

        await RefusesAsync(Post("C; 1; 800"), "Loaves, line 1: write flour; dough");
        await RefusesAsync(Post("C; 1; much; 200"), "the volume is a number; read \"much\"");
        await RefusesAsync(Post("C; 1; -5; 200"), "Volume lies from 20");
        await RefusesAsync(Post("C; 1; 800; 200", control: "X", flours: ""), "beside in the same session");
        await RefusesAsync(Post("C; 1; 800; 200", flours: "C; NOWHERE"), "there is no place \"NOWHERE\"");
        await RefusesAsync(Post("C; 1; 800; 200", at: "soon"), "give date and time");
        await RefusesAsync(Post(""), "1 to 60 loaves");
        foreach (var (code, trial) in new[] { ("b1", 840), ("b2", 848) })
        {
            using var kept = await Post($"C; 1; 800; 200\nT; 2; {trial}; 200; 75", code);
            Assert.Equal(HttpStatusCode.Redirect, kept.StatusCode);
        }

        var page = await Tickets.TextAsync(client, "/laboratory/bake?grams=100&moisture=11.5&asof=2025-09-18T10:00");
        Assert.Contains("97.18 g", page, StringComparison.Ordinal); // 100·86/88.5.
        Assert.Contains("+0.22", page, StringComparison.Ordinal); // (0.20 + 0.24)/2 mL/g.
        Assert.Contains("F-WB", page, StringComparison.Ordinal);
        Assert.Contains("lies from 5 to 20; read 40", await Tickets.TextAsync(client, "/laboratory/bake?moisture=40"), StringComparison.Ordinal);
        Assert.Contains("\"b2\"", await client.GetStringAsync(new Uri("/api/lab/bakes?asof=2025-09-18T10:00", UriKind.Relative)), StringComparison.Ordinal);
        using var nobody = await client.PostAsync(new Uri("/api/lab/bakes", UriKind.Relative), new StringContent("{}", Encoding.UTF8, "application/json"));
        Assert.Equal(HttpStatusCode.BadRequest, nobody.StatusCode);
        using var posed = await client.PostAsync(new Uri("/api/lab/bake", UriKind.Relative), new StringContent("""{ "tasting": { "kind": "Pairs", "tests": 20, "right": 15 } }""", Encoding.UTF8, "application/json"));
        Assert.Contains("\"leastRight5\":15", await posed.Content.ReadAsStringAsync(), StringComparison.Ordinal); // ISO 5495, from memory.
    }
}
