using System.Net;
using System.Net.Http.Json;
using System.Text.Json;
using Evengrist.Edge.Tests.Web.Trucks;

namespace Evengrist.Edge.Tests.Web.Laboratory;

/// <summary>Samples and results on the bench of a small mill, on the page and over HTTP.</summary>
[Collection(WebSiteCollection.Name)]
public sealed class BenchTests(WebSite site)
{
    [Fact]
    public async Task Page_SampleTakenAndTested_ShowsDuplicatesAndTheRetest()
    {
        using var client = await Tickets.NamedAsync(site);
        Assert.Contains("No sample “J-1”", await Tickets.TextAsync(client, "/laboratory?sample=J-1"), StringComparison.Ordinal);
        await RefusesAsync(client, Take("J-1", "NOWHERE"), "no place with the code");
        await RefusesAsync(client, Take("J-1", "F-WB", tests: "Protein"), "is no test");
        await RefusesAsync(client, Take("J-1", "F-WB", at: "noon"), "give date and time");
        await RefusesAsync(client, Take("", "F-WB"), "A sample has a number");
        using var taken = await WebSite.PostAsync(client, "/laboratory", "/laboratory", Take("J-1", "F-WB"));
        Assert.Equal("/laboratory?done=true&sample=J-1", taken.Headers.Location!.PathAndQuery);
        await RefusesAsync(client, Take("j-1", "B01"), "Take another number");
        Assert.Contains("protein by combustion, moisture by oven 130 °C", await Tickets.TextAsync(client, "/laboratory?asof=2025-09-16T12:00"), StringComparison.Ordinal);

        await RefusesAsync(client, Results("J-1", "", "13.4"), "moisture basis");
        await RefusesAsync(client, Results("J-1", "as is", "", protein: "11.9"), "without the moisture of the sample");
        await RefusesAsync(client, Results("J-1", "14mb", "wet", protein: "11.9"), "\"wet\" is no number");
        await RefusesAsync(client, Results("J-1", "14mb", "130", protein: "11.9"), "cannot be");
        await RefusesAsync(client, Results("J-1", "14mb", "13.4", "2025-09-16T06:00", "11.9"), "before the sample was taken");
        await RefusesAsync(client, Results("J-1", "14mb", "", protein: ""), "there is no result");
        using var good = await WebSite.PostAsync(client, "/laboratory?sample=J-1", "/laboratory?sample=J-1", Results("J-1", "as is", "13.42 13.56", protein: "11.9"));
        Assert.Equal(HttpStatusCode.Redirect, good.StatusCode);
        using var again = await WebSite.PostAsync(client, "/laboratory?sample=J-1", "/laboratory?sample=J-1", Results("J-1", "14mb", "13.48 13.50", protein: "", key: "second"));
        Assert.Equal(HttpStatusCode.Redirect, again.StatusCode);
        var page = await Tickets.TextAsync(client, "/laboratory?asof=2025-09-16T12:00");
        Assert.Contains("They differ by 0.14, more than r = 0.12: make two more.", page, StringComparison.Ordinal); // r from memory of ISO 712-1.
        Assert.Contains("moisture by oven 130 °C, retest", page, StringComparison.Ordinal);
        Assert.Contains("11.9 % 13.49mb", page, StringComparison.Ordinal); // As it was: at the moisture typed beside it.
    }

    [Fact]
    public async Task Api_OddResult_IsAskedAndTakenWithAReason()
    {
        using var client = site.Client();
        async Task<HttpResponseMessage> Post(string path, object body, string by = "?by=Ada") => await client.PostAsJsonAsync(new Uri($"/api/lab/{path}{by}", UriKind.Relative), body);
        foreach (var (code, at) in new[] { ("K-1", "2025-09-16T08:00"), ("K-2", "2025-09-16T09:00") })
        {
            using var taken = await Post("samples", new { code, place = "Y-BR", at, tests = "Ash by furnace" });
            Assert.Equal(HttpStatusCode.Created, taken.StatusCode);
        }

        object Ash(string key, string sample, string value, string reason = "", string basis = "14mb") => new { key, sample, measured = "2025-09-16T11:00", reason, rows = new[] { new { what = "Ash", method = "furnace", values = value, basis } } };
        using var first = await Post("results", Ash("k1", "K-1", "5.2"));
        using var odd = await Post("results", Ash("k2", "K-2", "5.9"));
        using var reasoned = await Post("results", Ash("k2", "K-2", "5.9", "bran finisher stopped"));
        using var repeated = await Post("results", Ash("k2", "K-2", "5.9", "bran finisher stopped"));
        using var baseless = await Post("results", Ash("k3", "K-2", "5.2", basis: ""));
        foreach (var rows in new object?[] { null, new object?[] { null }, Array.Empty<object>() })
        {
            using var none = await Post("results", new { key = "k0", sample = "K-2", measured = "2025-09-16T11:00", rows });
            Assert.Equal(HttpStatusCode.BadRequest, none.StatusCode);
        }

        using var nameless = await Post("results", Ash("k4", "K-2", "5.2"), "");
        Assert.Equal([HttpStatusCode.Created, HttpStatusCode.Conflict, HttpStatusCode.Created, HttpStatusCode.OK, HttpStatusCode.BadRequest, HttpStatusCode.BadRequest], new[] { first, odd, reasoned, repeated, baseless, nameless }.Select(r => r.StatusCode));
        Assert.Contains("unlike the last ones here", await odd.Content.ReadAsStringAsync(), StringComparison.Ordinal);
        var samples = JsonDocument.Parse(await client.GetStringAsync(new Uri("/api/lab/samples?asof=2025-09-16T12:00", UriKind.Relative))).RootElement;
        var tested = Assert.Single(samples.EnumerateArray(), s => s.GetProperty("code").GetString() == "K-2");
        Assert.Equal(("tested", 1), (tested.GetProperty("state").GetString(), tested.GetProperty("results").GetArrayLength()));
        using var bad = await client.GetAsync(new Uri("/api/lab/samples?asof=soon", UriKind.Relative));
        Assert.Equal(HttpStatusCode.BadRequest, bad.StatusCode);
    }

    private static async Task RefusesAsync(HttpClient client, KeyValuePair<string, string>[] form, string says)
    {
        var path = form[0].Value == "results" ? "/laboratory?sample=J-1" : "/laboratory";
        using var bad = await WebSite.PostAsync(client, path, path, form);
        var page = WebUtility.HtmlDecode(await bad.Content.ReadAsStringAsync());
        Assert.Contains("what you typed is still here", page, StringComparison.Ordinal);
        Assert.Contains(says, page, StringComparison.Ordinal);
    }

    private static KeyValuePair<string, string>[] Take(string code, string place, string tests = "Protein by combustion; Moisture by oven 130 °C", string at = "2025-09-16T07:00") =>
        [new("_handler", "take"), new("Take.Code", code), new("Take.Place", place), new("Take.At", at), new("Take.Tests", tests)];

    private static KeyValuePair<string, string>[] Results(string sample, string basis, string moisture, string measured = "2025-09-16T11:00", string protein = "11.9", string key = "first") =>
    [
        new("_handler", "results"), new("Bench.Key", key), new("Bench.Sample", sample), new("Bench.Measured", measured),
        new("Bench.Rows[0].What", "Protein"), new("Bench.Rows[0].Method", "combustion"), new("Bench.Rows[0].Values", protein), new("Bench.Rows[0].Basis", basis),
        new("Bench.Rows[1].What", "Moisture"), new("Bench.Rows[1].Method", "oven 130 °C"), new("Bench.Rows[1].Values", moisture),
    ];
}
