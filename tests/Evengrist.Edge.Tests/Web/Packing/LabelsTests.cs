using System.Net;
using System.Net.Http.Json;
using System.Text;
using System.Text.Json;
using Evengrist.Ledger;
using Evengrist.Packing.Codes;
using Evengrist.Packing.Products;
using Evengrist.Quantities;
using Evengrist.Records.Packing;
using NodaTime;

namespace Evengrist.Edge.Tests.Web.Packing;

[Collection(WebSiteCollection.Name)]
public sealed class LabelsTests(WebSite site)
{
    private static readonly Instant At = Instant.FromUtc(2025, 9, 15, 9, 0);

    [Fact]
    public async Task Labels_OfTheLedger_AreHeldAgainstItAndReadBack()
    {
        Lay();
        using var client = site.Client();
        var good = await Answer(client.GetAsync(new Uri("/api/packing/labels/lt-1?packs=40&product=LT-25", UriKind.Relative)));
        Assert.Equal((40, "09521234009016", 0), (good.Json.GetProperty("count").GetInt32(), good.Json.GetProperty("item").GetString(), good.Json.GetProperty("against").GetArrayLength()));
        var lot = good.Json.GetProperty("lot").GetString()!;

        // What contradicts the ledger is refused, each with its own words.
        foreach (var (query, says) in new[] { ("packs=39&by=Ada", "You say 39 packs; by the ledger 40"), ("lot=LT-1&by=Ada", "You say lot LT-1"), ("product=WB-25&by=Ada", "You say WB-25"), ("", "Say who makes the label") })
        {
            var refused = await Answer(client.PostAsync(new Uri($"/api/packing/labels/LT-1?{query}", UriKind.Relative), null));
            Assert.Equal(HttpStatusCode.BadRequest, refused.Status);
            Assert.Contains(says, refused.Json.GetProperty("detail").GetString(), StringComparison.Ordinal);
        }

        foreach (var (pallet, says) in new[] { ("LT-HELD", "HOLD"), ("LT-ODD", "no whole packs"), ("LT-NONE", "no approved label"), ("LT-EMPTY", "Nothing was packed"), ("LT-404", "There is no pallet") })
        {
            Assert.Contains(says, (await Answer(client.PostAsync(new Uri($"/api/packing/labels/{pallet}?by=Ada", UriKind.Relative), null))).Json.GetProperty("detail").GetString(), StringComparison.Ordinal);
        }

        var made = await Answer(client.PostAsync(new Uri("/api/packing/labels/LT-1?by=Ada", UriKind.Relative), null));
        var number = made.Json.GetProperty("number").GetString()!;
        Assert.True(Sscc.TryParse(number, out _, out _));
        Assert.Equal(number, (await Answer(client.PostAsync(new Uri("/api/packing/labels/LT-1?by=Ben", UriKind.Relative), null))).Json.GetProperty("number").GetString());
        var held = await Answer(client.PostAsync(new Uri("/api/packing/labels/LT-HELD?by=Ada&reason=moved+to+the+hold+bay", UriKind.Relative), null));
        Assert.NotEqual(number, held.Json.GetProperty("number").GetString());
        Assert.Contains(">HOLD<", await client.GetStringAsync(new Uri("/api/packing/labels/LT-HELD/label.svg", UriKind.Relative)), StringComparison.Ordinal);
        Assert.Equal("%PDF", Encoding.ASCII.GetString(await client.GetByteArrayAsync(new Uri("/packing/labels/pallets.pdf?codes=LT-1,LT-HELD&size=4x6&asof=2025-09-16T00:00", UriKind.Relative)), 0, 4));
        Assert.Contains("approved label", await client.GetStringAsync(new Uri("/packing/labels?pallet=LT-1,LT-NONE", UriKind.Relative)), StringComparison.Ordinal);
        Assert.Contains("Best before", await client.GetStringAsync(new Uri($"/packing/labels?bag=LT-25&lot={lot}", UriKind.Relative)), StringComparison.Ordinal);
        Assert.Contains("There is no lot", await client.GetStringAsync(new Uri("/packing/labels?bag=LT-25&lot=LT-990101", UriKind.Relative)), StringComparison.Ordinal);

        // Read back in every form; the label of another lot contradicts.
        foreach (var text in new[] { number, $"(00){number}", $"]C100{number}", $"https://id.gs1.org/00/{number}", "LT-1" })
        {
            var read = await Answer(client.GetAsync(new Uri($"/api/gs1/parse?text={Uri.EscapeDataString(text)}", UriKind.Relative)));
            Assert.Equal("LT-1", read.Json.GetProperty("units")[0].GetString());
        }

        Assert.Contains("by the ledger LT-1 is of lot", (await Answer(client.GetAsync(new Uri($"/api/gs1/parse?text={Uri.EscapeDataString($"(00){number}(02)09521234009016(37)40(10)LT-000101")}", UriKind.Relative)))).Json.GetProperty("contradictions")[0].GetString(), StringComparison.Ordinal);
        Assert.Equal(HttpStatusCode.BadRequest, (await Answer(client.GetAsync(new Uri("/api/gs1/parse?text=(00)0952123400", UriKind.Relative)))).Status);
        using var body = await client.PostAsJsonAsync("/api/gs1/make", new { elements = new Dictionary<string, string> { ["01"] = "09521234002017", ["10"] = "WB-251007-3" }, prefixLength = 7 });
        Assert.Contains("urn:epc:class:lgtin:9521234.000201.WB-251007-3", await body.Content.ReadAsStringAsync(), StringComparison.Ordinal);
        Assert.Equal(HttpStatusCode.BadRequest, (await client.PostAsJsonAsync("/api/gs1/make", new { elements = new Dictionary<string, string> { ["01"] = "09521234002018" } })).StatusCode);

        // On the page a pallet scanned twice is told, within one paste and from what was kept.
        await WebSite.PostAsync(client, "/who", "/choose", [new("name", "Ada"), new("back", "/packing/codes")]);
        using var first = await WebSite.PostAsync(client, "/packing/codes", "/packing/codes", [new("_handler", "scan"), new("Scan.Text", $"{number}\nLT-1\n(01)123"), new("Scan.Keep", "true")]);
        var page = WebUtility.HtmlDecode(await first.Content.ReadAsStringAsync());
        Assert.Contains("The same pallet stands on line 1 already.", page, StringComparison.Ordinal);
        Assert.Contains("It cannot be read.", page, StringComparison.Ordinal);
        using var second = await WebSite.PostAsync(client, "/packing/codes", "/packing/codes", [new("_handler", "scan"), new("Scan.Text", "lt-1")]);
        Assert.Contains("Scanned before, 2 times:", WebUtility.HtmlDecode(await second.Content.ReadAsStringAsync()), StringComparison.Ordinal);
    }

