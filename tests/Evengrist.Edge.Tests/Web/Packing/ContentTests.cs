using System.Net;
using System.Net.Http.Json;
using System.Text;
using System.Text.Json;
using Evengrist.Packing.Products;
using Evengrist.Records.Packing;

namespace Evengrist.Edge.Tests.Web.Packing;

[Collection(WebSiteCollection.Name)]
public sealed class ContentTests(WebSite site)
{
    private const string Base = "/api/packing/content";

    [Fact]
    public async Task Content_FileTareInspection_ComeInOnceAndStandOnThePage()
    {
        Assert.All(Products.Keep(site.Mill, new Product("NC-25", "Flour of the test, 25 kg", "NCT", PackKind.Bag, 25_000) { PerPallet = 40, TareGrams = 180 }, "Ada").Faults, f => Assert.Contains("changes", f, StringComparison.Ordinal));
        using var client = site.Client();
        var rows = string.Concat(Enumerable.Range(0, 120).Select(i => FormattableString.Invariant($"2025-09-15T0{(i / 60) + 7}:{i % 60:00}:00Z,L1,NC-25,{25_190 + (i * 7 % 31)},180,\n")));
        var file = "moment,line,product,gross [g],tare [g],rejected\n" + rows;

        var look = await Sent(client, $"{Base}/file?look=true", file);
        Assert.Equal((HttpStatusCode.OK, 120, 0), (look.Status, look.Json.GetProperty("rows").GetInt32(), look.Json.GetProperty("added").GetInt32()));
        Assert.Contains("Say who keeps it", (await Sent(client, $"{Base}/file", file)).Json.GetProperty("detail").GetString(), StringComparison.Ordinal);
        Assert.Equal(120, (await Sent(client, $"{Base}/file?by=Ada", file)).Json.GetProperty("added").GetInt32());
        var again = await Sent(client, $"{Base}/file?by=Ada", file);
        Assert.Equal((0, 120), (again.Json.GetProperty("added").GetInt32(), again.Json.GetProperty("alreadyKnown").GetInt32()));
        var wrong = await Sent(client, $"{Base}/file?by=Ada", file.Replace("25190,180", "25190,99180", StringComparison.Ordinal));
        Assert.Equal(HttpStatusCode.BadRequest, wrong.Status);
        Assert.Contains("line 2, column 4", wrong.Json.GetProperty("faults")[0].GetString(), StringComparison.OrdinalIgnoreCase);
        Assert.Equal(HttpStatusCode.Conflict, (await Sent(client, $"{Base}/file?by=Ada", file.Replace("[g]", "[kg]", StringComparison.Ordinal).Replace(",180,", ",0.18,", StringComparison.Ordinal).Replace(",2519", ",2.519", StringComparison.Ordinal).Replace(",252", ",2.52", StringComparison.Ordinal))).Status);

        Assert.Equal(HttpStatusCode.Created, (await client.PostAsJsonAsync($"{Base}/tares?by=Ada", new { product = "NC-25", at = "2025-09-15T07:30:00Z", weights = "220 221 219 220 220", delivery = "new" })).StatusCode);
        Assert.Equal(HttpStatusCode.BadRequest, (await client.PostAsJsonAsync($"{Base}/tares?by=Ada", new { product = "NC-25", at = "2025-09-15T07:30:00Z", weights = "220 22x" })).StatusCode);
        var stand = JsonDocument.Parse(await client.GetStringAsync(new Uri($"{Base}?law=US&price=700&asof=2025-09-15T12:00:00Z", UriKind.Relative))).RootElement.EnumerateArray().Single(s => s.GetProperty("product").GetString() == "NC-25");
        Assert.True(stand.GetProperty("isTareWrong").GetBoolean());
        Assert.Equal("2025-09-15T07:00:00Z", stand.GetProperty("wrongSince").GetString());
        Assert.False(stand.GetProperty("passes").GetBoolean());
        Assert.True(stand.GetProperty("giveawayMoneyADay").GetDecimal() < 0);
        Assert.Equal(HttpStatusCode.BadRequest, (await client.GetAsync(new Uri($"{Base}?law=XX", UriKind.Relative))).StatusCode);

        var page = WebUtility.HtmlDecode(await client.GetStringAsync(new Uri("/packing/content?law=US&line=L1&product=NC-25&asof=2025-09-15T12:00", UriKind.Relative)));
        Assert.Contains("The tare is off by 40.0 g.", page, StringComparison.Ordinal);
        Assert.Contains("from memory", page, StringComparison.Ordinal);

        var gross = string.Join(' ', Enumerable.Range(0, 12).Select(i => $"{25_200 + i}"));
        Assert.Equal(HttpStatusCode.BadRequest, (await client.PostAsJsonAsync($"{Base}/inspections?by=Ben", new { law = "US", product = "NC-25", lot = "60", gross = "25200", tare = "180", at = "2025-09-15T08:00:00Z" })).StatusCode);
        using var signed = await client.PostAsJsonAsync($"{Base}/inspections?by=Ben", new { law = "US", product = "NC-25", lot = "60", gross, tare = "180", at = "2025-09-15T08:00:00Z" });
        Assert.Equal(HttpStatusCode.Created, signed.StatusCode);
        var number = JsonDocument.Parse(await signed.Content.ReadAsStringAsync()).RootElement.GetProperty("number").GetString();
        Assert.Contains("25,211.0", WebUtility.HtmlDecode(await client.GetStringAsync(new Uri($"/packing/content/inspections/{number}", UriKind.Relative))), StringComparison.Ordinal);
        foreach (var paper in new[] { "a4", "letter" })
        {
            var pdf = await client.GetByteArrayAsync(new Uri($"/packing/content/inspections/{number}/inspection.pdf?paper={paper}", UriKind.Relative));
            Assert.Equal("%PDF", Encoding.ASCII.GetString(pdf, 0, 4));
        }

        Assert.Equal(HttpStatusCode.BadRequest, (await client.GetAsync(new Uri($"/packing/content/inspections/{number}/inspection.pdf?paper=a0", UriKind.Relative))).StatusCode);
    }

    private static async Task<(HttpStatusCode Status, JsonElement Json)> Sent(HttpClient client, string path, string body)
    {
        using var content = new StringContent(body, Encoding.UTF8, "text/csv");
        using var answer = await client.PostAsync(new Uri(path, UriKind.Relative), content);
        return (answer.StatusCode, JsonDocument.Parse(await answer.Content.ReadAsStringAsync()).RootElement.Clone());
    }
}