    private void Lay()
    {
        Assert.Empty(Products.Keep(site.Mill, new Product("LT-25", "Flour of labels, 25 kg", "LT", PackKind.Bag, 25_000) { PerPallet = 40, PackedAs = "40 × 25 kg", PackGtin = "9521234009016", Label = new("1", "Ada", At) }, "Ada").Faults);
        Assert.Empty(Products.Keep(site.Mill, new Product("LN-25", "Not approved, 25 kg", "LN", PackKind.Bag, 25_000) { PerPallet = 40, PackedAs = "40 × 25 kg", PackGtin = "9521234009023" }, "Ada").Faults);
        KeepUnitNumbering.Keep(site.Mill, new UnitNumbering("9521234") { First = 700 }, "Ada");
        static OpenPlace Pallet(string code, string flour = "LT") => new(code, code, PlaceKind.Pallet, "40 × 25 kg", flour);
        site.Mill.Record([
            new OpenPlace("lt-gain", "LT-GAIN", PlaceKind.Gain), new OpenPlace("lt-line", "LT-LINE", PlaceKind.PackingLine), Pallet("LT-1"), Pallet("LT-HELD"), Pallet("LT-ODD"), Pallet("LT-NONE", "LN"), Pallet("LT-EMPTY"),
            new Move("lt-g", "LT-GAIN", "LT-LINE", Mass.FromTonnes(4), At), new Move("lt-1m", "LT-LINE", "LT-1", Mass.FromTonnes(1), At), new Move("lt-2m", "LT-LINE", "LT-HELD", Mass.FromTonnes(1), At),
            new Move("lt-3m", "LT-LINE", "LT-ODD", Mass.FromKilograms(985), At), new Move("lt-4m", "LT-LINE", "LT-NONE", Mass.FromTonnes(1), At), new Happen("lt-h", "LT-HELD", At, HappeningKind.Held, "falling number 180 s"),
        ], "Ada", "labels test");
    }

    private static async Task<(HttpStatusCode Status, JsonElement Json)> Answer(Task<HttpResponseMessage> asked)
    {
        using var answer = await asked;
        return (answer.StatusCode, JsonDocument.Parse(await answer.Content.ReadAsStringAsync()).RootElement.Clone());
    }
}
